package kitleaf.basket;

import java.time.LocalDate;
import java.util.Objects;

/**
 * One sitting at one piece.
 *
 * @param on the day
 * @param hours time at the hoop, above 0 to 24
 * @param stitches put in that day, 0 or more
 */
public record LogEntry(LocalDate on, double hours, int stitches) {

    /** Refuses days longer than 24 hours and stitches below 0. */
    public LogEntry {
        Objects.requireNonNull(on);
        if (!(hours > 0 && hours <= 24) || stitches < 0) {
            throw new IllegalArgumentException("hours must be above 0 to 24, stitches 0 or more: " + hours + ", " + stitches);
        }
    }
}
