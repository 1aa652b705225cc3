package kitleaf.sheet.cut;

import kitleaf.basket.Paper;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.TextRuler;
import kitleaf.sheet.page.TypeScale;

/**
 * Where a window of a corner guide may lie on its page: what stands round it goes with the type. The template
 * sets the words in what is left.
 *
 * @param head where the page's head has room
 * @param foot where its foot has room, from the note on the ticks
 * @param leftMm its left side: right of what is written at a join
 * @param topMm its top: below the head and the cut edge's words
 * @param rightMm where it ends at the latest: left of the upright bar and of what is written at a join
 * @param bottomMm where it ends at the latest: above the foot, and what is written at a join
 * @param figureMm the height of the smallest type
 */
public record GuideRoom(Box head, Box foot, double leftMm, double topMm, double rightMm, double bottomMm, double figureMm) {

    private static final double BAR_MM = 100;
    /** The upright bar stands no higher, so that it keeps clear of the paper's edge. */
    private static final double HIGHEST_BAR_MM = 20;

    /** What is read at the table is no smaller than this, see {@code corner-guide.ftlx}. */
    private static final double WORK_PT = 10;
    /** Where a page's head begins. */
    private static final double HEAD_MM = 14.6;
    /** What the words beside the title take, and keep from it. */
    private static final double ASIDE_MM = 70;
    /** Which page this is, as a small map beside the title. */
    private static final double MAP_MM = 16;
    private static final int MOST_LINES = 4;

    /**
     * The room on a page of the basket's paper.
     *
     * @param tile which of several pages it is, in words; empty for the only one
     */
    static GuideRoom of(String title, GuideWords words, String tile, Frames frames, SheetSettings settings) {
        TypeScale type = settings.type();
        Paper paper = settings.paper();
        double innerMm = paper.widthMm() - 2 * Frames.MARGIN_MM;
        double rightMm = 20.5 + 2.4 * TypeScale.mm(type.fine());
        double narrowMm = innerMm - (rightMm - Frames.MARGIN_MM);
        double joinMm = 2.5 + TypeScale.mm(type.fine());
        Box foot = foot(words, innerMm, frames, settings);
        if (barTopMm(foot.yMm() - joinMm) + BAR_MM > foot.yMm()) {
            foot = foot(words, narrowMm, frames, settings);
        }
        double bottomMm = foot.yMm() - joinMm;
        double headMm = headMm(title, words, tile, innerMm, settings);
        boolean narrow = barTopMm(bottomMm) < HEAD_MM + headMm;
        Box head = new Box(Frames.MARGIN_MM, HEAD_MM, narrow ? narrowMm : innerMm,
                narrow ? headMm(title, words, tile, narrowMm, settings) : headMm);
        return new GuideRoom(head, foot, Frames.MARGIN_MM + 2.5 * TypeScale.mm(type.fine()),
                head.bottomMm() + 2.5 + 2 * TypeScale.mm(type.table()),
                paper.widthMm() - rightMm, bottomMm, TypeScale.mm(type.fine()));
    }

    /** The note on the ticks, the level bar with what is said of it, and what every page has at its foot. */
    private static Box foot(GuideWords words, double widthMm, Frames frames, SheetSettings settings) {
        TypeScale type = settings.type();
        double workPt = type.floor(WORK_PT);
        int lines = settings.ruler().lines(words.ticks(), "text", 400, workPt, widthMm);
        double noteMm = type.besides() ? 1.5 + lines * type.lineMm(workPt) : 0;
        // What the level bar measures stands beside it, and two lines on it where they have room; else below it.
        boolean beside = widthMm >= BAR_MM + 3 + TypeScale.mm(type.fine()) * 4;
        double barMm = beside ? Math.max(5.6, type.lineMm(type.fine())) : 2.6 + type.lineMm(type.fine());
        double heightMm = noteMm + 2.5 + barMm + frames.footMm("", widthMm);
        return new Box(Frames.MARGIN_MM, settings.paper().heightMm() - Frames.LOWEST_MM - heightMm, widthMm, heightMm);
    }

    /** The head of a page, in a width: eyebrow and title, and which page it is; beside them what else there is to say, or nothing. */
    private static double headMm(String title, GuideWords words, String tile, double widthMm, SheetSettings settings) {
        TypeScale type = settings.type();
        TextRuler ruler = settings.ruler();
        double workPt = type.floor(WORK_PT);
        int lines = Math.min(MOST_LINES, ruler.lines(title, "heading", 500, type.heading(), widthMm - (type.besides() ? ASIDE_MM : 0)));
        double namedMm = type.lineMm(type.table()) + TypeScale.mm(type.heading()) * (0.12 + 1.1 * lines);
        if (!type.besides()) {
            return namedMm + (tile.isEmpty() ? 0 : 1 + type.lineMm(workPt) * ruler.lines(tile, "text", 600, workPt, widthMm));
        }
        double saidMm = type.lineMm(workPt) * ruler.lines(words.cloth(), "text", 400, workPt, ASIDE_MM - 4);
        return Math.max(namedMm, saidMm + (tile.isEmpty() ? 0 : MAP_MM));
    }

    /** Where the upright bar begins beside a window that begins and ends there. */
    private static double barTopMm(double bottomMm) {
        return Math.max(HIGHEST_BAR_MM, bottomMm - BAR_MM);
    }

    /** Where the upright bar begins. */
    public double barTopMm() {
        return Math.min(topMm, barTopMm(bottomMm));
    }

    double widthMm() {
        return rightMm - leftMm;
    }

    double heightMm() {
        return bottomMm - topMm;
    }

    /** How deep a strip of a guide in an L should be: what stands at its edge, and words at its joins. */
    double stripMm() {
        return 20 * figureMm;
    }

    /** A rectangle on the page. */
    public Box box(double xMm, double yMm, double widthMm, double heightMm) {
        return new Box(xMm, yMm, widthMm, heightMm);
    }
}
