package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import kitleaf.Phrases;
import kitleaf.basket.place.BasketWords;
import kitleaf.basket.place.Problem;
import kitleaf.basket.place.ProblemText;
import kitleaf.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The phrases for what is wrong with a basket against the readers that say them, in both languages. */
class MessagesTests {

    private static final Phrases PHRASES = new Phrases(Path.of("src/main/resources/kitleaf/basket/messages"),
            Path.of("src/main/java/kitleaf/basket"));

    @TempDir
    Path folder;

    @Test
    void bothLanguagesHaveTheSamePhrasesWithTheSameSlots() throws IOException {
        assertEquals(PHRASES.slots(""), PHRASES.slots("_de"));
        assertTrue(PHRASES.slots("").size() > 300, "only " + PHRASES.slots("").size() + " phrases");
    }

    /** Their keys are composed: a side, a way, and which line of labels. */
    @Test
    void everyPhraseIsSaidSomewhere() throws IOException {
        List<String> composed = List.of("side.left", "side.right", "side.top", "side.bottom", "way.left", "way.right", "way.above", "way.below",
                "label.overlap.across", "label.overlap.down", "label.reach.across.one", "label.reach.across.many",
                "label.reach.down.one", "label.reach.down.many");
        assertEquals(composed.stream().sorted().toList(), PHRASES.unsaid());
    }

    @Test
    void everyPhraseThatIsSaidIsThere() throws IOException {
        assertEquals(List.of(), PHRASES.missing());
    }

    /**
     * The YAML parser's own words, by which its faults are told apart, are no words of ours; names of pieces are examples to show, those of
     * stitches are what she may write.
     */
    @Test
    void noEnglishSentenceStandsInTheCode() throws IOException {
        assertEquals(List.of("Breakwater band sampler", "Saltings in winter", "Beacon on the point",
                "half cross stitch", "three quarter stitch", "three quarter stitches", "double running stitch",
                "long armed cross", "long armed cross stitch", "long legged cross", "four sided stitch", "four sided stitches", "satin stitch block",
                "satin stitch blocks", "cannot start any token", "mapping values are not allowed",
                "could not find expected ':'", "while parsing a flow", "expected the node content", "sequence entries are not allowed"), PHRASES.sentencesInCode());
    }

    /** Every line of the left is a faulty one of the tests in English; the German was put by hand. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            margin: 3                  | 4:9: „3“ ist eine Zahl ohne Einheit; schreiben Sie die Einheit dazu, zum Beispiel 3 in oder 7.5 cm
            margin: {tops: 3 in}       | 4:10: „tops“ ist keine Angabe, die bei „margin“ stehen kann; meinten Sie top?
            finish: framd              | 4:9: „framd“ ist keine Ausarbeitung; meinten Sie framed?
            coverage: 7,5%             | 4:11: „7,5%“ hat ein Dezimalkomma; schreiben Sie einen Punkt, also 7.5%
            threads: [{name: x}]       | 4:11: bei diesem Garn fehlt „code“; schreiben Sie zum Beispiel code: K12
            threads: [{code: a, skein: silk}] | 4:28: „silk“ ist keine Docke dieses Korbs; schreiben Sie cotton, oder nehmen Sie sie bei „skeins“ in basket.yaml auf
            threads:                   | 4:1: „threads“ hat keinen Wert; schreiben Sie einen, zum Beispiel threads: - {code: K12, stitches: {cross: 2310, back: 120}}
            designer: {a: b}           | 4:11: bei „designer“ muss genau ein Wert stehen; schreiben Sie ihn so: Ottoline Marsh
            piece: Fog bell            | 4:1: „piece“ steht hier zweimal; behalten Sie eines von beiden
            margin:3 in                | 4:7: nach diesem Doppelpunkt fehlt das Leerzeichen; schreiben Sie margin: 3 in
            """)
    void aFaultyLineIsToldInGerman(String line, String message) {
        new Written(folder).file("pieces/p.yaml", Written.PIECE + line + "\n");
        Words german = BasketWords.in(Locale.GERMAN);
        assertEquals(List.of(message), BasketReader.read(folder).problems().stream()
                .map(problem -> ProblemText.render(problem, german).lines().findFirst().orElseThrow()
                        .replace(folder + "/pieces/p.yaml:", "")).toList());
    }

    /** Whatever the tests in English provoke can be said in German as well, and says something else. */
    @Test
    void aDamagedBasketIsToldWhollyInGerman() {
        new Written(folder).file("basket.yaml", "paper: A44\nunits: inch\nprinter: {measured-across: 90 mm}\ncut-step: 3 in\n"
                + "stash: [{code: a}, {code: b, skein: silk, skeins: 0}]\ngoals: {year: 1, by: luck, cards: many}\n")
                .file("pieces/a.yaml", "piece: \"\"\nstitches: 3\ncloth: {kind: wool, count: 1, over: 9}\n");
        List<Problem> problems = BasketReader.read(folder).problems();
        assertTrue(problems.size() > 12, problems.size() + " problems");
        Words german = BasketWords.in(Locale.GERMAN);
        Words english = BasketWords.in(Locale.ENGLISH);
        for (Problem problem : problems) {
            Stream.of(problem.wrong(), problem.write()).forEach(said -> {
                assertTrue(!german.say(said).equals(english.say(said)), english.say(said));
                assertTrue(!german.say(said).matches(".*\\{[0-9]}.*"), german.say(said));
            });
        }
    }
}
