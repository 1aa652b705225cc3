package kitleaf.sheet.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import kitleaf.basket.Cloth;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.TypeScale;
import kitleaf.sheet.words.Figures;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.cloth.Extent;
import kitleaf.sizing.cloth.PieceSize;

/**
 * The scaled drawing of a piece's cut cloth, with room for what is written round it.
 *
 * @param widthMm of all of it
 * @param heightMm of all of it
 * @param cloth the cut cloth, from the drawing's top left corner
 * @param design the design in it
 * @param warpDown whether the warp runs down the page
 * @param width the cut's width, written
 * @param height its height, written
 * @param left from the left cut edge to the design, written
 * @param top from the top cut edge to the design, written
 * @param diagonal either diagonal, written
 * @param diagonalDegrees the slope of the falling diagonal on the page
 */
public record ClothDrawing(double widthMm, double heightMm, Box cloth, Box design, boolean warpDown, String width,
                           String height, String left, String top, String diagonal, double diagonalDegrees) {

    /** What words along the diagonal keep from an edge. */
    private static final double EDGE_MM = 0.8;
    /** Room above the cloth for its fringe. */
    private static final double TOP_MM = 3;
    /** The largest takes so much of the paper's height. */
    private static final double MOST_SHARE = 0.5;
    /** Each is so much smaller than the one before; the last is no larger than the least either way, so that words still have room. */
    private static final double SMALLER = 0.88;
    private static final double LEAST_WIDTH_MM = 60;
    private static final double LEAST_HEIGHT_MM = 50;

    /**
     * Room around the cloth for what is written there.
     *
     * @param leftMm for the height's dimension line
     * @param rightMm for the warp arrow
     * @param belowMm for the width's dimension line, and for a warp arrow that points across
     */
    private record Around(double leftMm, double rightMm, double belowMm) {

        static Around in(TypeScale type, boolean warpDown) {
            double figureMm = TypeScale.mm(type.table());
            double wordMm = TypeScale.mm(type.caption());
            return new Around(9 + 0.71 * figureMm, 6.1 + 1.58 * wordMm, 5 + 1.42 * figureMm + (warpDown ? 0 : 1.9 + 1.26 * wordMm));
        }
    }

    /** Refuses a missing part. */
    public ClothDrawing {
        Objects.requireNonNull(cloth);
        Objects.requireNonNull(design);
    }

    /** The drawing of a piece in several sizes, the largest as wide as the page. */
    static List<ClothDrawing> sizes(PieceReckoning reckoned, Figures figures, SheetSettings settings) {
        PieceSize size = reckoned.cloth().size();
        boolean warpDown = reckoned.piece().cloth().warp() == Cloth.WarpRun.DOWN;
        Around around = Around.in(settings.type(), warpDown);
        double innerMm = settings.paper().widthMm() - 2 * Frames.MARGIN_MM;
        double scale = Math.min((innerMm - around.leftMm - around.rightMm) / size.across().cutMm(),
                (settings.paper().heightMm() * MOST_SHARE - TOP_MM - around.belowMm) / size.down().cutMm());
        List<ClothDrawing> sizes = new ArrayList<>();
        do {
            sizes.add(of(size, warpDown, around, scale, figures, settings));
            scale *= SMALLER;
        } while (sizes.get(sizes.size() - 1).widthMm > LEAST_WIDTH_MM || sizes.get(sizes.size() - 1).heightMm > LEAST_HEIGHT_MM);
        return sizes;
    }

    private static ClothDrawing of(PieceSize size, boolean warpDown, Around around, double scale, Figures figures, SheetSettings settings) {
        Extent across = size.across();
        Extent down = size.down();
        String height = figures.cutLength(down.cutMm());
        // The height's figure stands upright at the middle of the cloth, and may be longer than a low one is high.
        double figureMm = settings.ruler().widthMm(height, "text", 600, settings.type().table());
        double topMm = Math.max(TOP_MM, (figureMm - down.cutMm() * scale) / 2);
        Box cloth = new Box(around.leftMm, topMm, across.cutMm() * scale, down.cutMm() * scale);
        Box design = new Box(cloth.xMm() + across.nearEdgeToDesignMm() * scale, cloth.yMm() + down.nearEdgeToDesignMm() * scale,
                across.designAtTableMm() * scale, down.designAtTableMm() * scale);
        return new ClothDrawing(cloth.rightMm() + around.rightMm, cloth.bottomMm() + around.belowMm, cloth, design,
                warpDown, figures.cutLength(across.cutMm()), height,
                figures.brief(across.nearEdgeToDesignMm()), figures.brief(down.nearEdgeToDesignMm()), figures.length(size.cutDiagonalMm()),
                Math.toDegrees(Math.atan2(cloth.heightMm(), cloth.widthMm())));
    }

    /**
     * Where the middle of what is written along the falling diagonal stands, from the cloth's left edge: between the centre and where the
     * diagonal leaves the design, or beyond that, wherever it crosses no edge and no other words; 0 where there is no room for it.
     *
     * @param widthMm of what is written
     * @param highMm how far it reaches from the line
     * @param centreMm what the centre's cross and its words take of the line
     */
    public double alongDiagonalMm(double widthMm, double highMm, double centreMm) {
        double angle = Math.atan2(cloth.heightMm(), cloth.widthMm());
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double rightMm = design.rightMm() - cloth.xMm();
        double bottomMm = design.bottomMm() - cloth.yMm();
        double middleMm = (design.midXMm() - cloth.xMm()) * cos + (design.midYMm() - cloth.yMm()) * sin;
        // Words stand above the line: their upper right corner reaches an upright edge first, their upper left one leaves a level
        // edge last.
        double insideMm = Math.min((rightMm - EDGE_MM - highMm * sin) / cos, (bottomMm - EDGE_MM) / sin);
        double outsideMm = Math.min((rightMm + EDGE_MM) / cos, (bottomMm + EDGE_MM + highMm * cos) / sin);
        double cornerMm = Math.min((cloth.widthMm() - EDGE_MM - highMm * sin) / cos, (cloth.heightMm() - EDGE_MM) / sin);
        double fromMm = middleMm + centreMm;
        return insideMm - fromMm >= widthMm ? (fromMm + insideMm) / 2 * cos
                : cornerMm - outsideMm >= widthMm ? (outsideMm + cornerMm) / 2 * cos : 0;
    }
}
