package kitleaf.basket;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * What one skein, or one cut of cloth, costs.
 *
 * @param amount 0 or more
 * @param currency its ISO 4217 code, such as {@code GBP}
 */
public record Price(BigDecimal amount, String currency) {

    /** Refuses negative amounts and anything but three capital letters. */
    public Price {
        Objects.requireNonNull(amount);
        Objects.requireNonNull(currency);
        if (amount.signum() < 0 || !currency.matches("[A-Z]{3}")) {
            throw new IllegalArgumentException("price must be 0 or more in an ISO 4217 currency: " + amount + " " + currency);
        }
    }

    /**
     * This and another together.
     *
     * @throws IllegalArgumentException if the other is in another currency
     */
    public Price and(Price other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException("prices must be in one currency: " + currency + ", " + other.currency);
        }
        return new Price(amount.add(other.amount), currency);
    }
}
