package kitleaf.basket;

/**
 * How goal cards lie on the wall.
 *
 * @param columns side by side, 1 to {@value Goals#MOST_CARDS}
 * @param rows one below the other, 1 to {@value Goals#MOST_CARDS}
 */
record CardGrid(int columns, int rows) {

    /** The least cards along a side where she does not say: a year of three by three looks like a year. */
    private static final int USUAL = 3;

    /** The most cards any grid holds. */
    static final int MOST = Goals.MOST_CARDS * Goals.MOST_CARDS;

    /** Refuses sides out of range. */
    CardGrid {
        if (columns < 1 || columns > Goals.MOST_CARDS || rows < 1 || rows > Goals.MOST_CARDS) {
            throw new IllegalArgumentException("no such grid: " + columns + " x " + rows);
        }
    }

    /**
     * The smallest grid of at least 3 x 3 that holds so many cards and whose sides differ by one at most; the longer
     * side runs down, as upright paper does.
     *
     * @param cards 0 to {@link #MOST}
     */
    static CardGrid holding(int cards) {
        int rows = USUAL;
        while (rows * rows < cards) {
            rows++;
        }
        int columns = Math.max(USUAL, rows * (rows - 1) >= cards ? rows - 1 : rows);
        return new CardGrid(columns, rows);
    }
}
