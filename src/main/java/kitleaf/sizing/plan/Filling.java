package kitleaf.sizing.plan;

import java.util.List;
import java.util.Optional;
import kitleaf.sizing.cutting.Patience;

/** Cuts given pieces from one cloth so that the largest usable rectangle stays. */
final class Filling {

    private Filling() {
    }

    /**
     * Finds how.
     *
     * @param numbers how many of each of the group's kins, all of which fit
     * @return empty if they do not fit, or patience ended first
     */
    static Optional<Filled> of(Group group, Stock stock, List<Integer> numbers, Patience patience) {
        Counts counts = Counts.of(numbers);
        return boxes(group, stock, counts, patience)
                .flatMap(fronts -> StockTable.of(stock, fronts, group.kerf(), patience))
                .filter(table -> table.best(counts.all()) >= 0)
                .map(table -> new Filled(stock, table.parts(counts.all())));
    }

    private static Optional<Fronts> boxes(Group group, Stock stock, Counts counts, Patience patience) {
        return Fronts.of(counts, group.shapes(stock.turning()), stock.widthMm() + group.kerf().besideMm() + Stock.SLACK_MM,
                stock.heightMm() + group.kerf().belowMm() + Stock.SLACK_MM, patience);
    }
}
