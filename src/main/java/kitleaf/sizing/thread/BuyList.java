package kitleaf.sizing.thread;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.Price;

/**
 * What to buy for all unfinished pieces.
 *
 * @param lines each thread and put-up once, by code and then put-up
 * @param cost of all lines that have a price; empty when none has
 * @param warnings line by line
 */
public record BuyList(List<BuyLine> lines, Optional<Price> cost, List<ThreadWarning> warnings) {

    /** Copies the lists. */
    public BuyList {
        lines = List.copyOf(lines);
        Objects.requireNonNull(cost);
        warnings = List.copyOf(warnings);
    }

    /** Adds up what lines cost; refuses prices in two currencies. */
    static Optional<Price> cost(List<BuyLine> lines) {
        return lines.stream().flatMap(line -> line.cost().stream()).reduce(Price::and);
    }
}
