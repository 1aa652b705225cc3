package kitleaf.sheet.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Join;
import kitleaf.sheet.page.Masthead;
import kitleaf.sizing.cloth.CornerGuide;
import kitleaf.sizing.cloth.Extent;

/**
 * One page of a corner guide, every place on it at true size. The window is what the page shows of the cut
 * cloth; parts outside it are not drawn, and {@code null} stands for what the window does not hold.
 *
 * @param window the window on the page
 * @param topEdge whether the window's top side is the cut edge
 * @param leftEdge whether its left side is
 * @param bottomEdge whether its bottom side is
 * @param rightEdge whether its right side is
 * @param design the part of the design in the window, or null
 * @param designLeft whether the design's left side is in the window
 * @param designTop whether its top side is
 * @param designRight whether its right side is
 * @param designBottom whether its bottom side is
 * @param firstStitch whether the first stitch is in the window, at the design part's top left corner
 * @param acrossTicks every tenth thread along the top edge
 * @param downTicks every tenth thread along the left edge
 * @param inchMarks eighths of an inch along the top edge, outside
 * @param centimetreMarks millimetres along the left edge, outside
 * @param sample outlines of a few crosses at the size they will have at the hoop, as path data; empty for none
 * @param sampleWidthMm how wide the sample is
 * @param joins the lines where this page meets its neighbours
 * @param columns pages side by side
 * @param rows pages one below the other
 * @param column this one, from 0
 * @param row this one, from 0
 * @param barTopMm where the upright bar begins
 * @param heading right of the title: the cloth
 * @param distances from cut edge to first stitch, in words
 * @param acrossLength from the left edge to the first stitch, written
 * @param acrossBrief the same in one unit
 * @param downLength from the top edge to the first stitch, written
 * @param prick what to do at the first stitch
 * @param ticksNote which threads the ticks count, and in which state of the cloth
 * @param sampleNote what the sample shows
 * @param barsNote what to do with the bars
 * @param large where large print has its head and its bars, or null
 */
public record GuidePage(Box window, boolean topEdge, boolean leftEdge, boolean bottomEdge, boolean rightEdge,
                        Box design, boolean designLeft, boolean designTop, boolean designRight, boolean designBottom,
                        boolean firstStitch, List<Mark> acrossTicks, List<Mark> downTicks, List<Mark> inchMarks,
                        List<Mark> centimetreMarks, String sample, double sampleWidthMm, List<Join> joins,
                        int columns, int rows, int column, int row, double barTopMm, String heading,
                        String distances, String acrossLength, String acrossBrief, String downLength, String prick, String ticksNote,
                        String sampleNote, String barsNote, Large large) {

    /** Copies the lists. */
    public GuidePage {
        Objects.requireNonNull(window);
        acrossTicks = List.copyOf(acrossTicks);
        downTicks = List.copyOf(downTicks);
        inchMarks = List.copyOf(inchMarks);
        centimetreMarks = List.copyOf(centimetreMarks);
        joins = List.copyOf(joins);
    }

    /**
     * A mark along an edge.
     *
     * @param atMm its place on the page, from the left for marks along the top edge, from the top for marks along the left
     * @param lengthMm how long it is drawn
     * @param label what is written at it; empty for nothing
     */
    public record Mark(double atMm, double lengthMm, String label) { }

    /**
     * What stands elsewhere in large print.
     *
     * @param head above the window
     * @param pageOfMm the baseline of the line that says which page this is
     * @param barMm where the level bar of 100 mm is
     */
    public record Large(Masthead head, double pageOfMm, double barMm) { }

    /**
     * Every tenth thread within a window, longer and always labelled at each fiftieth.
     *
     * @param apartMm from one label to the next, at least
     * @param clearMm how near the end of a window a label may stand before it touches the line there
     * @param halves whether a label may also stand between two fiftieths where tens have no room
     * @param labelFromMm labels nearer than this to the cut edge are left out, where they would meet the other edge's
     */
    static List<Mark> threadMarks(Extent extent, double windowFromMm, double windowLengthMm, double pageFromMm, double apartMm,
                                  double clearMm, boolean halves, double labelFromMm) {
        List<Mark> marks = new ArrayList<>();
        int labelEvery = extent.tablePitchMm() * 10 >= apartMm ? 10 : halves && extent.tablePitchMm() * 20 >= apartMm ? 20 : 50;
        for (CornerGuide.Tick tick : CornerGuide.ticks(extent, windowFromMm, windowFromMm + windowLengthMm)) {
            boolean fiftieth = tick.thread() % 50 == 0;
            boolean clear = tick.atMm() >= labelFromMm && windowFromMm + windowLengthMm - tick.atMm() >= clearMm
                    && (windowFromMm == 0 || tick.atMm() - windowFromMm >= clearMm);
            marks.add(new Mark(pageFromMm + (tick.atMm() - windowFromMm), fiftieth ? 4.5 : 2.8,
                    clear && (fiftieth || tick.thread() % labelEvery == 0) ? Long.toString(tick.thread()) : ""));
        }
        return marks;
    }

    /**
     * A rule within a window: marks at whole multiples of a division, each reckoned from the cut edge.
     *
     * @param clearMm figures nearer than this to the window's end are left out
     */
    static List<Mark> ruleMarks(double divisionMm, int divisionsPerUnit, double windowFromMm, double windowLengthMm, double pageFromMm,
                                double clearMm) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i * divisionMm <= windowFromMm + windowLengthMm; i++) {
            double atMm = i * divisionMm;
            if (atMm >= windowFromMm) {
                boolean whole = i % divisionsPerUnit == 0;
                boolean half = i * 2 % divisionsPerUnit == 0;
                boolean quarter = i * 4 % divisionsPerUnit == 0;
                marks.add(new Mark(pageFromMm + (atMm - windowFromMm), whole ? 4.2 : half ? 3 : quarter ? 2.2 : 1.5,
                        whole && i > 0 && windowFromMm + windowLengthMm - atMm >= clearMm ? Integer.toString(i / divisionsPerUnit) : ""));
            }
        }
        return marks;
    }
}
