package kitleaf.sheet.tag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThreadSharesTests {

    private static List<Integer> shares(int threads, int columns, int first, int other) {
        return ThreadShares.of(threads, columns, tag -> tag == 0 ? first : other);
    }

    /** By hand: each as even as rows of so many columns allow, the first tag holding less than the others. */
    @ParameterizedTest
    @CsvSource({"5, 2, 4, 8, '[3, 2]'", "6, 2, 4, 8, '[4, 2]'", "9, 2, 8, 8, '[6, 3]'", "7, 3, 6, 6, '[4, 3]'", "12, 2, 4, 8, '[4, 8]'", "4, 2, 4, 8, '[4]'",
        "13, 1, 4, 6, '[4, 5, 4]'", "0, 2, 4, 8, '[]'", "5, 2, 0, 8, '[0, 5]'"})
    void threads_are_shared_evenly_in_rows(int threads, int columns, int first, int other, String shares) {
        assertEquals(shares, shares(threads, columns, first, other).toString());
    }

    /** Three on tags of two and four would be two and one: all three go on the second, which has room for them, and so do those of a first tag of one. */
    @ParameterizedTest
    @CsvSource({"3, 2, 2, 4, '[0, 3]'", "5, 1, 1, 8, '[0, 5]'", "2, 1, 1, 8, '[0, 2]'", "3, 1, 2, 2, '[2, 1]'"})
    void a_single_thread_goes_where_there_is_room(int threads, int columns, int first, int other, String shares) {
        assertEquals(shares, shares(threads, columns, first, other).toString());
    }

    @Test
    void no_thread_is_lost_no_tag_is_too_full_and_none_is_for_one_thread_where_two_have_room() {
        for (long seed : new long[] {11, 12, 13, System.nanoTime()}) {
            Random random = new Random(seed);
            for (int i = 0; i < 5000; i++) {
                int threads = random.nextInt(60);
                int first = random.nextInt(9);
                int other = 3 + random.nextInt(9);
                String what = threads + " threads on " + first + " and " + other + ", seed " + seed;
                List<Integer> shares = shares(threads, 1 + random.nextInt(4), first, other);
                assertEquals(threads, shares.stream().mapToInt(Integer::intValue).sum(), what);
                assertTrue(IntStream.range(0, shares.size()).allMatch(tag -> shares.get(tag) <= (tag == 0 ? first : other)), () -> what + ": " + shares);
                // The fewest: what the first has no room for, over what others hold.
                int fewest = threads == 0 ? 0 : threads <= first ? 1 : 1 + (threads - first + other - 1) / other;
                assertEquals(fewest, shares.size(), what);
                boolean full = shares.size() > 1 && threads == first + (shares.size() - 1) * other;
                assertTrue(threads < 4 || full || shares.get(shares.size() - 1) > 1, () -> what + ": " + shares);
            }
        }
    }
}
