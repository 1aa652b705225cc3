package kitleaf.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import kitleaf.Phrases;
import kitleaf.press.markup.MarkupException;
import kitleaf.press.markup.PressWords;
import org.junit.jupiter.api.Test;

/** The phrases of the press against the code that says them, in both languages. */
class PressWordsTests {

    private static final Phrases PHRASES = new Phrases(Path.of("src/main/resources/kitleaf/press/messages"),
            Path.of("src/main/java/kitleaf/press"));

    @Test
    void bothLanguagesHaveTheSamePhrasesWithTheSameSlots() throws IOException {
        assertEquals(PHRASES.slots(""), PHRASES.slots("_de"));
    }

    @Test
    void everyPhraseIsSaidAndEveryPhraseThatIsSaidIsThere() throws IOException {
        assertEquals(List.of(), PHRASES.unsaid());
        assertEquals(List.of(), PHRASES.missing());
    }

    /** The one left ends a reading from inside; what is told of it is a phrase. */
    @Test
    void noEnglishSentenceStandsInTheCode() throws IOException {
        assertEquals(List.of("a page without end"), PHRASES.sentencesInCode());
    }

    @Test
    void aTextCutShortIsToldInGerman() throws Exception {
        Pressed pressed = Pressed.page("<text x=\"10\" y=\"20\" width=\"1\" font-size=\"9pt\">Tide</text>");
        assertEquals(List.of("Seite 1: kein Platz für „Tide“"),
                pressed.report.warnings().stream().map(said -> PressWords.in(Locale.GERMAN).say(said)).toList());
    }

    @Test
    void aFaultInMarkupIsToldInGermanWithTheValueInside() {
        MarkupException fault = assertThrows(MarkupException.class, () -> Pressed.page("<rect width=\"ten\" height=\"1\"/>"));
        assertEquals("„width“ von „rect“: „ten“ ist keine Zahl", PressWords.in(Locale.GERMAN).say(fault.said()));
        assertEquals("\"width\" of \"rect\": \"ten\" is not a number", fault.getMessage());
    }
}
