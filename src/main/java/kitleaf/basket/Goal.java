package kitleaf.basket;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * What she wants of a piece this year.
 *
 * @param must whether it has to be among those finished
 * @param by the day it is wanted
 * @param weight how much finishing it is worth beside others, 1 to {@value #MOST_WEIGHT}
 */
public record Goal(boolean must, Optional<LocalDate> by, int weight) {

    /** The heaviest weight taken. */
    public static final int MOST_WEIGHT = 100;

    /** No wish spoken: weight 1, no date. */
    public static final Goal NONE = new Goal(false, Optional.empty(), 1);

    /** Refuses weights outside 1 to {@value #MOST_WEIGHT}. */
    public Goal {
        Objects.requireNonNull(by);
        if (weight < 1 || weight > MOST_WEIGHT) {
            throw new IllegalArgumentException("weight must be 1 to " + MOST_WEIGHT + ": " + weight);
        }
    }
}
