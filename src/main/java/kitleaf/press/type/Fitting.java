package kitleaf.press.type;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A text fitted to its box: wrapped, then shrunk as little as will do, then cut with an ellipsis.
 *
 * @param galley the glyphs, at full size
 * @param factor what all sizes are multiplied by, at most 1
 * @param cut whether not all of the text is there
 */
record Fitting(Galley galley, List<Line> lines, double factor, boolean cut) {

    /** Halvings of the range of sizes: finer than a thousandth of a point. */
    private static final int HALVINGS = 16;

    Fitting {
        lines = List.copyOf(lines);
    }

    /** The text as one line, as it is. */
    static Fitting free(Galley galley) {
        return new Fitting(galley, List.of(galley.whole()), 1, false);
    }

    /**
     * The text in a box.
     *
     * @param widthPt the box's width
     * @param most the number of lines it may take, 1 or more
     * @param floor the smallest factor allowed, 1 for no shrinking
     */
    static Fitting boxed(Galley galley, double widthPt, int most, double floor) {
        // A word is parted only when no size allowed keeps it whole.
        return shrunk(galley, widthPt, most, floor, false)
                .or(() -> shrunk(galley, widthPt, most, floor, true))
                .orElseGet(() -> cut(galley, widthPt, most, floor));
    }

    private static Optional<Fitting> shrunk(Galley galley, double widthPt, int most, double floor, boolean split) {
        Optional<Fitting> full = at(1, galley, widthPt, most, split);
        if (full.isPresent() || floor >= 1) {
            return full;
        }
        Optional<Fitting> best = at(floor, galley, widthPt, most, split);
        double fits = floor;
        double tooLarge = 1;
        for (int i = 0; best.isPresent() && i < HALVINGS; i++) {
            double middle = (fits + tooLarge) / 2;
            Optional<Fitting> tried = at(middle, galley, widthPt, most, split);
            if (tried.isPresent()) {
                best = tried;
                fits = middle;
            } else {
                tooLarge = middle;
            }
        }
        return best;
    }

    private static Optional<Fitting> at(double factor, Galley galley, double widthPt, int most, boolean split) {
        return galley.lines(widthPt / factor, split).filter(lines -> lines.size() <= most)
                .map(lines -> new Fitting(galley, lines, factor, false));
    }

    private static Fitting cut(Galley galley, double widthPt, int most, double factor) {
        Optional<List<Line>> all = galley.lines(widthPt / factor, true);
        List<Line> kept = new ArrayList<>();
        if (all.isPresent()) {
            kept.addAll(all.get().subList(0, most - 1));
        } else if (most > 1) {
            return cut(galley, widthPt, 1, factor);
        }
        int from = all.map(lines -> lines.get(most - 1).from()).orElse(0);
        Optional<Galley> cut = galley.cut(from, widthPt / factor);
        if (cut.isEmpty()) {
            return new Fitting(galley, kept, factor, true);
        }
        kept.add(new Line(from, cut.get().size()));
        return new Fitting(cut.get(), kept, factor, true);
    }
}
