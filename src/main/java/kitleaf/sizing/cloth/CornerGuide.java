package kitleaf.sizing.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The corner guide of a piece: which windows of the cut cloth, at true size, have to be printed so that its
 * top left corner and the first stitch stand on one piece of paper. Where that takes more than one page both ways, it is an L: a strip
 * along either cut edge, until past the first stitch, and a patch round the first stitch, which no strip reaches.
 *
 * <p>All lengths are for the cloth at the cutting table, measured from the cut corner.
 *
 * @param size the piece
 * @param windows what each printed page shows: the top row from the corner on, what lies below the corner, and last the first stitch
 * @param columns windows side by side, 1 or more
 * @param rows windows one below the other, 1 or more
 * @param stripMm how deep the strips of an L are; 0 for a guide that is none
 */
public record CornerGuide(PieceSize size, List<Window> windows, int columns, int rows, double stripMm) {

    /** How far past the first stitch a guide must reach, so that there is a corner to see. */
    static final double INSIDE_MM = 15;

    /** The strip of blank paper past a join line, slid under the next page and pasted. */
    public static final double LIP_MM = 8;

    /** How far a join line keeps from the first stitch, so that its mark stands on one page. */
    static final double CLEAR_MM = 8;

    /** How much of the cloth before the first stitch its patch shows. */
    private static final double BEFORE_MM = 12;

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
     * @param stripMm how deep the strips of an L should be; they are less where they have no room
     */
    public static CornerGuide of(PieceSize size, double roomAcrossMm, double roomDownMm, double stripMm) {
        List<Span> across = spans(size.across(), roomAcrossMm);
        List<Span> down = spans(size.down(), roomDownMm);
        boolean isL = across.size() > 1 && down.size() > 1;
        // The first window ends before the first stitch, either way.
        double deepMm = isL ? Math.min(stripMm, Math.min(across.get(0).lengthMm, down.get(0).lengthMm)) : 0;
        List<Window> windows = new ArrayList<>();
        for (int row = 0; row < down.size(); row++) {
            for (int column = 0; column < (isL && row > 0 ? 1 : across.size()); column++) {
                windows.add(new Window(column, row, across.get(column).startMm, down.get(row).startMm,
                        isL && row > 0 ? deepMm : across.get(column).lengthMm, isL && column > 0 ? deepMm : down.get(row).lengthMm));
            }
        }
        if (isL) {
            Span x = patch(size.across(), roomAcrossMm);
            Span y = patch(size.down(), roomDownMm);
            windows.add(new Window(across.size() - 1, down.size() - 1, x.startMm, y.startMm, x.lengthMm, y.lengthMm));
        }
        return new CornerGuide(size, windows, across.size(), down.size(), deepMm);
    }

    private static Span patch(Extent extent, double roomMm) {
        double startMm = Math.max(0, extent.nearEdgeToDesignMm() - BEFORE_MM);
        return new Span(startMm, Math.min(roomMm, extent.cutMm() - startMm));
    }

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
