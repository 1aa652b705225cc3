package kitleaf.sheet.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.ResourceBundle;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kitleaf.basket.thread.StitchKind;
import kitleaf.words.Words;
import org.junit.jupiter.api.Test;

/** The phrases in the bundle against the code and templates that say them. */
class WordsTests {

    /** Keys put together from a beginning and the name of a constant. */
    private static final Pattern COMPOSED = Pattern.compile(
            "(over|kind|finish|stitch(-full|-short)?|buy\\.warn|tag\\.note|cut-sheet|unit|state)\\..*"
            + "|buy\\.(each|cost)");
    /** What is said on a screen has words of its own. */
    private static final Path PLAIN = Path.of("src/main/java/kitleaf/sheet/plain");
    private static final Pattern LITERAL = Pattern.compile("\"([a-z][a-z-]*(?:\\.[a-z0-9-]+)+)\"");

    private static String sources() throws IOException {
        StringBuilder text = new StringBuilder();
        for (Path folder : List.of(Path.of("src/main/java/kitleaf/sheet"), Path.of("templates"))) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.filter(Files::isRegularFile).filter(file -> !file.startsWith(PLAIN)).toList()) {
                    text.append(Files.readString(file));
                }
            }
        }
        return text.toString();
    }

    @Test
    void every_phrase_is_said_somewhere() throws IOException {
        String sources = sources();
        List<String> silent = new ArrayList<>();
        for (String key : new TreeSet<>(ResourceBundle.getBundle("kitleaf.sheet.words.words", Locale.ROOT).keySet())) {
            if (!sources.contains("\"" + key + "\"") && !COMPOSED.matcher(key).matches()) {
                silent.add(key);
            }
        }
        assertEquals(List.of(), silent);
    }

    @Test
    void every_phrase_that_is_said_is_there() throws IOException {
        Words words = SheetWords.in(Locale.ENGLISH);
        Matcher said = Pattern.compile("say\\(" + LITERAL.pattern()).matcher(sources());
        int found = 0;
        while (said.find()) {
            assertTrue(!words.say(said.group(1)).isEmpty(), said.group(1));
            found++;
        }
        assertTrue(found > 80, found + " phrases");
    }

    @Test
    void every_kind_of_stitch_has_its_names() {
        for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            Words words = SheetWords.in(language);
            for (StitchKind kind : StitchKind.values()) {
                for (String key : List.of("stitch.", "stitch-full.", "stitch-short.")) {
                    assertTrue(!words.say(key + kind.word()).isEmpty(), key + kind);
                }
            }
        }
    }

    @Test
    void slots_are_filled_and_apostrophes_are_nothing_special() {
        assertEquals("page 3 of 7", SheetWords.in(Locale.ENGLISH).say("signature.page", 3, 7));
        assertTrue(SheetWords.in(Locale.ENGLISH).say("caution.iron").contains("maker’s"));
    }

    /** Marks and spaces as typography has them (Unicode Standard 6.2; a no-break space between figure and unit: SI brochure 5.4.3). */
    @Test
    void no_phrase_has_straight_marks_or_a_unit_that_may_leave_its_figure() throws IOException {
        Pattern parted = Pattern.compile("[0-9}] (mm|cm|m|yd|h|%|Zoll)(?!\\p{L})|[0-9}] in($|[.,;)])");
        List<String> wrong = new ArrayList<>();
        int phrases = 0;
        for (String language : List.of("", "_de", "_en_US")) {
            Properties all = new Properties();
            try (Reader in = Files.newBufferedReader(Path.of("src/main/resources/kitleaf/sheet/words/words" + language + ".properties"))) {
                all.load(in);
            }
            for (String key : new TreeSet<>(all.stringPropertyNames())) {
                // What stands behind a figure is an inch mark or a foot's.
                String phrase = all.getProperty(key).replaceAll("(?<=[0-9}])[\"']", "");
                if (phrase.matches(".*[\"'].*") || parted.matcher(phrase).find() || language.equals("_de") && phrase.matches(".*[”’″].*")) {
                    wrong.add(key + language);
                }
                phrases++;
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(phrases > 800, phrases + " phrases");
    }

    /** Spellings of Merriam-Webster's dictionary, where the Oxford one has others; from memory. */
    @Test
    void american_phrases_have_american_spelling() {
        Words words = SheetWords.in(Locale.US);
        Pattern british = Pattern.compile("colour|grey|centre|metre|catalogue|selvedge|towards|labell|favour|\\b\\w+ise[ds]?\\b",
                Pattern.CASE_INSENSITIVE);
        List<String> left = ResourceBundle.getBundle("kitleaf.sheet.words.words", Locale.ROOT).keySet().stream()
                .filter(key -> british.matcher(words.say(key).replace("otherwise", "")).find()).sorted().toList();
        assertEquals(List.of(), left);
        assertEquals("center", words.say("cut-sheet.centre-mark"));
    }
}
