package kitleaf.basket;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One sitting at one piece, with what she knows of it.
 *
 * @param on the day
 * @param hours time at the hoop, above 0 to 24, where she knows it
 * @param stitches put in that day, 0 or more, where she counted them
 * @param unpicked stitches taken out again, 0 or more; they count against those put in
 * @param note her own words
 */
public record LogEntry(LocalDate on, OptionalDouble hours, OptionalInt stitches, int unpicked, Optional<String> note) {

    /** The longest sitting, in hours. */
    public static final int MOST_HOURS = 24;

    /** Refuses days longer than 24 hours, stitches below 0, and a sitting that says nothing. */
    public LogEntry {
        Objects.requireNonNull(on);
        Objects.requireNonNull(note);
        double sat = hours.orElse(MOST_HOURS);
        if (!(sat > 0 && sat <= MOST_HOURS) || stitches.orElse(0) < 0 || unpicked < 0) {
            throw new IllegalArgumentException("hours must be above 0 to 24, stitches 0 or more: " + hours + ", " + stitches + ", "
                    + unpicked);
        }
        if (hours.isEmpty() && stitches.isEmpty() && unpicked == 0) {
            throw new IllegalArgumentException("a sitting without hours, stitches and unpicked ones");
        }
    }

    /** A sitting of which she knows the hours and the stitches. */
    public LogEntry(LocalDate on, double hours, int stitches) {
        this(on, OptionalDouble.of(hours), OptionalInt.of(stitches), 0, Optional.empty());
    }

    /** Whether hours and stitches are both known: only such a sitting tells how quick she is. */
    public boolean full() {
        return hours.isPresent() && stitches.isPresent();
    }

    /** Stitches put in and not taken out again, as far as they were counted; below 0 where more came out. */
    public int counted() {
        return stitches.orElse(0) - unpicked;
    }
}
