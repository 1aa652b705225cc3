package kitleaf.sheet.cut;

import java.util.List;
import kitleaf.basket.Cloth;
import kitleaf.basket.Paper;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.Join;
import kitleaf.sheet.page.Masthead;
import kitleaf.sheet.page.PageFrame;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.words.ClothWords;
import kitleaf.sheet.words.Figures;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.cloth.CornerGuide.Window;
import kitleaf.sizing.cloth.CornerGuide;
import kitleaf.sizing.cloth.Extent;
import kitleaf.sizing.cloth.PieceSize;
import kitleaf.words.Words;

/** Places a corner guide's windows on pages at true size. */
final class CornerGuideLayout {

    private static final double BAR_MM = 100;
    /** What the upright bar takes of the head's width in large print. */
    private static final double BAR_ROOM_MM = 24;

    private final Words words;
    private final Figures figures;
    private final ClothWords clothWords;
    private final SheetSettings settings;
    private final PageFrame frame;

    CornerGuideLayout(Words words, Figures figures, SheetSettings settings, PageFrame frame) {
        this.words = words;
        this.figures = figures;
        this.clothWords = new ClothWords(words, figures);
        this.settings = settings;
        this.frame = frame;
    }

    List<GuidePage> pages(PieceReckoning reckoned) {
        GuideRoom room = room(reckoned, false);
        CornerGuide guide = guide(reckoned, room);
        if (settings.type().large() && guide.windows().size() > 1) {
            GuideRoom tiled = room(reckoned, true);
            CornerGuide parted = guide(reckoned, tiled);
            return parted.windows().stream().map(window -> page(parted, window, reckoned, tiled)).toList();
        }
        return guide.windows().stream().map(window -> page(guide, window, reckoned, room)).toList();
    }

    private GuideRoom room(PieceReckoning reckoned, boolean tiled) {
        Paper paper = settings.paper();
        return settings.type().large() ? GuideRoom.large(Masthead.of(words.say("guide.eyebrow"), reckoned.piece().title(), "", false,
                paper.widthMm() - 2 * Frames.MARGIN_MM - BAR_ROOM_MM, settings.type(), settings.ruler(), settings.language()), frame.foot(), tiled)
                : GuideRoom.ordinary(paper.heightMm());
    }

    private CornerGuide guide(PieceReckoning reckoned, GuideRoom room) {
        return CornerGuide.of(reckoned.cloth().size(), settings.paper().widthMm() - room.leftMm() - room.rightMm(), room.bottomMm() - room.topMm());
    }

    private GuidePage page(CornerGuide guide, Window window, PieceReckoning reckoned, GuideRoom room) {
        PieceSize size = guide.size();
        Extent across = size.across();
        Extent down = size.down();
        Cloth cloth = reckoned.piece().cloth();
        Box box = new Box(room.leftMm(), room.topMm(), window.widthMm(), window.heightMm());

        Part x = part(across, window.xMm(), window.widthMm(), room.leftMm());
        Part y = part(down, window.yMm(), window.heightMm(), room.topMm());
        Box design = x.lengthMm() > 0 && y.lengthMm() > 0 ? new Box(x.fromMm(), y.fromMm(), x.lengthMm(), y.lengthMm()) : null;
        boolean firstStitch = design != null && x.near() && y.near();
        boolean shrinks = CutSheetWords.shrinks(cloth);
        double sampleWidthMm = StitchSample.COLUMNS * across.cellMm();
        boolean sampled = firstStitch && StitchSample.COLUMNS <= across.stitches() && StitchSample.ROWS <= down.stitches()
                && Math.max(sampleWidthMm + 8, room.sampleWidthMm()) <= x.lengthMm() && 32 + StitchSample.ROWS * down.cellMm() <= y.lengthMm();

        double uprightMm = room.bottomMm() - BAR_MM;
        return new GuidePage(box, window.row() == 0, window.column() == 0,
                near(window.yMm() + window.heightMm(), down.cutMm()), near(window.xMm() + window.widthMm(), across.cutMm()),
                design, x.near(), y.near(), x.far(), y.far(), firstStitch,
                window.row() == 0 ? GuidePage.threadMarks(across, window.xMm(), window.widthMm(), room.leftMm(), room.acrossApartMm(),
                        room.labelClearMm(), room.large() == null, 0) : List.of(),
                window.column() == 0 ? GuidePage.threadMarks(down, window.yMm(), window.heightMm(), room.topMm(), room.downApartMm(),
                        room.labelClearMm(), room.large() == null, room.cornerMm()) : List.of(),
                window.row() == 0 ? GuidePage.ruleMarks(25.4 / 8, 8, window.xMm(), window.widthMm(), room.leftMm(), room.figureClearMm()) : List.of(),
                window.column() == 0 ? GuidePage.ruleMarks(1, 10, window.yMm(), window.heightMm(), room.topMm(), room.figureClearMm()) : List.of(),
                sampled ? StitchSample.path(design.xMm() + 4, design.yMm() + 28, across.cellMm(), down.cellMm()) : "",
                sampleWidthMm,
                Join.of(window.column(), window.row(), guide.columns(), guide.rows(), words), guide.columns(), guide.rows(), window.column(), window.row(),
                Math.max(20, Math.min(room.topMm(), uprightMm)),
                clothWords.worked(cloth.kind(), cloth.count(), cloth.over()),
                words.say("guide.distances", figures.length(across.nearEdgeToDesignMm()), figures.other(across.nearEdgeToDesignMm()),
                        figures.length(down.nearEdgeToDesignMm()), figures.other(down.nearEdgeToDesignMm())),
                figures.length(across.nearEdgeToDesignMm()) + " · " + figures.other(across.nearEdgeToDesignMm()),
                figures.length(across.nearEdgeToDesignMm()), figures.length(down.nearEdgeToDesignMm()),
                words.say("guide.prick", clothWords.threads(across.nearThreads(), cloth.kind()), clothWords.threads(down.nearThreads(), cloth.kind())),
                ticksNote(cloth, shrinks),
                words.say(shrinks ? "guide.sample-after" : "guide.sample"),
                words.say("guide.measure"), room.large());
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
