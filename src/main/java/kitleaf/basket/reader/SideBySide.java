package kitleaf.basket.reader;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Does the same to many things on all processors, one thing at a time, so that none is idle to the end. A parallel stream hands out a
 * quarter of a share at once, and the last to finish may have all of it before it.
 */
final class SideBySide {

    private SideBySide() { }

    /** What the work makes of each, in their order. What it throws is thrown. */
    static <T, R> Stream<R> map(List<T> all, Function<T, R> work) {
        Object[] made = new Object[all.size()];
        AtomicInteger next = new AtomicInteger();
        IntStream.range(0, Runtime.getRuntime().availableProcessors()).parallel().forEach(worker -> {
            for (int i = next.getAndIncrement(); i < made.length; i = next.getAndIncrement()) {
                made[i] = work.apply(all.get(i));
            }
        });
        @SuppressWarnings("unchecked")
        Stream<R> inOrder = (Stream<R>) Stream.of(made);
        return inOrder;
    }
}
