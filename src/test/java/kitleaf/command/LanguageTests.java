package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.Phrases;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Voice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the commands say, in both languages, and in which of them they say it. */
class LanguageTests {

    private static final Map<String, String> GERMANY = Map.of("LANG", "de_DE.UTF-8");
    private static final String PIECE = "piece: Fog bell\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\n";

    private static final Phrases PHRASES = new Phrases(Path.of("src/main/resources/kitleaf/command/messages"),
            Path.of("src/main/java/kitleaf/command"));

    @TempDir
    Path folder;

    private String check(Map<String, String> surroundings, String settings, String piece) throws IOException {
        Ran ran = Ran.in(surroundings, "check", Ran.basket(folder, settings, piece));
        return (ran.out() + ran.err()).replace(folder + "/", "").lines().findFirst().orElse("");
    }

    /** What is told of a piece that is wrong in its fourth line. */
    private String ofPiece(Map<String, String> surroundings, String settings) throws IOException {
        return Ran.in(surroundings, "check", Ran.basket(folder, settings, PIECE + "margin: 3\n")).err().replace(folder + "/", "").lines()
                .filter(line -> line.startsWith("pieces/")).findFirst().orElseThrow();
    }

    @Test
    void bothLanguagesHaveTheSamePhrasesWithTheSameSlots() throws IOException {
        assertEquals(PHRASES.slots(""), PHRASES.slots("_de"));
    }

    @Test
    void everyPhraseIsSaidAndEveryPhraseThatIsSaidIsThere() throws IOException {
        assertEquals(List.of(), PHRASES.unsaid());
        assertEquals(List.of(), PHRASES.missing());
    }

    /** picocli's own sentences, by which its faults are told apart, are no words of ours. */
    @Test
    void noEnglishSentenceStandsInTheCode() throws IOException {
        assertEquals(List.of(), PHRASES.sentencesInCode().stream()
                .filter(text -> !text.matches("(Missing required|Expected parameter|Unknown (option|subcommand)|Unmatched argument|option \\(|Invalid value).*"))
                .toList());
    }

