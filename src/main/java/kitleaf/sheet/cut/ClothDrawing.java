package kitleaf.sheet.cut;

import java.util.Objects;
import java.util.Set;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Fringe;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.TypeScale;
import kitleaf.sheet.words.Figures;
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

    /** What words along the diagonal keep from an edge. */
    private static final double EDGE_MM = 0.8;
    /** How far they reach from the line. */
    private static final double WORDS_MM = 3.2;
    /** The centre's cross and its words take so much of the line. */
    private static final double CENTRE_MM = 10;
    /** Room above the cloth for its fringe. */
    private static final double TOP_MM = 3;

    /**
     * Room around the cloth for what is written there.
     *
     * @param leftMm for the height's dimension line
     * @param rightMm for the warp arrow
     * @param belowMm for the width's dimension line
     * @param arrowBelowMm for a warp arrow that points across, below that
     */
    private record Around(double leftMm, double rightMm, double belowMm, double arrowBelowMm) {

        static Around in(TypeScale type) {
            return type.large() ? new Around(13, 15, 13, 9) : new Around(11, 10, 9, 5);
        }

        double belowMm(boolean warpDown) {
            return belowMm + (warpDown ? 0 : arrowBelowMm);
        }
    }

    /** Refuses a missing part. */
    public ClothDrawing {
        Objects.requireNonNull(cloth);
        Objects.requireNonNull(design);
    }

    /** The drawing of a piece, as large as a block of the page lets it be. */
    static ClothDrawing of(PieceSize size, boolean warpDown, Block room, Figures figures, SheetSettings settings) {
        Around around = Around.in(settings.type());
        Extent across = size.across();
        Extent down = size.down();
        double scale = Math.min((room.widthMm() - around.leftMm() - around.rightMm()) / across.cutMm(),
                (room.heightMm() - TOP_MM - around.belowMm(warpDown)) / down.cutMm());
        String height = figures.cutLength(down.cutMm());
        Box cloth = new Box(room.xMm() + around.leftMm(), room.yMm() + topMm(down.cutMm() * scale, height, settings),
                across.cutMm() * scale, down.cutMm() * scale);
        Box design = new Box(cloth.xMm() + across.nearEdgeToDesignMm() * scale,
                cloth.yMm() + down.nearEdgeToDesignMm() * scale,
                across.designAtTableMm() * scale, down.designAtTableMm() * scale);
        return new ClothDrawing(cloth, design, Fringe.of(cloth, Set.of()), warpDown,
                figures.cutLength(across.cutMm()), height,
                figures.brief(across.nearEdgeToDesignMm()), figures.brief(down.nearEdgeToDesignMm()),
                figures.length(size.cutDiagonalMm()),
                Math.toDegrees(Math.atan2(cloth.heightMm(), cloth.widthMm())));
    }

    /**
     * Where the middle of what is written along the falling diagonal stands, from the cloth's left edge: between the centre and where the
     * diagonal leaves the design, or beyond that, wherever it crosses no edge and no other words; 0 where there is no room for it.
     *
     * @param widthMm of what is written
     */
    public double alongDiagonalMm(double widthMm) {
        double angle = Math.atan2(cloth.heightMm(), cloth.widthMm());
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double rightMm = design.rightMm() - cloth.xMm();
        double bottomMm = design.bottomMm() - cloth.yMm();
        double centreMm = (design.midXMm() - cloth.xMm()) * cos + (design.midYMm() - cloth.yMm()) * sin;
        // Words stand above the line: their upper right corner reaches an upright edge first, their upper left one leaves a level edge last.
        double insideMm = Math.min((rightMm - EDGE_MM - WORDS_MM * sin) / cos, (bottomMm - EDGE_MM) / sin);
        double outsideMm = Math.min((rightMm + EDGE_MM) / cos, (bottomMm + EDGE_MM + WORDS_MM * cos) / sin);
        double cornerMm = Math.min((cloth.widthMm() - EDGE_MM - WORDS_MM * sin) / cos, (cloth.heightMm() - EDGE_MM) / sin);
        double fromMm = centreMm + CENTRE_MM;
        return insideMm - fromMm >= widthMm ? (fromMm + insideMm) / 2 * cos
                : cornerMm - outsideMm >= widthMm ? (outsideMm + cornerMm) / 2 * cos : 0;
    }

    /** How high the drawing of a piece is when it takes up a whole width. */
    static double heightMm(PieceSize size, boolean warpDown, double widthMm, Figures figures, SheetSettings settings) {
        Around around = Around.in(settings.type());
        double clothMm = (widthMm - around.leftMm() - around.rightMm()) * size.down().cutMm() / size.across().cutMm();
        return topMm(clothMm, figures.cutLength(size.down().cutMm()), settings) + clothMm + around.belowMm(warpDown);
    }

    /**
     * Room above the cloth: for the fringe, and for what the height's figure, which stands upright at its middle, is
     * longer than a low cloth is high.
     */
    private static double topMm(double clothMm, String height, SheetSettings settings) {
        return Math.max(TOP_MM, (settings.ruler().widthMm(height, "text", 600, settings.type().table()) - clothMm) / 2);
    }
}
