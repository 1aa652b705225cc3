package kitleaf.sheet.goal;

import java.util.List;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Join;
import kitleaf.sheet.page.TypeScale;

/**
 * A printed page with goal cards: a wall, or one of its tiles.
 *
 * @param widthMm of the paper
 * @param heightMm of the paper
 * @param window what of the wall it shows, with half the strip around its cards; joins are its sides
 * @param head what stands above the cards
 * @param scale how much larger than on an ordinary card all on these is drawn, from 1
 * @param type the sizes before that
 * @param cards in their places
 * @param joins where it meets its neighbours
 * @param part which tile it is; empty for a whole wall
 */
public record GoalPage(double widthMm, double heightMm, Box window, Head head, double scale, TypeScale type, List<GoalCard> cards,
                       List<Join> joins, String part) {

    /** Copies the lists. */
    public GoalPage {
        cards = List.copyOf(cards);
        joins = List.copyOf(joins);
    }

    /**
     * What stands above the cards, or the part of it that stands on a tile.
     *
     * @param box where, with the line below
     * @param title how many to finish, at the left
     * @param year which year, at the right
     * @param scale what it is enlarged by, from 1
     * @param type the sizes before that
     */
    public record Head(Box box, String title, String year, double scale, TypeScale type) { }
}
