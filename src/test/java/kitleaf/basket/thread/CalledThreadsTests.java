package kitleaf.basket.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** What goes into the columns comes out again. */
class CalledThreadsTests {

    private static final CalledThread PLAIN = new CalledThread("K1", Optional.empty(), Optional.empty(), Optional.empty(), "cotton", Strands.of(2),
            List.of(), OptionalDouble.empty(), Optional.empty(), OptionalInt.empty(), Optional.empty(), false);

    @Provide
    static Arbitrary<CalledThread> thread() {
        Arbitrary<Optional<String>> words = Arbitraries.of("Ebb", "Fog", "●", "14").optional(0.5);
        return Combinators.combine(Arbitraries.of("K1", "K2", "0010"), words, Arbitraries.of("#6b7f8c", "#000000").map(Colour::new).optional(0.5), words,
                        Arbitraries.of("cotton", "silk"), strands(),
                        Arbitraries.integers().between(1, 9_000).map(number -> StitchCount.of(StitchKind.CROSS, number)).list().ofMaxSize(2), words)
                .as((code, name, colour, symbol, skein, strands, stitches, rare) -> new CalledThread(code, name, colour, symbol, skein, strands, stitches,
                        rare.equals(Optional.of("Ebb")) ? OptionalDouble.of(0.25) : OptionalDouble.empty(),
                        rare.filter("Fog"::equals).map(fog -> new Used(1.5, 3_000)),
                        rare.equals(Optional.of("14")) ? OptionalInt.of(1) : OptionalInt.empty(), rare, rare.equals(Optional.of("●"))));
    }

    private static Arbitrary<Strands> strands() {
        Arbitrary<Integer> numbers = Arbitraries.integers().between(1, Strands.MOST);
        return Combinators.combine(numbers, Arbitraries.maps(Arbitraries.of(StitchKind.class), numbers).ofMaxSize(3), Arbitraries.of(true, false))
                .as((usual, others, plain) -> {
                    others.values().removeIf(usual::equals);
                    return plain ? Strands.of(usual) : new Strands(usual, others);
                });
    }

    @Property
    void threadsAreTheSameInTheSameOrder(@ForAll("threads") List<CalledThread> threads) {
        List<CalledThread> kept = CalledThreads.copyOf(threads);
        assertEquals(threads, kept);
        assertEquals(kept, threads);
        assertEquals(threads.hashCode(), kept.hashCode());
        assertEquals(threads, new ArrayList<>(kept));
        assertSame(kept, CalledThreads.copyOf(kept));
    }

    @Provide
    static Arbitrary<List<CalledThread>> threads() {
        return thread().list().ofMaxSize(6);
    }

    @Test
    void whatIsKeptNeverChanges() {
        List<CalledThread> threads = new ArrayList<>(List.of(PLAIN));
        List<CalledThread> kept = CalledThreads.copyOf(threads);
        threads.clear();
        assertEquals(List.of(PLAIN), kept);
        assertThrows(UnsupportedOperationException.class, () -> kept.set(0, PLAIN));
        assertThrows(UnsupportedOperationException.class, () -> kept.add(PLAIN));
        assertThrows(UnsupportedOperationException.class, () -> kept.remove(0));
        assertThrows(IndexOutOfBoundsException.class, () -> kept.get(1));
        assertThrows(IndexOutOfBoundsException.class, () -> kept.get(-1));
    }

    @Test
    void noThreadIsNothing() {
        assertThrows(NullPointerException.class, () -> CalledThreads.copyOf(new ArrayList<>(Collections.singletonList(null))));
    }
}
