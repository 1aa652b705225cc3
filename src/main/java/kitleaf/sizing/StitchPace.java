package kitleaf.sizing;

import java.util.List;
import java.util.OptionalDouble;
import kitleaf.basket.Basket;
import kitleaf.basket.LogEntry;

/**
 * How many stitches she makes in an hour.
 *
 * <p>Only sittings of which hours and stitches are both known teach it, those without a stitch left out: what is inferred from a pace
 * must not teach it. Stitches she took out again are not counted as put in, since what is left goes down by no more than the rest.
 */
public final class StitchPace {

    private StitchPace() {
    }

    /** The pace of a basket in plain crosses an hour, above 0: what she says, else what its logs tell; empty where neither does. */
    public static OptionalDouble of(Basket basket) {
        return basket.pace().stitchesPerHour().isPresent() ? basket.pace().stitchesPerHour()
                : learned(basket.pieces().stream().flatMap(piece -> piece.progress().log().stream()).toList());
    }

    /** The pace some sittings tell; empty where none of them tells both figures, or no stitch stayed. */
    public static OptionalDouble learned(List<LogEntry> entries) {
        List<LogEntry> full = entries.stream().filter(entry -> entry.full() && entry.stitches().getAsInt() > 0).toList();
        long stitches = full.stream().mapToLong(LogEntry::counted).sum();
        // Sums of doubles depend on their order; the order of the pieces must not.
        double hours = full.stream().mapToDouble(entry -> entry.hours().getAsDouble()).sorted().sum();
        return stitches > 0 ? OptionalDouble.of(stitches / hours) : OptionalDouble.empty();
    }
}
