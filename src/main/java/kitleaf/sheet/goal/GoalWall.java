package kitleaf.sheet.goal;

import java.util.List;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.TypeScale;

/**
 * The grid of goal cards, drawn before scaling: its template draws it once a tile.
 *
 * @param scale what everything is enlarged by, 1 on A4
 * @param type the sizes before scaling
 * @param head the title and what stands beside it
 * @param cards in their places
 * @param tiles the printed pages that show it
 */
public record GoalWall(double scale, TypeScale type, Head head, List<GoalCard> cards, List<TiledPage> tiles) {

    /** Copies the lists. */
    public GoalWall {
        cards = List.copyOf(cards);
        tiles = List.copyOf(tiles);
    }

    /**
     * What stands above the cards.
     *
     * @param box where, with the line below
     * @param title how many to finish
     * @param titleMm how wide it may be beside the rest
     * @param year which year
     * @param pace hours a week, stitches an hour, and the chance to finish all, in one line or two
     * @param paceMm how wide these may be beside the title
     * @param beside whether they have room there
     */
    public record Head(Box box, String title, double titleMm, String year, List<String> pace, double paceMm, boolean beside) { }
}