    /** The first that is set counts (POSIX, 8.2: LC_ALL, then the category, then LANG); an empty one is not set. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            LANG=de_DE.UTF-8                          | de
            LANG=de                                   | de
            LANG=de_AT@euro                           | de
            LANG=en_GB.UTF-8                          | en
            LANG=C                                    | en
            LANG=nl_NL.UTF-8                          | en
            LANG=den_CA                               | en
            LANG=en_GB.UTF-8,LC_MESSAGES=de_CH.UTF-8  | de
            LANG=de_DE.UTF-8,LC_MESSAGES=C            | en
            LANG=de_DE.UTF-8,LC_ALL=C                 | en
            LC_MESSAGES=en_US,LC_ALL=de_DE            | de
            LANG=de_DE.UTF-8,LC_ALL=,LC_MESSAGES=     | de
            LC_NUMERIC=de_DE.UTF-8                    | en
            """)
    void theSurroundingsAreReadInTheOrderOfPosix(String variables, String language) {
        Map<String, String> surroundings = Stream.of(variables.split(",")).map(variable -> variable.split("=", 2))
                .collect(Collectors.toMap(pair -> pair[0], pair -> pair[1]));
        assertEquals(Locale.forLanguageTag(language), Voice.language(surroundings));
    }

    @Test
    void aBrokenBasketIsToldInItsOwnLanguage() throws IOException {
        String german = "pieces/piece.yaml:4:9: „3“ ist eine Zahl ohne Einheit; schreiben Sie die Einheit dazu, zum Beispiel 3 in oder 7.5 cm";
        String english = "pieces/piece.yaml:4:9: \"3\" is a bare number; write it with its unit, such as 3 in or 7.5 cm";
        assertEquals(german, ofPiece(Map.of(), "language: de\n"));
        assertEquals(english, ofPiece(GERMANY, "language: en-GB\n"));
        assertEquals(german, ofPiece(GERMANY, ""));
        assertEquals(english, ofPiece(Map.of(), ""));
    }

    @Test
    void theLanguageIsFoundInSettingsThatAreBrokenElsewhere() throws IOException {
        assertEquals("basket.yaml:2:10: dieses { wird nirgends geschlossen; schreiben Sie }, wo die Gruppe endet",
                check(Map.of(), "language: de  # so talk to me\nprinter: {measured-across: 99 mm\ntitle: x\n", PIECE));
    }

    @Test
    void aLanguageThatIsNotKnownLeavesTheSurroundingsTheirs() throws IOException {
        assertTrue(ofPiece(GERMANY, "language: xx\n").contains(" ist eine Zahl ohne Einheit"));
        assertTrue(ofPiece(Map.of(), "language: xx\n").contains(" is a bare number"));
    }

    @Test
    void theProblemsAreCountedInGerman() throws IOException {
        Ran ran = Ran.in(GERMANY, "check", Ran.basket(folder, "", PIECE + "margin: 3\nfinish: no\n"));
        assertTrue(ran.err().endsWith("\n\n2 Fehler; es wurde nichts geschrieben\n"), ran.err());
        assertEquals(Exit.BASKET_HAS_PROBLEMS, ran.code());
    }

    @Test
    void aSoundBasketIsSoundInGerman() throws IOException {
        assertEquals("Korb: 1 Stück, keine Fehler", check(GERMANY, "title: Korb\n", PIECE));
    }

    /** picocli's own sentences speak to programmers; none of them comes through. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            print                       | say which: BASKET is missing after the command             | sagen Sie, welches: hinter dem Befehl fehlt BASKET
            print b --out               | a value is missing after --out; write it like --out DIR    | hinter --out fehlt ein Wert; schreiben Sie ihn so: --out DIR
            print b --out --large       | a value is missing after --out; --large stands there       | hinter --out fehlt ein Wert; dort steht --large
            print b --out x --out y     | --out stands twice; write it once                          | --out steht zweimal; schreiben Sie es einmal
            print b --large=x           | --large takes no value; leave x out                        | --large hat keinen Wert; lassen Sie x weg
            print b --foo               | there is no option --foo                                   | die Option --foo gibt es nicht
            print b --foo --bar         | there are no options --foo, --bar                          | die Optionen --foo, --bar gibt es nicht
            print b c                   | "c" is one word too many here; put a name with blanks in quotes | „c“ ist hier ein Wort zu viel; setzen Sie einen Namen mit Leerzeichen in Anführungszeichen
            print b c d                 | these words are too many here: c, d; put a name with blanks in quotes | diese Wörter sind hier zu viel: c, d; setzen Sie einen Namen mit Leerzeichen in Anführungszeichen
            print b --only cut-sheets, kit-lists buy-list | name sheets after --only, with commas between them and no blanks: --only cut-sheets,kit-lists | nennen Sie Blätter hinter --only, mit Kommas dazwischen und ohne Leerzeichen: --only cut-sheets,kit-lists
            log b                       | tell one thing at least: --hours, --stitches, --done 45%, --unpicked, --stitched or --finished | nennen Sie wenigstens eines: --hours, --stitches, --done 45%, --unpicked, --stitched oder --finished
            foo b                       | there is no command "foo"                                | den Befehl „foo“ gibt es nicht
            help foo                    | there is no command "foo"                                  | den Befehl „foo“ gibt es nicht
            print b --skip x            | --skip: 'x' is not a whole number; write a whole number such as 12 | --skip: „x“ ist keine ganze Zahl; schreiben Sie eine ganze Zahl, zum Beispiel 12
            print b --only x            | --only: 'x' is not a sheet; write cut-sheets, cloth-plan, bobbin-labels, kit-lists, buy-list, bag-tags, goal-grid, piece-list, look-back, duplex-check | --only: „x“ ist kein Blatt; schreiben Sie cut-sheets, cloth-plan, bobbin-labels, kit-lists, buy-list, bag-tags, goal-grid, piece-list, look-back, duplex-check
            print b --units inches      | --units: "inches" is not a unit to think in; write one of: in, cm | --units: „inches“ ist keine Einheit, in der Kitleaf rechnet; schreiben Sie eines von diesen: in, cm
            print b --foo cm            | there is no option --foo                                   | die Option --foo gibt es nicht
            print b --most-labels -1    | --most-labels: '-1' is too few; write a whole number from 1 up | --most-labels: „-1“ ist zu wenig; schreiben Sie eine ganze Zahl ab 1
            """)
    void wrongUsageIsToldInBothLanguages(String arguments, String english, String german) {
        Object[] split = arguments.split(" ");
        assertEquals(english, Ran.kitleaf(split).err().lines().findFirst().orElseThrow());
        assertEquals(german, Ran.in(GERMANY, split).err().lines().findFirst().orElseThrow());
        assertEquals(Exit.WRONG_USAGE, Ran.in(GERMANY, split).code());
    }

    @Test
    void whatMayHaveBeenMeantIsToldInBothLanguages() {
        assertEquals("there is no command \"prnt\"\nDid you mean: kitleaf print?\nTry: kitleaf help\n", Ran.kitleaf("prnt").err());
        assertEquals("den Befehl „prnt“ gibt es nicht\nMeinten Sie: kitleaf print?\nMehr dazu: kitleaf help\n",
                Ran.in(GERMANY, "prnt").err());
        assertEquals("there is no option --paoer\nDid you mean: --paper?\nTry: kitleaf help print\n", Ran.kitleaf("print", "b", "--paoer").err());
    }

    @Test
    void numbersForProgramsAreTheSameInEveryLanguage() throws IOException {
        Path basket = Ran.basket(folder, "", PIECE);
        String json = Ran.kitleaf("reckon", basket, "--json").out();
        assertTrue(json.contains("\"version\""), json);
        assertEquals(json, Ran.in(GERMANY, "reckon", basket, "--json").out());
    }
}
