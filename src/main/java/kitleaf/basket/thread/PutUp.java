package kitleaf.basket.thread;

import java.util.Objects;

/**
 * A way a thread is sold: how long, of how many plies.
 *
 * @param name what pieces call it under {@code skein}
 * @param lengthMm of one skein, above 0
 * @param plies that can be parted, 1 to 24
 * @param lotMatters whether two dye lots of it show beside each other
 */
public record PutUp(String name, double lengthMm, int plies, boolean lotMatters) {

    /** The usual skein of stranded cotton: 8 m of six plies (common practice, no source). */
    public static final PutUp COTTON = new PutUp("cotton", 8000, 6, false);

    /** Refuses empty skeins. */
    public PutUp {
        Objects.requireNonNull(name);
        if (!(lengthMm > 0) || plies < 1 || plies > 24) {
            throw new IllegalArgumentException("put-up needs length and 1 to 24 plies: " + lengthMm + ", " + plies);
        }
    }
}
