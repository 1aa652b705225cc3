package kitleaf.basket;

import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How goal cards lie on the wall.
 *
 * @param columns side by side, 1 to {@value Goals#MOST_CARDS}
 * @param rows one below the other, 1 to {@value Goals#MOST_CARDS}
 */
public record CardGrid(int columns, int rows) {

    /** The most cards any grid holds. */
    public static final int MOST = Goals.MOST_CARDS * Goals.MOST_CARDS;

    /** All grids of so many cards or fewer. */
    public static Stream<CardGrid> upTo(int number) {
        return IntStream.rangeClosed(1, Goals.MOST_CARDS).boxed().flatMap(columns -> IntStream.rangeClosed(1, Goals.MOST_CARDS)
                .mapToObj(rows -> new CardGrid(columns, rows))).filter(it -> it.number() <= number);
    }

    /** So many cards. */
    public int number() {
        return columns * rows;
    }

    /** Refuses sides out of range. */
    public CardGrid {
        if (columns < 1 || columns > Goals.MOST_CARDS || rows < 1 || rows > Goals.MOST_CARDS) {
            throw new IllegalArgumentException("no such grid: " + columns + " x " + rows);
        }
    }
}
