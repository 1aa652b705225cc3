package kitleaf.basket;

import java.time.LocalDate;
import java.util.Objects;

/**
 * A reading: how far a piece is at the end of a day. What was logged until then is in it.
 *
 * @param on the day
 * @param done how much of the piece
 */
public record HowFar(LocalDate on, Amount done) {

    /** Refuses a missing part. */
    public HowFar {
        Objects.requireNonNull(on);
        Objects.requireNonNull(done);
    }
}
