package kitleaf.press.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoomsTests {

    private static List<Integer> shares(int parts, double first, double next) {
        List<FlowPart> equal = IntStream.range(0, parts).mapToObj(i -> FlowPart.of(Laid.blank(1))).toList();
        return new Rooms(first, next).even(equal).stream().map(List::size).toList();
    }

    /** By hand: as few rooms as hold them, as even as can be; 13 in fours would leave one alone. */
    @ParameterizedTest
    @CsvSource({"5, 4, 8, '[3, 2]'", "4, 4, 8, '[4]'", "9, 8, 8, '[5, 4]'", "13, 4, 4, '[4, 4, 3, 2]'", "0, 4, 8, '[0]'"})
    void parts_are_shared_evenly(int parts, double first, double next, String shares) {
        assertEquals(shares, shares(parts, first, next).toString());
    }

    @Test
    void no_part_is_lost_no_room_is_too_full_and_none_is_for_one_part_where_two_have_room() {
        for (long seed : new long[] {11, 12, 13, System.nanoTime()}) {
            Random random = new Random(seed);
            for (int i = 0; i < 2000; i++) {
                int parts = 1 + random.nextInt(60);
                int first = 1 + random.nextInt(9);
                int other = 3 + random.nextInt(9);
                String what = parts + " parts in " + first + " and " + other + ", seed " + seed;
                List<Integer> shares = shares(parts, first, other);
                assertEquals(parts, shares.stream().mapToInt(Integer::intValue).sum(), what);
                assertTrue(IntStream.range(0, shares.size()).allMatch(room -> shares.get(room) <= (room == 0 ? first : other)),
                        () -> what + ": " + shares);
                // The fewest: what the first has no room for, over what others hold.
                assertEquals(parts <= first ? 1 : 1 + (parts - first + other - 1) / other, shares.size(), what);
                boolean spare = shares.size() > 1 && shares.get(shares.size() - 2) > 2;
                assertTrue(!spare || shares.get(shares.size() - 1) > 1, () -> what + ": " + shares);
            }
        }
    }
}
