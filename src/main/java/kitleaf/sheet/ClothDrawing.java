package kitleaf.sheet;

import java.util.Objects;
import java.util.Set;
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
        return new ClothDrawing(cloth, design, Fringe.of(cloth, Set.of()), warpDown,
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
}
