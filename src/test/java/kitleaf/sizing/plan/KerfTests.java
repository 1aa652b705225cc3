package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Cutting;
import org.junit.jupiter.api.Test;

/** By hand: 25.4 ends and 12.7 picks to the inch are 1 and 2 mm apart; with 4 mm of fraying cuts take 5 mm beside a piece and 6 below. */
class KerfTests {

    private static final Kerf KERF = Kerf.of(new Count(25.4, 12.7), new Cutting(4, 20));

    @Test
    void a_cut_takes_the_drawn_thread_and_what_frays() {
        assertEquals(5, KERF.besideMm(), 1e-9);
        assertEquals(6, KERF.belowMm(), 1e-9);
    }

    @Test
    void a_remnant_is_kept_from_its_shorter_side_on() {
        assertTrue(KERF.usable(20, 300));
        assertTrue(KERF.usable(300, 20));
        assertFalse(KERF.usable(19.9, 300));
        assertFalse(KERF.usable(300, 19.9));
    }

    /** The last bits of doubles take nothing from a remnant that is as wide as it has to be. */
    @Test
    void what_is_a_hair_too_narrow_is_kept() {
        assertTrue(KERF.usable(20 - Stock.SLACK_MM, 300));
        assertFalse(KERF.usable(20 - 2 * Stock.SLACK_MM, 300));
    }

    /** 30 x 36 with the kerf are 25 x 30 without it; 24.9 x 36 and 30 x 25.9 are 19.9 at the shorter side. */
    @Test
    void the_area_of_a_remnant_is_that_without_the_kerf() {
        assertEquals(750, KERF.usableMm2(30, 36));
        assertEquals(0, KERF.usableMm2(24.9, 36));
        assertEquals(0, KERF.usableMm2(30, 25.9));
    }

    /** 8.3333 - 5 is 3.3333, 9 - 6 is 3: 9.9999 mm2 are 10.00. */
    @Test
    void areas_are_rounded_to_hundredths() {
        assertEquals(10, Kerf.of(new Count(25.4, 12.7), new Cutting(4, 0)).usableMm2(8.3333, 9));
    }

    /** Where everything is kept, what is as narrow as the kerf is nothing all the same. */
    @Test
    void nothing_is_no_remnant() {
        Kerf all = new Kerf(5, 6, 0);
        assertEquals(0, all.usableMm2(5, 36));
        assertEquals(0, all.usableMm2(30, 6));
        assertEquals(0, all.usableMm2(4, 5));
        assertEquals(0, new Kerf(0, 0, 0).usableMm2(Stock.SLACK_MM, 1e6));
        assertEquals(0, new Kerf(0, 0, 0).usableMm2(1e6, Stock.SLACK_MM));
    }
}
