package kitleaf.basket.thread;

import java.util.Objects;
import java.util.Optional;

/**
 * Thread she has already.
 *
 * @param code what stands on the skein, as pieces write it
 * @param skein the put-up it is in
 * @param skeins how much of it, in skeins, above 0; part skeins count
 * @param lot its dye lot, if she knows it
 */
public record StashEntry(String code, String skein, double skeins, Optional<String> lot) {

    /** Refuses nothing at all. */
    public StashEntry {
        Objects.requireNonNull(code);
        Objects.requireNonNull(skein);
        Objects.requireNonNull(lot);
        if (!(skeins > 0)) {
            throw new IllegalArgumentException("stash must be above 0: " + skeins);
        }
    }
}
