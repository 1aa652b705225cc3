package kitleaf.sheet.cut;

import java.util.Objects;
import kitleaf.sheet.page.Box;

/**
 * One page of a corner guide, every place on it at true size. The window is what the page shows of the cut cloth; parts outside it are not
 * drawn, and {@code null} stands for what the window does not hold.
 *
 * @param head where the page's head has room
 * @param foot where its foot has room
 * @param window the window on the page
 * @param cut which of the window's sides are cut edges
 * @param design the part of the design in the window, or null
 * @param sides which of that part's sides are the design's
 * @param firstStitch whether the first stitch is in the window, at the design part's top left corner
 * @param across along the top edge
 * @param down along the left edge
 * @param sample a few stitches at the size they will have at the hoop, or null
 * @param tile which of the guide's pages it is
 * @param barTopMm where the upright bar begins
 */
public record GuidePage(Box head, Box foot, Box window, Sides cut, Box design, Sides sides, boolean firstStitch, GuideEdge across,
                        GuideEdge down, StitchSample sample, GuideTile tile, double barTopMm) {

    /** Some of a rectangle's sides. */
    public record Sides(boolean left, boolean top, boolean right, boolean bottom) { }

    /** Refuses a missing part. */
    public GuidePage {
        Objects.requireNonNull(window);
        Objects.requireNonNull(tile);
    }
}
