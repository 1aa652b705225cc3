package kitleaf.sheet.goal;

import java.util.List;
import java.util.Objects;
import kitleaf.sheet.page.Box;

/**
 * A goal card on the grid before scaling. Its words flow in its template.
 *
 * @param box the card
 * @param says what stands on it
 * @param wide whether the line of cloth stands beside the outline and the likely days beside the box for the day, not above
 * @param outline the piece, to the scale all cards share; about where it will be
 * @param date where the day is written by hand; about where it will be
 * @param words about where words will be, from side to side: what no join should run through
 * @param band the progress band, from its own top left corner
 * @param bandBox where it is
 */
public record GoalCard(Box box, GoalEntry says, boolean wide, Box outline, Box date, List<Box> words, ProgressBand band, Box bandBox) {

    /** Copies the list. */
    public GoalCard {
        Objects.requireNonNull(box);
        Objects.requireNonNull(says);
        words = List.copyOf(words);
    }
}
