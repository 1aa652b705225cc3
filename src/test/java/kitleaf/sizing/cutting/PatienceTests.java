package kitleaf.sizing.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PatienceTests {

    private static int steps(Patience patience) {
        int steps = 0;
        while (patience.step()) {
            steps++;
        }
        return steps;
    }

    @Test
    void it_lasts_so_many_steps() {
        assertEquals(5, steps(new Patience(5)));
        assertEquals(0, steps(new Patience(0)));
        assertTrue(new Patience(0).ended());
    }

    @Test
    void what_a_part_spends_the_whole_has_spent() {
        Patience whole = new Patience(10);
        assertEquals(4, steps(whole.part(4)));
        assertFalse(whole.ended());
        assertEquals(6, steps(whole));
    }

    /** Of smaller steps a hundred make one: 250 of them are two and a half, of which two are paid. */
    @Test
    void small_steps_are_charged_by_the_hundred() {
        Patience whole = new Patience(10);
        assertEquals(250, steps(whole.part(250, 100)));
        assertEquals(8, steps(whole));
    }

    @Test
    void a_part_lasts_no_longer_than_the_whole() {
        Patience whole = new Patience(3);
        Patience part = whole.part(1000, 100);
        assertTrue(part.steps(299));
        assertFalse(part.step());
        assertTrue(whole.ended());
    }
}
