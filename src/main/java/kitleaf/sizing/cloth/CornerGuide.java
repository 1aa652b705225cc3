package kitleaf.sizing.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The corner guide of a piece: which windows of the cut cloth, at true size, have to be printed so that its
 * top left corner and the first stitch stand on one piece of paper.
 *
 * <p>All lengths are for the cloth at the cutting table, measured from the cut corner.
 *
 * @param size the piece
 * @param windows what each printed page shows, row by row
 * @param columns windows side by side, 1 or more
 * @param rows windows one below the other, 1 or more
 */
public record CornerGuide(PieceSize size, List<Window> windows, int columns, int rows) {

    /** How far past the first stitch a guide must reach, so that there is a corner to see. */
    static final double INSIDE_MM = 15;

    /** The strip of blank paper past a join line, slid under the next page and pasted. */
    public static final double LIP_MM = 8;

    /** How far a join line keeps from the first stitch, so that its mark stands on one page. */
    static final double CLEAR_MM = 8;

    /**
     * What one page shows.
     *
     * @param column from 0
     * @param row from 0
     * @param xMm from the left cut edge to the window's left side
     * @param yMm from the top cut edge to the window's top side
     * @param widthMm above 0
     * @param heightMm above 0
     */
    public record Window(int column, int row, double xMm, double yMm, double widthMm, double heightMm) { }

    /** Copies the list. */
    public CornerGuide {
        Objects.requireNonNull(size);
        windows = List.copyOf(windows);
    }

    /**
     * The guide of a piece on pages with so much room.
     *
     * @param roomAcrossMm what a page can show across, above {@link #LIP_MM} + {@link #CLEAR_MM}
     * @param roomDownMm what a page can show down, likewise
     */
    public static CornerGuide of(PieceSize size, double roomAcrossMm, double roomDownMm) {
        List<Span> across = spans(size.across(), roomAcrossMm);
        List<Span> down = spans(size.down(), roomDownMm);
        List<Window> windows = new ArrayList<>();
        for (int row = 0; row < down.size(); row++) {
            for (int column = 0; column < across.size(); column++) {
                windows.add(new Window(column, row, across.get(column).startMm(), down.get(row).startMm(),
                        across.get(column).lengthMm(), down.get(row).lengthMm()));
            }
        }
        return new CornerGuide(size, windows, across.size(), down.size());
    }

    /**
     * The threads of every tenth tick within a stretch, with the distance of each from the cut edge. Each is reckoned
     * from the edge, never from the tick before, so that no error adds up.
     */
    public static List<Tick> ticks(Extent extent, double fromMm, double toMm) {
        List<Tick> ticks = new ArrayList<>();
        double pitchMm = extent.tablePitchMm();
        for (long thread = 10; thread * pitchMm <= toMm; thread += 10) {
            if (thread * pitchMm >= fromMm) {
                ticks.add(new Tick(thread, thread * pitchMm));
            }
        }
        return ticks;
    }

    /**
     * One tick.
     *
     * @param thread how many threads from the cut edge
     * @param atMm how far from the cut edge
     */
    public record Tick(long thread, double atMm) { }

    private record Span(double startMm, double lengthMm) { }

    private static List<Span> spans(Extent extent, double roomMm) {
        if (!(roomMm > LIP_MM + CLEAR_MM)) {
            throw new IllegalArgumentException("no room for a guide: " + roomMm);
        }
        double cutMm = extent.cutMm();
        double edgeMm = extent.nearEdgeToDesignMm();
        double needMm = Math.min(cutMm, edgeMm + INSIDE_MM);
        if (needMm <= roomMm) {
            return List.of(new Span(0, Math.min(roomMm, cutMm)));
        }
        double strideMm = stride(edgeMm, roomMm - LIP_MM);
        List<Span> spans = new ArrayList<>();
        double startMm = 0;
        for (int n = 1; needMm - startMm > roomMm; n++) {
            spans.add(new Span(startMm, n * strideMm - startMm));
            startMm = n * strideMm;
        }
        spans.add(new Span(startMm, Math.min(roomMm, cutMm - startMm)));
        return spans;
    }

    /** The longest distance between joins, up to the most, that leaves the first stitch clear of every join. */
    private static double stride(double edgeMm, double mostMm) {
        long joins = Math.round(edgeMm / mostMm);
        return joins >= 1 && Math.abs(joins * mostMm - edgeMm) < CLEAR_MM ? (edgeMm - CLEAR_MM) / joins : mostMm;
    }
}
