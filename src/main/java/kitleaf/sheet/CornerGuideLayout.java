package kitleaf.sheet;

import java.util.List;
import kitleaf.basket.Cloth;
import kitleaf.basket.Paper;
import kitleaf.basket.Printer;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.cloth.CornerGuide;
import kitleaf.sizing.cloth.CornerGuide.Window;
import kitleaf.sizing.cloth.Extent;
import kitleaf.sizing.cloth.PieceSize;

/** Places a corner guide's windows on pages at true size. */
final class CornerGuideLayout {

    /** Where the window starts: right of the centimetre rule's figures and below the inch rule's. */
    static final double LEFT_MM = 30;
    static final double TOP_MM = 52;
    /** Kept free right of the window, for the upright bar. */
    static final double RIGHT_MM = 26;
    /** Kept free below it, for the level bar and the foot. */
    static final double BELOW_MM = 54;
    private static final double BAR_MM = 100;
    /** What the labels along the top edge take up of the left edge. */
    private static final double CORNER_MM = 10;

    private final Words words;
    private final Figures figures;
    private final CutSheetWords phrases;

    CornerGuideLayout(Words words, Figures figures, CutSheetWords phrases) {
        this.words = words;
        this.figures = figures;
        this.phrases = phrases;
    }

    List<GuidePage> pages(PieceReckoning reckoned, Paper paper, Printer printer) {
        CornerGuide guide = CornerGuide.of(reckoned.cloth().size(),
                paper.widthMm() - LEFT_MM - RIGHT_MM, paper.heightMm() - TOP_MM - BELOW_MM);
        return guide.windows().stream().map(window -> page(guide, window, reckoned, paper, printer)).toList();
    }

    private GuidePage page(CornerGuide guide, Window window, PieceReckoning reckoned, Paper paper, Printer printer) {
        PieceSize size = guide.size();
        Extent across = size.across();
        Extent down = size.down();
        Cloth cloth = reckoned.piece().cloth();
        Box box = new Box(LEFT_MM, TOP_MM, window.widthMm(), window.heightMm());

        Part x = part(across, window.xMm(), window.widthMm(), LEFT_MM);
        Part y = part(down, window.yMm(), window.heightMm(), TOP_MM);
        Box design = x.lengthMm() > 0 && y.lengthMm() > 0 ? new Box(x.fromMm(), y.fromMm(), x.lengthMm(), y.lengthMm()) : null;
        boolean firstStitch = design != null && x.near() && y.near();
        boolean shrinks = CutSheetWords.shrinks(cloth);
        double sampleWidthMm = StitchSample.COLUMNS * across.cellMm();
        boolean sampled = firstStitch && StitchSample.COLUMNS <= across.stitches() && StitchSample.ROWS <= down.stitches()
                && sampleWidthMm + 8 <= x.lengthMm() && 32 + StitchSample.ROWS * down.cellMm() <= y.lengthMm();

        double uprightMm = paper.heightMm() - BELOW_MM - BAR_MM;
        return new GuidePage(box, window.row() == 0, window.column() == 0,
                near(window.yMm() + window.heightMm(), down.cutMm()), near(window.xMm() + window.widthMm(), across.cutMm()),
                design, x.near(), y.near(), x.far(), y.far(), firstStitch,
                window.row() == 0 ? GuidePage.threadMarks(across, window.xMm(), window.widthMm(), LEFT_MM, 0) : List.of(),
                window.column() == 0 ? GuidePage.threadMarks(down, window.yMm(), window.heightMm(), TOP_MM, CORNER_MM) : List.of(),
                window.row() == 0 ? GuidePage.ruleMarks(25.4 / 8, 8, window.xMm(), window.widthMm(), LEFT_MM) : List.of(),
                window.column() == 0 ? GuidePage.ruleMarks(1, 10, window.yMm(), window.heightMm(), TOP_MM) : List.of(),
                sampled ? StitchSample.path(design.xMm() + 4, design.yMm() + 28, across.cellMm(), down.cellMm()) : "",
                sampleWidthMm,
                Joins.of(window.column(), window.row(), guide.columns(), guide.rows(), words), guide.columns(), guide.rows(), window.column(), window.row(),
                Math.max(20, Math.min(TOP_MM, uprightMm)),
                phrases.worked(cloth.kind(), cloth.count(), cloth.over()),
                words.say("guide.distances", figures.length(across.nearEdgeToDesignMm()), figures.other(across.nearEdgeToDesignMm()),
                        figures.length(down.nearEdgeToDesignMm()), figures.other(down.nearEdgeToDesignMm())),
                figures.length(across.nearEdgeToDesignMm()) + " · " + figures.other(across.nearEdgeToDesignMm()),
                figures.length(down.nearEdgeToDesignMm()),
                words.say("guide.prick", phrases.threads(across.nearThreads(), cloth.kind()), phrases.threads(down.nearThreads(), cloth.kind())),
                ticksNote(cloth, shrinks),
                words.say(shrinks ? "guide.sample-after" : "guide.sample"),
                words.say("guide.measure"));
    }

    private String ticksNote(Cloth cloth, boolean shrinks) {
        boolean warpDown = cloth.warp() == Cloth.WarpRun.DOWN;
        // Counting across meets the threads that run down.
        return words.say(shrinks ? "guide.ticks-before" : "guide.ticks",
                words.say(cloth.kind() == Cloth.Kind.BLOCK ? "guide.blocks" : "guide.threads"),
                words.say(warpDown ? "guide.warp" : "guide.weft"), words.say(warpDown ? "guide.weft" : "guide.warp"));
    }

    /** What of the design lies in a window, in one direction, on the page. */
    private record Part(double fromMm, double lengthMm, boolean near, boolean far) { }

    private static Part part(Extent extent, double windowFromMm, double windowLengthMm, double pageFromMm) {
        double nearMm = extent.nearEdgeToDesignMm() - windowFromMm;
        double farMm = nearMm + extent.designAtTableMm();
        double fromMm = Math.max(0, nearMm);
        double toMm = Math.min(windowLengthMm, farMm);
        return new Part(pageFromMm + fromMm, toMm - fromMm, nearMm >= 0 && nearMm < windowLengthMm, farMm > 0 && farMm <= windowLengthMm);
    }

    /** Whether two lengths that were reckoned on different ways to one place are that place. */
    private static boolean near(double aMm, double bMm) {
        return Math.abs(aMm - bMm) < 1e-6;
    }
}
