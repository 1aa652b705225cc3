package kitleaf.sheet.goal;

import java.util.List;
import kitleaf.sheet.page.Masthead;

/**
 * The grid of goal cards, drawn before scaling: its template draws it once a tile.
 *
 * @param scale what everything is enlarged by, 1 on A4
 * @param widthMm of the wall paper, before scaling
 * @param inset from its sides to what is drawn, before scaling
 * @param title how many to finish
 * @param titleMm how wide it may be
 * @param year which year
 * @param pace hours a week, stitches an hour, and the chance to finish all
 * @param paceMm how wide it may be
 * @param paceMore the chance, where it has no room beside the rest; else empty
 * @param head of the grid in large print, or null
 * @param cards in their places
 * @param tiles the printed pages that show it
 */
public record GoalWall(double scale, double widthMm, double inset, String title, double titleMm, String year, String pace, double paceMm, String paceMore,
                       Masthead head, List<GoalCard> cards, List<TiledPage> tiles) {

    /** Copies the lists. */
    public GoalWall {
        cards = List.copyOf(cards);
        tiles = List.copyOf(tiles);
    }
}
