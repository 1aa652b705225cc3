package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import kitleaf.sizing.plan.search.Counts;
import kitleaf.sizing.plan.search.Patience;

/** For every selection of pieces, whether it can be cut from one cloth, and the largest usable rectangle it leaves there. */
final class StockTable {

    private final Kerf kerf;
    private final List<Stock.Panel> panels;
    private final List<Leftovers> leftovers;
    /** After the first so many panels: the best remnant for each selection, -1 where it does not fit. */
    private final List<double[]> best = new ArrayList<>();
    /** What of each selection is then cut from the last of those panels. */
    private final List<int[]> onLast = new ArrayList<>();

    private StockTable(Kerf kerf, List<Stock.Panel> panels, List<Leftovers> leftovers) {
        this.kerf = kerf;
        this.panels = panels;
        this.leftovers = leftovers;
    }

    /** Works it out for one cloth; empty if patience ended first. */
    static Optional<StockTable> of(Stock stock, Fronts fronts, Kerf kerf, Patience patience) {
        List<Stock.Panel> panels = stock.panels(kerf);
        List<Leftovers> leftovers = new ArrayList<>();
        for (Stock.Panel panel : panels) {
            Optional<Leftovers> found = Leftovers.of(fronts, panel.widthMm() + kerf.besideMm(), panel.heightMm() + kerf.belowMm(),
                    patience);
            if (found.isEmpty()) {
                return Optional.empty();
            }
            leftovers.add(found.get());
        }
        StockTable table = new StockTable(kerf, panels, leftovers);
        return table.join(fronts.counts(), patience) ? Optional.of(table) : Optional.empty();
    }

    /**
     * Cuts given pieces from one cloth so that the largest usable rectangle stays.
     *
     * @param numbers how many of each of the group's kins
     * @return empty if they do not fit, or patience ended first
     */
    static Optional<Filled> filled(Group group, Stock stock, List<Integer> numbers, Patience patience) {
        Counts counts = Counts.of(numbers);
        return Fronts.of(counts, group.shapes(stock.turning()), stock.widthMm() + group.kerf().besideMm() + Stock.SLACK_MM,
                        stock.heightMm() + group.kerf().belowMm() + Stock.SLACK_MM, patience)
                .flatMap(fronts -> of(stock, fronts, group.kerf(), patience))
                .filter(table -> table.best(counts.all()) >= 0)
                .map(table -> new Filled(stock, table.parts(counts.all())));
    }

    private boolean join(Counts counts, Patience patience) {
        double[] none = new double[counts.states()];
        Arrays.fill(none, -1);
        none[0] = 0;
        best.add(none);
        for (Leftovers panel : leftovers) {
            double[] before = best.get(best.size() - 1);
            double[] after = new double[counts.states()];
            int[] last = new int[counts.states()];
            Arrays.fill(after, -1);
            boolean first = best.size() == 1;
            for (int state = 0; state < counts.states(); state++) {
                int whole = state;
                boolean inTime = counts.parts(state, part -> {
                    // On the first panel lies everything that lies anywhere.
                    if (!first || part == whole) {
                        double here = panel.best(part, kerf);
                        double there = before[whole - part];
                        if (here >= 0 && there >= 0 && Math.max(here, there) > after[whole]) {
                            after[whole] = Math.max(here, there);
                            last[whole] = part;
                        }
                    }
                    return first || patience.step();
                });
                if (!inTime) {
                    return false;
                }
            }
            best.add(after);
            onLast.add(last);
        }
        return true;
    }

    /** The area of the largest usable rectangle a selection leaves, 0 if none is usable; -1 if it does not fit. */
    double best(int state) {
        return best.get(best.size() - 1)[state];
    }

    /** How a selection that fits is cut. */
    List<Filled.Part> parts(int state) {
        List<Filled.Part> parts = new ArrayList<>();
        int rest = state;
        for (int panel = panels.size() - 1; panel >= 0; panel--) {
            int here = onLast.get(panel)[rest];
            parts.add(here == 0 ? Filled.Part.untouched(panels.get(panel))
                    : new Filled.Part(panels.get(panel), leftovers.get(panel).steps(here, kerf)));
            rest -= here;
        }
        Collections.reverse(parts);
        return parts;
    }
}
