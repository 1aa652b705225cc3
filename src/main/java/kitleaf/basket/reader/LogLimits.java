package kitleaf.basket.reader;

import java.time.LocalDate;
import java.util.Optional;
import kitleaf.basket.LogEntry;

/** Judges what no evening at the hoop can have been. */
public final class LogLimits {

    /**
     * The most stitches an hour; common practice, no source: quick hands make two or three hundred crosses, and this is one
     * in less than four seconds without a pause.
     */
    public static final int MOST_AN_HOUR = 1000;

    /**
     * How often a piece may be stitched in all before its log is wrong. Stitches that are unpicked and made again are
     * logged twice, and backstitches are logged that no list counts; common practice, no source.
     */
    private static final double OFTEN = 1.5;

    private LogLimits() {
    }

    public static boolean tooFast(LogEntry entry) {
        return entry.stitches() > MOST_AN_HOUR * entry.hours();
    }

    /** Whether there are stitches after the last one. Hours without any are not: a piece is sewn up after it is finished. */
    public static boolean afterFinish(LogEntry entry, Optional<LocalDate> finished) {
        return entry.stitches() > 0 && finished.filter(entry.on()::isAfter).isPresent();
    }

    /**
     * Whether a log has more stitches with this entry than its piece can hold.
     *
     * @param before the stitches logged without it
     * @param most what {@link MostStitches} gives
     */
    public static boolean tooMany(LogEntry entry, long before, long most) {
        return entry.stitches() > most || before + entry.stitches() > OFTEN * most;
    }
}
