package kitleaf.sheet;

import java.util.Locale;
import java.util.Objects;
import kitleaf.sizing.cloth.Extent;
import kitleaf.sizing.cloth.PieceSize;

/**
 * The scaled drawing of a piece's cut cloth, placed on its page.
 *
 * @param cloth the cut cloth
 * @param design the design in it
 * @param fringe thread ends along all four edges, as path data
 * @param warpDown whether the warp runs down the page
 * @param width the cut's width, written
 * @param height its height, written
 * @param left from the left cut edge to the design, written
 * @param top from the top cut edge to the design, written
 * @param diagonal either diagonal, written
 * @param diagonalDegrees the slope of the falling diagonal on the page
 */
public record ClothDrawing(Box cloth, Box design, String fringe, boolean warpDown, String width, String height,
                           String left, String top, String diagonal, double diagonalDegrees) {

    /** Room left of the cloth for the height's dimension line. */
    private static final double LEFT_MM = 11;
    /** Room above it for the fringe. */
    private static final double TOP_MM = 3;
    /** Room right of it for the warp arrow. */
    private static final double RIGHT_MM = 10;
    /** Room below it for the width's dimension line. */
    private static final double BELOW_MM = 9;
    /** Room below that for a warp arrow that points across. */
    private static final double ARROW_BELOW_MM = 5;

    private static final double FRINGE_MM = 1.6;
    private static final double FRINGE_STEP_MM = 1.9;

    /** Refuses a missing part. */
    public ClothDrawing {
        Objects.requireNonNull(cloth);
        Objects.requireNonNull(design);
    }

    /** The drawing of a piece, as large as a block of the page lets it be. */
    static ClothDrawing of(PieceSize size, boolean warpDown, Block room, Figures figures) {
        Extent across = size.across();
        Extent down = size.down();
        double scale = Math.min((room.widthMm() - LEFT_MM - RIGHT_MM) / across.cutMm(),
                (room.heightMm() - TOP_MM - belowMm(warpDown)) / down.cutMm());
        Box cloth = new Box(room.xMm() + LEFT_MM, room.yMm() + TOP_MM, across.cutMm() * scale, down.cutMm() * scale);
        Box design = new Box(cloth.xMm() + across.nearEdgeToDesignMm() * scale,
                cloth.yMm() + down.nearEdgeToDesignMm() * scale,
                across.designAtTableMm() * scale, down.designAtTableMm() * scale);
        return new ClothDrawing(cloth, design, fringe(cloth), warpDown,
                figures.length(across.cutMm()), figures.length(down.cutMm()),
                figures.length(across.nearEdgeToDesignMm()), figures.length(down.nearEdgeToDesignMm()),
                figures.length(size.cutDiagonalMm()),
                Math.toDegrees(Math.atan2(cloth.heightMm(), cloth.widthMm())));
    }

    /** How high the drawing of a piece is when it takes up a whole width. */
    static double heightMm(PieceSize size, boolean warpDown, double widthMm) {
        return TOP_MM + belowMm(warpDown) + (widthMm - LEFT_MM - RIGHT_MM) * size.down().cutMm() / size.across().cutMm();
    }

    private static double belowMm(boolean warpDown) {
        return BELOW_MM + (warpDown ? 0 : ARROW_BELOW_MM);
    }

    private static String fringe(Box cloth) {
        StringBuilder path = new StringBuilder();
        int across = Math.max(2, (int) (cloth.widthMm() / FRINGE_STEP_MM));
        for (int i = 0; i <= across; i++) {
            double x = cloth.xMm() + cloth.widthMm() * i / across;
            stroke(path, x + lean(i), cloth.yMm() - length(i), x, cloth.yMm());
            stroke(path, x, cloth.bottomMm(), x + lean(i + 2), cloth.bottomMm() + length(i + 1));
        }
        int down = Math.max(2, (int) (cloth.heightMm() / FRINGE_STEP_MM));
        for (int i = 0; i <= down; i++) {
            double y = cloth.yMm() + cloth.heightMm() * i / down;
            stroke(path, cloth.xMm() - length(i), y + lean(i), cloth.xMm(), y);
            stroke(path, cloth.rightMm(), y, cloth.rightMm() + length(i + 1), y + lean(i + 2));
        }
        return path.toString();
    }

    /** Thread ends are not of one length; these three take turns. */
    private static double length(int i) {
        return FRINGE_MM * switch (i % 3) {
            case 0 -> 1;
            case 1 -> 0.65;
            default -> 0.85;
        };
    }

    /** Nor do they hang straight. */
    private static double lean(int i) {
        return switch (i % 5) {
            case 0 -> 0.5;
            case 1 -> -0.25;
            case 2 -> 0.1;
            case 3 -> -0.55;
            default -> 0.3;
        };
    }

    private static void stroke(StringBuilder path, double x1, double y1, double x2, double y2) {
        path.append(String.format(Locale.ROOT, "M%.3f %.3fL%.3f %.3f", x1, y1, x2, y2));
    }
}
