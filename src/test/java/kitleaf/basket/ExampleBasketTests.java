package kitleaf.basket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The basket that newcomers copy holds together. */
class ExampleBasketTests {

    private static Basket example() {
        Reading reading = BasketReader.read(Path.of("examples/harbour"));
        assertEquals(List.of(), reading.problems());
        return reading.basket().orElseThrow();
    }

    /** A thread in its put-up, as pieces and the stash both name it. */
    private record Named(String code, String skein) {
    }

    @Test
    void everyThreadOfTheStashIsCalledForBySomePiece() {
        Basket basket = example();
        Set<Named> called = basket.pieces().stream()
                .flatMap(piece -> Stream.concat(piece.threads().stream(), piece.parts().stream().flatMap(part -> part.threads().stream())))
                .map(thread -> new Named(thread.code(), thread.skein())).collect(Collectors.toSet());
        assertEquals(List.of(), basket.stash().stream().map(entry -> new Named(entry.code(), entry.skein()))
                .filter(entry -> !called.contains(entry)).toList());
        assertFalse(basket.stash().isEmpty());
    }

    @Test
    void everyPutUpHasItsPrice() {
        Basket basket = example();
        assertEquals(basket.putUps().stream().map(PutUp::name).collect(Collectors.toSet()), basket.prices().keySet());
        assertEquals(3, basket.prices().size());
    }
}
