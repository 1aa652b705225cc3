package kitleaf.sheet.cut;

import kitleaf.sheet.page.Foot;
import kitleaf.sheet.page.Masthead;

/**
 * Where the window of a corner guide lies on its page, and how much room the words around it want.
 *
 * @param leftMm the window's left side: right of the centimetre rule's figures
 * @param topMm its top: below the head, the cut edge's words and the inch rule's figures
 * @param rightMm kept free right of it, for the upright bar
 * @param bottomMm where it ends at the latest: above the level bar and the foot
 * @param cornerMm labels along the left edge nearer than this to the corner would meet those along the top
 * @param acrossApartMm from one label of the thread ticks along the top to the next, at least
 * @param downApartMm the same along the left edge
 * @param labelClearMm how near the end of a window a label may stand before it touches the line there
 * @param figureClearMm how near the end of a window a rule's figure may stand
 * @param sampleWidthMm how much of the design has to be there for the sample and its words
 * @param large what stands elsewhere in large print, or null
 */
record GuideRoom(double leftMm, double topMm, double rightMm, double bottomMm, double cornerMm, double acrossApartMm, double downApartMm, double labelClearMm,
                 double figureClearMm, double sampleWidthMm, GuidePage.Large large) {

    /** From the last line of the title to the line below it, and from there to the words of the cut edge. */
    private static final double LINE_MM = 8;
    /** Those words, the rule's figures and the rule. */
    private static final double EDGE_WORDS_MM = 13;
    /** The level bar with its marks, and the words of a join above it. */
    private static final double BAR_FOOT_MM = 3;
    private static final double BAR_AND_JOIN_MM = 16;

    /** The usual room on a page so high. */
    static GuideRoom ordinary(double paperHeightMm) {
        return new GuideRoom(30, 52, 26, paperHeightMm - 54, 10, 6, 6, 3, Double.NEGATIVE_INFINITY, 0, null);
    }

    /** The room large print leaves between a page's head and foot. */
    static GuideRoom large(Masthead head, Foot foot, boolean tiled) {
        double titleMm = head.stitchMm() - 4;
        double topMm = titleMm + (tiled ? LINE_MM : 0) + EDGE_WORDS_MM + 4;
        return new GuideRoom(26, topMm, 34, foot.topMm() - BAR_AND_JOIN_MM, 16, 13, 6, 8, 4, 68,
                new GuidePage.Large(head, titleMm + LINE_MM, foot.topMm() - BAR_FOOT_MM));
    }
}
