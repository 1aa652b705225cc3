package kitleaf.basket;

import java.util.Objects;

/**
 * A sheet of labels, described by its geometry. Lengths are measured on the sheet as it lies upright, from its
 * top left corner.
 *
 * @param paper the sheet
 * @param columns labels side by side, 1 or more
 * @param rows labels one below the other, 1 or more
 * @param widthMm of one label
 * @param heightMm of one label; the same as the width where they are round
 * @param firstXMm from the sheet's left side to the first label's
 * @param firstYMm from the sheet's top to the first label's
 * @param pitchXMm from one label's left side to the next one's; at least the width
 * @param pitchYMm from one label's top to the next one's; at least the height
 * @param shape rectangle or round
 * @param plain whether it is plain paper to be cut up, so that cut lines are drawn
 * @param style how a label is laid out
 */
public record LabelStock(Paper paper, int columns, int rows, double widthMm, double heightMm, double firstXMm,
                         double firstYMm, double pitchXMm, double pitchYMm, Shape shape, boolean plain, Style style) {

    /** The outline of a label. */
    public enum Shape {
        /** Four corners. */
        RECTANGLE,
        /** A circle. */
        ROUND
    }

    /** How a label is laid out. */
    public enum Style {
        /** Folded round a bobbin and readable on both of its faces. */
        WRAP,
        /** Stuck on one face. */
        FACE
    }

    /** How far past the paper a label may reach before it does not fit: the last bits of adding up. */
    public static final double SLACK_MM = 1e-6;

    /** Refuses labels that overlap, are not there, or do not fit their paper. */
    public LabelStock {
        Objects.requireNonNull(paper);
        Objects.requireNonNull(shape);
        Objects.requireNonNull(style);
        if (columns < 1 || rows < 1 || !(widthMm > 0) || !(heightMm > 0) || !(firstXMm >= 0) || !(firstYMm >= 0)
                || (columns > 1 && !(pitchXMm >= widthMm - SLACK_MM)) || (rows > 1 && !(pitchYMm >= heightMm - SLACK_MM))
                || (shape == Shape.ROUND && widthMm != heightMm)) {
            throw new IllegalArgumentException("no such label stock");
        }
        if (rightMm(columns, widthMm, firstXMm, pitchXMm) > paper.widthMm() + SLACK_MM
                || rightMm(rows, heightMm, firstYMm, pitchYMm) > paper.heightMm() + SLACK_MM) {
            throw new IllegalArgumentException("labels do not fit their paper");
        }
    }

    /**
     * Whether a label is large enough for a code that reads at arm's length and its piece below: each face 20 mm x 12 mm, a
     * round one 26 mm across. A wrap label has two faces, side by side where it is wider than high.
     */
    public static boolean roomy(double widthMm, double heightMm, Shape shape, Style style) {
        if (shape == Shape.ROUND) {
            return widthMm >= 26 - SLACK_MM;
        }
        boolean sideBySide = style == Style.WRAP && widthMm >= heightMm;
        boolean stacked = style == Style.WRAP && !sideBySide;
        return widthMm / (sideBySide ? 2 : 1) >= 20 - SLACK_MM && heightMm / (stacked ? 2 : 1) >= 12 - SLACK_MM;
    }

    /** Where the last of so many labels ends, in one direction. */
    public static double rightMm(int number, double sizeMm, double firstMm, double pitchMm) {
        return firstMm + (number - 1) * pitchMm + sizeMm;
    }

    /** Labels on a sheet. */
    public int perSheet() {
        return columns * rows;
    }
}
