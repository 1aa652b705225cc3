package kitleaf.basket;

/**
 * How goal cards lie on the wall.
 *
 * @param columns side by side, 1 to {@value Goals#MOST_CARDS}
 * @param rows one below the other, 1 to {@value Goals#MOST_CARDS}
 */
public record CardGrid(int columns, int rows) {

    /** The most cards any grid holds. */
    public static final int MOST = Goals.MOST_CARDS * Goals.MOST_CARDS;

    /** Refuses sides out of range. */
    public CardGrid {
        if (columns < 1 || columns > Goals.MOST_CARDS || rows < 1 || rows > Goals.MOST_CARDS) {
            throw new IllegalArgumentException("no such grid: " + columns + " x " + rows);
        }
    }
}
