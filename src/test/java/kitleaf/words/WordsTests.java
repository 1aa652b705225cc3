package kitleaf.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import org.junit.jupiter.api.Test;

class WordsTests {

    private static Words in(Locale language) {
        return new Words("kitleaf.words.sample", language);
    }

    @Test
    void slots_are_filled_in_the_order_of_the_language() {
        assertEquals("3 skeins of Ebb grey", in(Locale.ENGLISH).say("skeins", 3, "Ebb grey"));
        assertEquals("Ebb grey: 3 Docken", in(Locale.GERMAN).say("skeins", 3, "Ebb grey"));
    }

    @Test
    void a_phrase_in_a_slot_is_spoken_in_the_same_language() {
        Said said = Said.of("wanted", Said.of("skeins", 3L, "Ebb grey"));
        assertEquals("wanted: 3 skeins of Ebb grey", in(Locale.ENGLISH).say(said));
        assertEquals("gesucht: Ebb grey: 3 Docken", in(Locale.GERMAN).say(said));
    }

    @Test
    void what_fills_a_slot_is_never_read_as_a_slot() {
        assertEquals("{1} skeins of {0}", in(Locale.ENGLISH).say("skeins", "{1}", "{0}"));
    }

    @Test
    void apostrophes_braces_and_umlauts_are_nothing_special() {
        assertEquals("the weaver's {warp: 28}", in(Locale.ENGLISH).say("plain", "x"));
        assertEquals("für Größen", in(Locale.GERMAN).say("plain"));
    }

    @Test
    void regions_share_the_words_of_their_language_and_others_hear_english() {
        assertEquals(in(Locale.GERMAN).say("plain"), in(Locale.forLanguageTag("de-AT")).say("plain"));
        assertEquals(in(Locale.ENGLISH).say("plain"), in(Locale.FRENCH).say("plain"));
    }

    @Test
    void the_machine_s_own_language_is_never_looked_at() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals("the weaver's {warp: 28}", in(Locale.ENGLISH).say("plain"));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void a_phrase_that_is_not_there_is_a_fault() {
        assertFalse(in(Locale.ENGLISH).knows("nothing"));
        assertTrue(in(Locale.ENGLISH).knows("plain"));
        assertThrows(MissingResourceException.class, () -> in(Locale.ENGLISH).say("nothing"));
    }

    @Test
    void what_has_no_plain_form_cannot_be_said() {
        assertThrows(IllegalArgumentException.class, () -> Said.of("skeins", 1.5));
        assertThrows(IllegalArgumentException.class, () -> Said.of("skeins", List.of("a")));
        assertThrows(IllegalArgumentException.class, () -> Said.of(""));
    }
}
