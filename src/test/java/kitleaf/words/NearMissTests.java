package kitleaf.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NearMissTests {

    private static final List<String> KEYS = List.of("piece", "stitches", "cloth", "margin", "goal");

    @Test
    void oneOrTwoSlipsAreNear() {
        assertEquals(Optional.of("stitches"), NearMiss.of("stiches", KEYS));
        assertEquals(Optional.of("stitches"), NearMiss.of("Stitchs", KEYS));
        assertEquals(Optional.of("margin"), NearMiss.of("amrgni", KEYS));
        assertEquals(Optional.of("goal"), NearMiss.of("gaol", KEYS));
    }

    @Test
    void otherWordsAreNot() {
        assertEquals(Optional.empty(), NearMiss.of("hoop", KEYS));
        assertEquals(Optional.empty(), NearMiss.of("moth", KEYS));
    }

    /** Counted by hand: neighbours swapped are one slip, not two. */
    @Test
    void aSwapIsOneSlip() {
        assertEquals(1, NearMiss.distance("gaol", "goal"));
        assertEquals(2, NearMiss.distance("ab", "cd"));
        assertEquals(3, NearMiss.distance("", "abc"));
    }
}
