package kitleaf.sheet.goal;

import java.util.List;
import java.util.Objects;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Join;

/**
 * One printed page of something drawn for larger paper: what it shows of it, and where it meets its neighbours. A single page
 * is its own only tile.
 *
 * @param widthMm of the printed page
 * @param heightMm of the printed page
 * @param window what of the large page it shows, on the printed page
 * @param leftMm where the window starts on the large page
 * @param topMm likewise, down
 * @param column of this tile, from 0
 * @param row of this tile, from 0
 * @param columns tiles side by side
 * @param rows tiles one below the other
 * @param joins the lines where it meets its neighbours
 */
public record TiledPage(double widthMm, double heightMm, Box window, double leftMm, double topMm, int column, int row, int columns,
                        int rows, List<Join> joins) {

    /** Copies the list. */
    public TiledPage {
        Objects.requireNonNull(window);
        joins = List.copyOf(joins);
    }

    /** A page that is not parted. */
    static TiledPage whole(double widthMm, double heightMm) {
        return new TiledPage(widthMm, heightMm, new Box(0, 0, widthMm, heightMm), 0, 0, 0, 0, 1, 1, List.of());
    }

    /** Whether there are other tiles. */
    public boolean tiled() {
        return columns * rows > 1;
    }
}
