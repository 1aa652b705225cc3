package kitleaf.sizing.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class CutAxisTests {

    @Test
    void points_are_the_sums_of_so_many_sides() {
        // Two of 30 and one of 45, in units of 15: 0, 30, 45, 60, 75; 105 is longer than 100, which leaves six units.
        CutAxis axis = new CutAxis(100, new long[] {30, 45}, new int[] {0, 1}, new int[] {2, 1});
        assertEquals("[0, 2, 3, 4, 5]", Arrays.toString(IntStream.range(0, axis.size()).mapToLong(axis::length).toArray()));
        assertEquals(75, axis.reach);
        assertEquals(4, axis.pointOf(99));
        assertEquals(3, axis.pointOf(74));
        assertEquals(0, axis.pointOf(29));
    }

    /** Twenty sides have far more sums than there may be points; whatever the unit, a row that fits must still fit in it. */
    @Property(tries = 500, seed = "20270108")
    void rows_that_fit_still_fit_in_coarse_lengths(@ForAll long mix) {
        Random random = new Random(mix);
        long length = 1_000_000 + random.nextInt(1_000_000);
        long[] sides = random.longs(20, 1, length / 3).toArray();
        int[] one = new int[20];
        Arrays.fill(one, 1);
        CutAxis axis = new CutAxis(length, sides, IntStream.range(0, 20).toArray(), one);
        assertTrue(axis.size() > 10 && axis.size() <= CutAxis.POINTS, "points: " + axis.size());
        long sum = 0;
        long cells = 0;
        for (long side : sides) {
            if (sum + side <= length) {
                sum += side;
                cells += axis.cells(side);
            }
        }
        assertTrue(cells <= axis.cells(sum));
        assertTrue(axis.cells(sum) <= axis.length(axis.size() - 1));
        assertEquals(axis.cells(sum), axis.length(axis.pointOf(sum)));
    }
}
