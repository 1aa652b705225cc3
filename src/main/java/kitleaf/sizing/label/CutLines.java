package kitleaf.sizing.label;

import java.util.ArrayList;
import java.util.List;
import kitleaf.basket.LabelStock;

/**
 * Where plain paper is cut into labels, in millimetres from the top left corner of the sheet. Where two labels touch
 * there is one line between them, not two.
 *
 * @param xMm of the lines from top to bottom, from left to right
 * @param yMm of the lines from side to side, from top to bottom
 */
public record CutLines(List<Double> xMm, List<Double> yMm) {

    /** Labels nearer to each other than this touch: far less than scissors part, far more than adding doubles loses. */
    private static final double TOUCHING_MM = 1e-6;

    /** Copies the lists. */
    public CutLines {
        xMm = List.copyOf(xMm);
        yMm = List.copyOf(yMm);
    }

    /** The cut lines of a stock; none where it is not plain, since its labels are cut already. */
    public static CutLines of(LabelStock stock) {
        if (!stock.plain()) {
            return new CutLines(List.of(), List.of());
        }
        return new CutLines(lines(stock.columns(), stock.firstXMm(), stock.pitchXMm(), stock.widthMm()),
                lines(stock.rows(), stock.firstYMm(), stock.pitchYMm(), stock.heightMm()));
    }

    /** Both sides of each label, each reckoned from the first label and never from the line before. */
    private static List<Double> lines(int number, double firstMm, double pitchMm, double labelMm) {
        boolean touching = pitchMm - labelMm < TOUCHING_MM;
        List<Double> lines = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            lines.add(firstMm + i * pitchMm);
            if (!touching || i == number - 1) {
                lines.add(firstMm + i * pitchMm + labelMm);
            }
        }
        return lines;
    }
}
