package kitleaf.sheet.cut;

import java.util.ArrayList;
import java.util.List;
import kitleaf.sizing.cloth.CornerGuide;
import kitleaf.sizing.cloth.Extent;

/**
 * The marks along one edge of a corner guide's window.
 *
 * @param threads every tenth thread, inside; none where the edge is no cut edge
 * @param rule eighths of an inch or millimetres, outside
 */
public record GuideEdge(List<Mark> threads, List<Mark> rule) {

    static final GuideEdge BARE = new GuideEdge(List.of(), List.of());

    /**
     * A mark along an edge.
     *
     * @param atMm its place on the page, from the left for marks along the top edge, from the top for marks along the left
     * @param lengthMm how long it is drawn
     * @param label what is written at it; empty for nothing
     */
    public record Mark(double atMm, double lengthMm, String label) { }

    /**
     * What a window shows of one direction of the cloth.
     *
     * @param fromMm where it begins, from the cut edge
     * @param lengthMm how long it is
     * @param pageMm where it begins on the page
     */
    record Span(double fromMm, double lengthMm, double pageMm) {

        double toMm() {
            return fromMm + lengthMm;
        }

        double onPageMm(double atMm) {
            return pageMm + (atMm - fromMm);
        }
    }

    /** Copies the lists. */
    public GuideEdge {
        threads = List.copyOf(threads);
        rule = List.copyOf(rule);
    }

    /**
     * Every tenth thread, longer at each fiftieth, and labelled every ten, twenty or fifty, as there is room.
     *
     * @param apartMm from one label to the next, at least
     * @param clearMm how near the end of a window a label may stand before it touches the line there
     * @param labelFromMm labels nearer than this to the cut edge are left out, where they would meet the other edge's
     */
    static List<Mark> threads(Extent extent, Span window, double apartMm, double clearMm, double labelFromMm) {
        List<Mark> marks = new ArrayList<>();
        int labelEvery = extent.tablePitchMm() * 10 >= apartMm ? 10 : extent.tablePitchMm() * 20 >= apartMm ? 20 : 50;
        for (CornerGuide.Tick tick : CornerGuide.ticks(extent, window.fromMm, window.toMm())) {
            boolean fiftieth = tick.thread() % 50 == 0;
            boolean clear = tick.atMm() >= labelFromMm && window.toMm() - tick.atMm() >= clearMm
                    && (window.fromMm == 0 || tick.atMm() - window.fromMm >= clearMm);
            marks.add(new Mark(window.onPageMm(tick.atMm()), fiftieth ? 4.5 : 2.8,
                    clear && tick.thread() % labelEvery == 0 ? Long.toString(tick.thread()) : ""));
        }
        return marks;
    }

    /**
     * A rule: marks at whole multiples of a division, each reckoned from the cut edge.
     *
     * @param clearMm figures nearer than this to the window's end are left out
     */
    static List<Mark> rule(double divisionMm, int divisionsPerUnit, Span window, double clearMm) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i * divisionMm <= window.toMm(); i++) {
            double atMm = i * divisionMm;
            if (atMm >= window.fromMm) {
                boolean whole = i % divisionsPerUnit == 0;
                boolean half = i * 2 % divisionsPerUnit == 0;
                boolean quarter = i * 4 % divisionsPerUnit == 0;
                marks.add(new Mark(window.onPageMm(atMm), whole ? 4.2 : half ? 3 : quarter ? 2.2 : 1.5,
                        whole && i > 0 && window.toMm() - atMm >= clearMm ? Integer.toString(i / divisionsPerUnit) : ""));
            }
        }
        return marks;
    }
}
