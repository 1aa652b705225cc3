package kitleaf.basket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CardGridTests {

    /** Every grid of 3 x 3 or more with sides that differ by one at most is tried. */
    @Test
    void noSmallerGridThatIsNearlySquareHoldsTheCards() {
        for (int cards = 0; cards <= 100; cards++) {
            int least = Integer.MAX_VALUE;
            for (int side = 3; side <= 10; side++) {
                least = side * side >= cards ? Math.min(least, side * side) : least;
                least = side < 10 && side * (side + 1) >= cards ? Math.min(least, side * (side + 1)) : least;
            }
            CardGrid grid = CardGrid.holding(cards);
            assertEquals(least, grid.columns() * grid.rows(), cards + " cards");
            assertTrue(grid.rows() - grid.columns() == 0 || grid.rows() - grid.columns() == 1, grid.toString());
        }
    }

    @Test
    void gridsOutOfRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new CardGrid(0, 3));
        assertThrows(IllegalArgumentException.class, () -> new CardGrid(3, 11));
        assertThrows(IllegalArgumentException.class, () -> CardGrid.holding(101));
    }
}
