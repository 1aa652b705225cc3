package kitleaf.sizing;

import java.util.Objects;
import java.util.stream.Stream;
import kitleaf.basket.Amount;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Piece;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.StitchCount;

/**
 * How many stitches a piece has, and how many are still to do.
 *
 * @param total all of them, 0 or more
 * @param left those not done yet, 0 to {@code total}
 * @param from where {@code total} comes from
 */
public record StitchTally(long total, long left, From from) {

    /** Where a total comes from, the surest first. */
    public enum From {
        /** The stitches counted thread by thread. */
        THREADS,
        /** The coverage she gave. */
        COVERAGE,
        /** Every cell of the chart, for want of anything better: no less than the truth for plain cross stitch. */
        CELLS
    }

    /** Refuses what does not add up. */
    public StitchTally {
        Objects.requireNonNull(from);
        if (total < 0 || left < 0 || left > total) {
            throw new IllegalArgumentException("no such tally: " + left + " of " + total);
        }
    }

    /**
     * The tally of one piece. What is done is, in this order: everything, when it is finished; the figure
     * she gave; the sum of the log.
     */
    public static StitchTally of(Piece piece) {
        From from = from(piece);
        long total = switch (from) {
            case THREADS -> threads(piece).flatMap(thread -> thread.stitches().stream()).mapToLong(StitchCount::count).sum();
            case COVERAGE -> number(piece.coverage().orElseThrow(), piece.stitches().cells());
            case CELLS -> piece.stitches().cells();
        };
        long done = piece.progress().finished().isPresent() ? total
                : piece.progress().done().map(amount -> number(amount, total))
                        .orElseGet(() -> piece.progress().log().stream().mapToLong(LogEntry::stitches).sum());
        return new StitchTally(total, Math.max(0, total - done), from);
    }

    /** Stitches done, 0 to {@code total}. */
    public long done() {
        return total - left;
    }

    /** What is done as whole percents, halves up; only nothing is 0, and only all is 100. What is left are the rest of the hundred. */
    public int percentDone() {
        if (total == 0 || done() == 0) {
            return 0;
        }
        long rounded = Math.round(100.0 * done() / total);
        return left == 0 ? 100 : (int) Math.max(1, Math.min(99, rounded));
    }

    private static From from(Piece piece) {
        // One thread known only by its share would be missing from a sum of counts.
        boolean counted = threads(piece).findAny().isPresent()
                && threads(piece).noneMatch(thread -> thread.stitches().isEmpty());
        return counted ? From.THREADS : piece.coverage().isPresent() ? From.COVERAGE : From.CELLS;
    }

    private static Stream<CalledThread> threads(Piece piece) {
        return Stream.concat(piece.threads().stream(), piece.parts().stream().flatMap(part -> part.threads().stream()));
    }

    private static long number(Amount amount, long whole) {
        if (amount instanceof Amount.Stitches stitches) {
            return stitches.number();
        }
        return Math.round(((Amount.Share) amount).fraction() * whole);
    }
}
