package kitleaf.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kitleaf.basket.thread.Colour;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContrastTests {

    /**
     * The first six are the examples of the W3C's ACT rule afw4f7, which cuts them to two decimals; the full values are
     * the WCAG formula recomputed. The last two are textbook pairs.
     */
    @ParameterizedTest
    @CsvSource({"#333333, #ffffff, 12.6347", "#000000, #ffffff, 21", "#0000ee, #ffffff, 9.3976", "#777777, #eeeeee, 3.8597",
        "#000000, #666666, 3.6574", "#aaaaaa, #ffffff, 2.3231", "#767676, #ffffff, 4.5422", "#0000ff, #ffffff, 8.5925"})
    void ratios_are_those_published(String first, String second, double ratio) {
        assertEquals(ratio, Contrast.ratio(new Colour(first), new Colour(second)), 5e-5);
        assertEquals(ratio, Contrast.ratio(new Colour(second), new Colour(first)), 5e-5);
    }

    /** Ink on white has a ratio of some 15; on any ground one of the two has at least the root of it, 3.9, above the 3 WCAG 1.4.11 asks of graphics. */
    @Property
    void the_better_ink_is_always_seen(@ForAll @IntRange(max = 0xffffff) int rgb) {
        Colour ground = new Colour(String.format("#%06x", rgb));
        Colour ink = new Colour("#20262b");
        Colour white = new Colour("#ffffff");
        Colour better = Contrast.better(ground, ink, white);
        assertTrue(Contrast.ratio(ground, better) >= 3, ground + " under " + better);
        assertTrue(Contrast.ratio(ground, better) >= Math.max(Contrast.ratio(ground, ink), Contrast.ratio(ground, white)));
    }

    /** On white, dark grey reads better than light grey (12.63 and 2.32 above), and no better than itself. */
    @Test
    void the_first_ink_is_taken_where_both_read_alike() {
        Colour first = new Colour("#333333");
        Colour same = new Colour("#333333");
        assertSame(first, Contrast.better(new Colour("#ffffff"), first, same));
        assertSame(first, Contrast.better(new Colour("#ffffff"), first, new Colour("#aaaaaa")));
        assertSame(first, Contrast.better(new Colour("#ffffff"), new Colour("#aaaaaa"), first));
    }
}
