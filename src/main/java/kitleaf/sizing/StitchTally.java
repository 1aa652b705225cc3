package kitleaf.sizing;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import kitleaf.basket.Amount;
import kitleaf.basket.HowFar;
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
 * @param inferred how many of those done nobody counted: they are what her pace makes of the hours she logged, 0 or more
 */
public record StitchTally(long total, long left, From from, long inferred) {

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
        if (total < 0 || left < 0 || left > total || inferred < 0) {
            throw new IllegalArgumentException("no such tally: " + left + " of " + total);
        }
    }

    /** A tally of which every stitch was counted. */
    public StitchTally(long total, long left, From from) {
        this(total, left, from, 0);
    }

    /**
     * The tally of one piece, from all its facts. What is done is everything, when it is stitched; else what the last reading says, and
     * what was logged after that reading's day. Hours without a stitch count are worth what the pace makes of them, to the nearest stitch
     * in all: as plain crosses, since the pace is learned so. At least one stitch is left as long as only such hours say otherwise.
     *
     * @param perHour her pace in stitches an hour, above 0; where it is empty, hours alone move nothing
     */
    public static StitchTally of(Piece piece, OptionalDouble perHour) {
        From from = from(piece);
        long total = switch (from) {
            case THREADS -> threads(piece).flatMap(thread -> thread.stitches().stream()).mapToLong(StitchCount::count).sum();
            case COVERAGE -> number(piece.coverage().orElseThrow(), piece.stitches().cells());
            case CELLS -> piece.stitches().cells();
        };
        if (piece.progress().last().isPresent()) {
            return new StitchTally(total, 0, from, 0);
        }
        Optional<HowFar> reading = piece.progress().reading();
        List<LogEntry> since = piece.progress().log().stream()
                .filter(entry -> reading.filter(one -> !entry.on().isAfter(one.on())).isEmpty()).toList();
        double hours = since.stream().filter(entry -> entry.stitches().isEmpty()).mapToDouble(entry -> entry.hours().orElse(0)).sum();
        long inferred = Math.round(hours * perHour.orElse(0));
        long counted = reading.map(one -> number(one.done(), total)).orElse(0L) + since.stream().mapToLong(LogEntry::counted).sum();
        // What nobody counted may be wrong, and ends no piece.
        long least = counted < total ? Math.min(1, total) : 0;
        return new StitchTally(total, Math.max(least, Math.min(total, total - counted - inferred)), from, inferred);
    }

    /** The tally of a piece by what was counted alone. */
    public static StitchTally of(Piece piece) {
        return of(piece, OptionalDouble.empty());
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
