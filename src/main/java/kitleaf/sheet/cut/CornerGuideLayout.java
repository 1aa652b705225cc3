package kitleaf.sheet.cut;

import java.util.List;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.Join;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.TypeScale;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.cloth.CornerGuide;
import kitleaf.sizing.cloth.CornerGuide.Window;
import kitleaf.sizing.cloth.Extent;
import kitleaf.words.Words;

/** Places a corner guide's windows on pages at true size. */
final class CornerGuideLayout {

    private static final double MM_PER_IN = 25.4;
    /** From one label of the ticks down the left edge to the next, at least. */
    private static final double DOWN_APART_MM = 6;

    /** A number as wide as that of a page may become. */
    private static final int MOST_PAGES = 88;

    private final Words words;
    private final SheetSettings settings;
    private final Frames frames;
    /** The size of the ticks' and the rules' figures. */
    private final double figureMm;

    CornerGuideLayout(Words words, SheetSettings settings, Frames frames) {
        this.words = words;
        this.settings = settings;
        this.frames = frames;
        this.figureMm = TypeScale.mm(settings.type().fine());
    }

    List<GuidePage> pages(PieceReckoning reckoned, GuideWords said) {
        String title = reckoned.piece().title();
        GuideRoom room = GuideRoom.of(title, said, "", frames, settings);
        CornerGuide guide = CornerGuide.of(reckoned.cloth().size(), room.widthMm(), room.heightMm());
        String tile = words.say("guide.piece-of", MOST_PAGES, MOST_PAGES, MOST_PAGES, MOST_PAGES);
        GuideRoom placed = guide.windows().size() == 1 ? room : GuideRoom.of(title, said, tile, frames, settings);
        CornerGuide parted = CornerGuide.of(reckoned.cloth().size(), placed.widthMm(), placed.heightMm());
        return parted.windows().stream().map(window -> page(parted, window, placed)).toList();
    }

    private GuidePage page(CornerGuide guide, Window window, GuideRoom room) {
        Extent across = guide.size().across();
        Extent down = guide.size().down();
        GuideEdge.Span acrossSpan = new GuideEdge.Span(window.xMm(), window.widthMm(), room.leftMm());
        GuideEdge.Span downSpan = new GuideEdge.Span(window.yMm(), window.heightMm(), room.topMm());
        Part x = part(across, acrossSpan);
        Part y = part(down, downSpan);
        boolean left = window.column() == 0;
        boolean top = window.row() == 0;
        boolean hasDesign = x.lengthMm() > 0 && y.lengthMm() > 0;
        boolean firstStitch = hasDesign && x.near() && y.near();
        boolean sampled = firstStitch && StitchSample.COLUMNS <= across.stitches() && StitchSample.ROWS <= down.stitches();
        double clearMm = figureMm * 1.45;
        return new GuidePage(room.head(), room.foot(), new Box(room.leftMm(), room.topMm(), window.widthMm(), window.heightMm()),
                new GuidePage.Sides(left, top, near(acrossSpan.toMm(), across.cutMm()), near(downSpan.toMm(), down.cutMm())),
                hasDesign ? new Box(x.fromMm(), y.fromMm(), x.lengthMm(), y.lengthMm()) : null,
                new GuidePage.Sides(x.near(), y.near(), x.far(), y.far()), firstStitch,
                !top ? GuideEdge.BARE : new GuideEdge(GuideEdge.threads(across, acrossSpan, 1.2 + figureMm * 2.1, clearMm, 0),
                        GuideEdge.rule(MM_PER_IN / 8, 8, acrossSpan, figureMm * 0.7)),
                !left ? GuideEdge.BARE : new GuideEdge(GuideEdge.threads(down, downSpan, DOWN_APART_MM, clearMm, 6 + figureMm * 1.8),
                        GuideEdge.rule(1, 10, downSpan, figureMm * 0.7)),
                sampled ? StitchSample.of(across.cellMm(), down.cellMm()) : null,
                new GuideTile(guide.columns(), guide.rows(), window.column(), window.row(),
                        Join.of(window.column(), window.row(), guide.columns(), guide.rows(), words)),
                room.barTopMm());
    }

    /** What of the design lies in a window, in one direction, on the page. */
    private record Part(double fromMm, double lengthMm, boolean near, boolean far) { }

    private static Part part(Extent extent, GuideEdge.Span window) {
        double nearMm = extent.nearEdgeToDesignMm() - window.fromMm();
        double farMm = nearMm + extent.designAtTableMm();
        double fromMm = Math.max(0, nearMm);
        double toMm = Math.min(window.lengthMm(), farMm);
        return new Part(window.pageMm() + fromMm, toMm - fromMm, nearMm >= 0 && nearMm < window.lengthMm(),
                farMm > 0 && farMm <= window.lengthMm());
    }

    /** Whether two lengths that were reckoned on different ways to one place are that place. */
    private static boolean near(double aMm, double bMm) {
        return Math.abs(aMm - bMm) < 1e-6;
    }
}
