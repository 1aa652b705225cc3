package kitleaf.basket;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * What she wants of a year.
 *
 * @param year which one, 1900 to 2199
 * @param choose how many pieces to choose; empty when she named them, or wants as many as fit
 * @param pieces IDs of the pieces she named, in her order; empty when they are to be chosen
 * @param by whether the choice finishes as many as it can, or as much weight
 * @param mainShare the part of her time the main piece gets while a second lies beside it, above 0.5 to 1
 * @param cards how the goal cards lie on the wall; as suits their number when empty
 * @param wall the paper the grid is drawn for, tiled where the basket's is smaller; the basket's own when empty
 * @param seed of the projection; a fixed one when empty, so that equal baskets give equal figures
 * @param hand the pieces she works before all others
 */
public record Goals(int year, OptionalInt choose, List<String> pieces, By by, double mainShare,
                    Optional<CardGrid> cards, Optional<Paper> wall, OptionalLong seed, InHand hand) {

    /** The most cards along a side. */
    public static final int MOST_CARDS = 10;

    /** The usual part of her time the main piece gets (common practice, no source). */
    public static final double USUAL_MAIN_SHARE = 0.7;

    /** What a choice is after. */
    public enum By {
        /** As many finished pieces as can be. */
        NUMBER,
        /** As much weight as can be. */
        WEIGHT
    }

    /** Copies the list; refuses figures out of range. */
    public Goals {
        pieces = List.copyOf(pieces);
        Objects.requireNonNull(choose);
        Objects.requireNonNull(by);
        Objects.requireNonNull(cards);
        Objects.requireNonNull(wall);
        Objects.requireNonNull(seed);
        Objects.requireNonNull(hand);
        if (year < 1900 || year > 2199 || choose.orElse(1) < 1 || !(mainShare > 0.5 && mainShare <= 1)
                || (choose.isPresent() && !pieces.isEmpty())) {
            throw new IllegalArgumentException("no such goals for " + year);
        }
    }

    /** The same with the pieces to be chosen, so many or as many as fit. */
    public Goals choosing(OptionalInt number) {
        return new Goals(year, number, List.of(), by, mainShare, cards, wall, seed, hand);
    }

    /** Whether the pieces are proposed anew whenever they are reckoned; false where she named them. */
    public boolean proposes() {
        return pieces.isEmpty();
    }

    /** Goals without a piece in focus or beside it. */
    public Goals(int year, OptionalInt choose, List<String> pieces, By by, double mainShare, Optional<CardGrid> cards, Optional<Paper> wall,
                 OptionalLong seed) {
        this(year, choose, pieces, by, mainShare, cards, wall, seed, InHand.NONE);
    }
}
