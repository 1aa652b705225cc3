package kitleaf.basket;

import java.time.LocalDate;
import java.util.Objects;

/**
 * What she says a piece is, from a day on.
 *
 * @param on the day; it holds at its end
 * @param is resting, given up, or begun again
 */
public record SaidState(LocalDate on, PieceState is) {

    /** Refuses a state that is reckoned. */
    public SaidState {
        Objects.requireNonNull(on);
        if (!is.said()) {
            throw new IllegalArgumentException("a piece is " + is + " by what it tells, not by what is said");
        }
    }
}
