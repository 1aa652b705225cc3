package kitleaf.sizing.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class QuantilesTests {

    /** A database manual's example of the linear method, which is type 7: quartiles 25.5, 40 and 42.5. */
    @Test
    void quartiles_are_those_of_the_published_example() {
        double[] values = {6, 47, 49, 15, 42, 41, 7, 39, 43, 40, 36};
        assertEquals(25.5, Quantiles.type7(values, 0.25));
        assertEquals(40, Quantiles.type7(values, 0.5));
        assertEquals(42.5, Quantiles.type7(values, 0.75));
        assertEquals(6, Quantiles.type7(values, 0));
        assertEquals(49, Quantiles.type7(values, 1));
    }

    @Test
    void one_value_is_every_quantile() {
        assertEquals(3, Quantiles.type7(new double[] {3}, 0.9));
    }

    @Test
    void nothing_has_no_quantile() {
        assertThrows(IllegalArgumentException.class, () -> Quantiles.type7(new double[0], 0.5));
        assertThrows(IllegalArgumentException.class, () -> Quantiles.type7(new double[] {1}, 1.01));
    }
}
