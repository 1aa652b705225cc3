package kitleaf.sheet.goal;

import java.util.Objects;
import kitleaf.sheet.page.Box;

/**
 * A goal card on a page. What is on it flows in its template.
 *
 * @param box where it lies
 * @param says what stands on it
 * @param outlineWidthMm the piece, to the scale all cards share, before what is on the card is enlarged
 * @param outlineHeightMm likewise
 * @param band the progress band, likewise, from its own top left corner
 */
public record GoalCard(Box box, GoalEntry says, double outlineWidthMm, double outlineHeightMm, ProgressBand band) {

    /** Refuses a card that is nowhere or says nothing. */
    public GoalCard {
        Objects.requireNonNull(box);
        Objects.requireNonNull(says);
    }
}
