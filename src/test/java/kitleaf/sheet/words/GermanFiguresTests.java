package kitleaf.sheet.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import kitleaf.Phrases;
import kitleaf.basket.Price;
import kitleaf.basket.Units;
import org.junit.jupiter.api.Test;

/** German figures; how they are written is common practice (DIN 5008, from memory), worked by hand. */
class GermanFiguresTests {

    private static final Phrases PHRASES = new Phrases(Path.of("src/main/resources/kitleaf/sheet/words/words"), Path.of("src/main/java/kitleaf/sheet"));

    private final Figures inches = in(Units.IN, Locale.GERMAN);
    private final Figures centimetres = in(Units.CM, Locale.GERMAN);

    private static Figures in(Units units, Locale language) {
        return new Figures(units, SheetWords.in(language));
    }

    @Test
    void both_languages_have_the_same_phrases_with_the_same_slots() throws Exception {
        assertEquals(PHRASES.slots(""), PHRASES.slots("_de"));
    }

    @Test
    void decimals_have_a_comma_and_inches_keep_their_fractions() {
        assertEquals("25,4\u00a0cm", centimetres.length(254));
        assertEquals("3\u00a03\u204416\u00a0Zoll", inches.length(25.4 * (3 + 3 / 16.0)));
        assertEquals("3\u00a03\u204416\u00a0Zoll", inches.brief(25.4 * (3 + 3 / 16.0)));
        assertEquals("25,4\u00a0×\u00a038,1\u00a0cm", inches.otherSize(254, 381));
    }

    /** Figures stand with what they count, so both sides of the sign do. */
    @Test
    void no_line_ends_in_a_size() throws Exception {
        Figures english = in(Units.IN, Locale.ENGLISH);
        for (String size : List.of(english.cut(254, 381), english.swapped().cut(254, 381), english.measured(254, 381),
                english.size(254, 381), inches.otherSize(254, 381), Figures.unbroken("50 x 70 cm cut").split(" cut")[0])) {
            assertFalse(size.matches(".*[×x] .*|.* [×x].*"), size);
        }
        for (String language : List.of("", "_de", "_en_US")) {
            for (String phrase : Files.readAllLines(Path.of("src/main/resources/kitleaf/sheet/words/words" + language + ".properties"))) {
                assertFalse(phrase.matches(".*(× | ×|\\} x|x \\{).*"), phrase);
            }
        }
    }

    @Test
    void thousands_stand_apart_by_a_narrow_space() {
        assertEquals("14\u202f756", inches.grouped(14756));
        assertEquals("756", inches.grouped(756));
    }

    @Test
    void prices_keep_their_noughts() {
        assertEquals("4,80\u00a0EUR", inches.money(new Price(new BigDecimal("4.80"), "EUR")));
        assertEquals("4.80\u00a0EUR", in(Units.IN, Locale.ENGLISH).money(new Price(new BigDecimal("4.80"), "EUR")));
    }

    @Test
    void lists_end_with_and() {
        assertEquals("A, B und C", inches.list(List.of("A", "B", "C")));
        assertEquals("A und B", inches.list(List.of("A", "B")));
        assertEquals("A", inches.list(List.of("A")));
        assertEquals("", inches.list(List.of()));
        assertEquals("A, B, C", in(Units.IN, Locale.ENGLISH).list(List.of("A", "B", "C")));
        // The semicolon parts what has commas of its own (Duden, K 175; The Chicago Manual of Style, 6.60; from memory).
        assertEquals("A, a; B; C", inches.list(List.of("A, a", "B", "C")));
        assertEquals("A; B, b", in(Units.IN, Locale.ENGLISH).list(List.of("A", "B, b")));
    }

    @Test
    void days_are_written_as_the_language_and_its_region_write_them() {
        LocalDate day = LocalDate.of(2027, 3, 9);
        assertEquals("9.\u00a0März\u00a02027", inches.day(day));
        assertEquals("9.\u00a0März", inches.shortDay(day, 2027));
        assertEquals("9.\u00a0März\u00a02027", inches.shortDay(day, 2026));
        assertEquals("9\u00a0March\u00a02027", in(Units.IN, Locale.ENGLISH).day(day));
        assertEquals("9\u00a0March\u00a02027", in(Units.IN, Locale.UK).day(day));
        assertEquals("March\u00a09,\u00a02027", in(Units.IN, Locale.US).day(day));
    }
}
