package kitleaf.basket;

import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class CardGridTests {

    @Test
    void gridsOutOfRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new CardGrid(0, 3));
        assertThrows(IllegalArgumentException.class, () -> new CardGrid(3, 11));
    }
}
