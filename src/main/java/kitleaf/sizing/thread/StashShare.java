package kitleaf.sizing.thread;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What one piece gets of one thread.
 *
 * @param piece its ID
 * @param needSkeins what it still needs
 * @param wantedSkeins what is set aside for it: the high need where the dye lot matters, else the likely one
 * @param drawn what it gets from the stash
 * @param missing what the stash does not give
 * @param mixed whether it comes out of more than one dye lot although the lot matters
 */
public record StashShare(String piece, Estimate needSkeins, double wantedSkeins, List<Drawn> drawn, Missing missing,
                         boolean mixed) {

    /**
     * Thread taken from one lot of the stash.
     *
     * @param entry which entry of the basket's stash, from 0; the first one of its lot
     * @param lot its dye lot, if known
     * @param skeins how much, above 0
     */
    public record Drawn(int entry, Optional<String> lot, double skeins) {

        /** Refuses to draw nothing. */
        public Drawn {
            Objects.requireNonNull(lot);
            if (entry < 0 || !(skeins > 0)) {
                throw new IllegalArgumentException("nothing drawn: " + entry + ", " + skeins);
            }
        }
    }

    /** Copies the list; refuses amounts below nothing. */
    public StashShare {
        Objects.requireNonNull(piece);
        Objects.requireNonNull(needSkeins);
        drawn = List.copyOf(drawn);
        Objects.requireNonNull(missing);
        if (!(wantedSkeins >= 0)) {
            throw new IllegalArgumentException("no such share: " + wantedSkeins);
        }
    }

    /** What it gets from the stash, in skeins. */
    public double drawnSkeins() {
        return drawn.stream().mapToDouble(Drawn::skeins).sum();
    }

    /** What the stash does not give, 0 or more, before whole skeins are made of it. */
    public double toBuySkeins() {
        return missing.skeins();
    }

    /** Whole skeins that hold what the stash does not give, for this piece alone. */
    public long wholeSkeinsToBuy() {
        return missing.buy();
    }
}
