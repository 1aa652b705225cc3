package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kitleaf.sizing.plan.search.Patience;
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
    void many_steps_may_be_taken_at_once_and_the_last_of_them_beyond_its_end() {
        Patience patience = new Patience(10);
        assertTrue(patience.steps(9));
        assertFalse(patience.ended());
        assertTrue(patience.steps(9));
        assertTrue(patience.ended());
        assertFalse(patience.steps(1));
    }
}
