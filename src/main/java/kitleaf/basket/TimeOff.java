package kitleaf.basket;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * Days without stitching.
 *
 * @param from the first of them
 * @param to the last of them, not before the first
 * @param why in a word or two
 */
public record TimeOff(LocalDate from, LocalDate to, Optional<String> why) {

    /** Refuses days that run backwards. */
    public TimeOff {
        Objects.requireNonNull(why);
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("time off ends before it begins: " + from + ", " + to);
        }
    }
}
