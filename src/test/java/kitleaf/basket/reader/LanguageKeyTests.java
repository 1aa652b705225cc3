package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.basket.Units;
import kitleaf.basket.place.BasketWords;
import kitleaf.basket.place.ProblemText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LanguageKeyTests {

    @TempDir
    Path folder;

    private Reading read(String settings, Optional<Locale> asked) throws IOException {
        Files.createDirectories(folder.resolve("pieces"));
        Files.writeString(folder.resolve("basket.yaml"), settings);
        Files.writeString(folder.resolve("pieces/piece.yaml"), "piece: Fog bell\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\n");
        return BasketReader.read(folder, asked);
    }

    /** What is usual where: letter paper in the United States and inches in English, by common practice. */
    @ParameterizedTest
    @CsvSource({"title: x, en, A4, IN", "language: en, en, A4, IN", "language: en-GB, en-GB, A4, IN", "language: en-US, en-US, letter, IN", "language: de, de, A4, CM"})
    void a_language_sets_the_units_and_paper_that_are_left_out(String line, String tag, String paper, Units units) throws IOException {
        Basket basket = read(line + "\n", Optional.empty()).basket().orElseThrow();
        assertEquals(tag, basket.language().toLanguageTag());
        assertEquals(paper, basket.paper().name());
        assertEquals(units, basket.units());
    }

    @Test
    void what_is_written_stays() throws IOException {
        Basket basket = read("language: de\nunits: in\npaper: letter\n", Optional.empty()).basket().orElseThrow();
        assertEquals(Units.IN, basket.units());
        assertEquals("letter", basket.paper().name());
    }

    @Test
    void a_language_asked_for_takes_the_place_of_the_baskets_own() throws IOException {
        Basket basket = read("language: de\n", Optional.of(Locale.US)).basket().orElseThrow();
        assertEquals(Locale.US, basket.language());
        assertEquals("letter", basket.paper().name());
        assertEquals(Units.IN, basket.units());
    }

    @Test
    void a_language_asked_for_counts_where_there_are_no_settings() throws IOException {
        read("", Optional.empty());
        Files.delete(folder.resolve("basket.yaml"));
        Basket basket = BasketReader.read(folder, Optional.of(Locale.GERMAN)).basket().orElseThrow();
        assertEquals(Locale.GERMAN, basket.language());
        assertEquals(Units.CM, basket.units());
    }

    @Test
    void a_near_miss_is_told_with_what_was_meant() throws IOException {
        Reading reading = read("language: en_GB\n", Optional.empty());
        assertTrue(reading.basket().isEmpty());
        String told = ProblemText.render(reading.problems().get(0), BasketWords.in(Locale.ENGLISH));
        assertTrue(told.contains("basket.yaml:1:11: \"en_GB\" is not a language Kitleaf speaks"), told);
        assertTrue(told.contains("did you mean en-GB?"), told);
    }

    @Test
    void the_machines_own_language_changes_nothing() throws IOException {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            Basket basket = read("title: x\n", Optional.empty()).basket().orElseThrow();
            assertEquals(Locale.ENGLISH, basket.language());
            assertEquals(Units.IN, basket.units());
        } finally {
            Locale.setDefault(before);
        }
    }
}
