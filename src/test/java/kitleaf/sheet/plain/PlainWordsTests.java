package kitleaf.sheet.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import kitleaf.Phrases;
import kitleaf.sizing.plan.CutStep;
import kitleaf.sizing.thread.ThreadWarning;
import kitleaf.sizing.year.PassedOver;
import kitleaf.sizing.year.YearWarning;
import org.junit.jupiter.api.Test;

/** The words of plain lines against the code that says them, in both languages. */
class PlainWordsTests {

    private static final Phrases PHRASES = new Phrases(Path.of("src/main/resources/kitleaf/sheet/plain/words"),
            Path.of("src/main/java/kitleaf/sheet/plain"));

    @Test
    void bothLanguagesHaveTheSamePhrasesWithTheSameSlots() throws IOException {
        assertEquals(PHRASES.slots(""), PHRASES.slots("_de"));
    }

    /** What is said of constants is composed of a group and the constant's name. */
    @Test
    void everyPhraseIsSaidAndEveryPhraseThatIsSaidIsThere() throws IOException {
        List<String> unsaid = new ArrayList<>(PHRASES.unsaid());
        unsaid.removeIf(key -> key.startsWith("why.") || key.startsWith("part.") || key.startsWith("warning.") || key.startsWith("thread-warning."));
        assertEquals(List.of(), unsaid);
        assertEquals(List.of(), PHRASES.missing());
    }

    @Test
    void everyConstantHasItsWords() {
        for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            PlainWords words = new PlainWords(language, 1);
            Stream.of(PassedOver.Why.values()).forEach(why -> assertFalse(words.of("why", why).isEmpty()));
            Stream.of(CutStep.Side.values()).forEach(side -> assertFalse(words.of("part", side, 7).isEmpty()));
            Stream.of(YearWarning.Kind.values()).forEach(kind -> assertFalse(words.of("warning", kind).isEmpty()));
            Stream.of(ThreadWarning.Kind.values()).forEach(kind -> assertTrue(words.of("thread-warning", kind, "K12", "silk", "bell").startsWith("K12: ")));
        }
        assertEquals("passt nicht in die Zeit", new PlainWords(Locale.GERMAN, 1).of("why", PassedOver.Why.DOES_NOT_FIT));
    }

    /** The longest name that may come, a cut of two digits, leaves a blank before the next column. */
    @Test
    void namesDoNotRunIntoTheNextColumn() throws IOException {
        for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            PlainWords words = new PlainWords(language, 1);
            int width = Integer.parseInt(words.say("columns.name"));
            PHRASES.slots("").keySet().stream().filter(key -> key.startsWith("row."))
                    .forEach(key -> assertFalse(words.say(key, 12).length() >= width, words.say(key, 12)));
        }
    }
}
