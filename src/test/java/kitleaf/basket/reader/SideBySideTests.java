package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

class SideBySideTests {

    private static final List<Integer> MANY = IntStream.range(0, 5_000).boxed().toList();

    @Test
    void each_is_done_once_and_all_stay_in_their_order() {
        AtomicIntegerArray times = new AtomicIntegerArray(MANY.size());
        List<String> made = SideBySide.map(MANY, number -> {
            times.incrementAndGet(number);
            return "n" + number;
        }).toList();
        assertEquals(MANY.stream().map(number -> "n" + number).toList(), made);
        assertTrue(MANY.stream().allMatch(number -> times.get(number) == 1));
        assertEquals(List.of(), SideBySide.map(List.of(), String::valueOf).toList());
    }

    @Test
    void nobody_waits_while_there_is_something_to_do() {
        Assumptions.assumeTrue(Runtime.getRuntime().availableProcessors() > 1);
        CountDownLatch others = new CountDownLatch(MANY.size() - 1);
        // The first takes until all others are done, which somebody else has to do.
        assertTrue(SideBySide.map(MANY, number -> {
            if (number > 0) {
                others.countDown();
                return true;
            }
            try {
                return others.await(30, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                return false;
            }
        }).allMatch(done -> done));
    }

    @Test
    void what_goes_wrong_is_thrown() {
        Set<Integer> done = ConcurrentHashMap.newKeySet();
        assertThrows(UncheckedIOException.class, () -> SideBySide.map(MANY, number -> {
            if (number == 2_500) {
                throw new UncheckedIOException(new IOException("odd"));
            }
            return done.add(number);
        }));
    }
}
