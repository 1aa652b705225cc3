package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The example basket in German, read back with PDFBox. */
class GermanPrintTests {

    private static final String EXAMPLE = "examples/harbour";
    /** A number of at least one decimal, as each language writes it; days written as numbers have a point at their end too. */
    private static final Pattern WITH_COMMA = Pattern.compile("[0-9],[0-9]");
    private static final Pattern WITH_POINT = Pattern.compile("(?<![0-9.])[0-9]+\\.[0-9]+(?![0-9.])");

    @TempDir
    Path out;

    private static Properties words(String language) throws IOException {
        Properties words = new Properties();
        try (Reader reader = Files.newBufferedReader(Path.of("src/main/resources/kitleaf/sheet/words/words" + language + ".properties"))) {
            words.load(reader);
        }
        return words;
    }

    private static String plain(String text) {
        return text.replaceAll("[\\s\u00a0\u202f]+", " ");
    }

    @Test
    void the_example_prints_in_german_without_a_warning() throws IOException {
        Ran ran = Ran.kitleaf("print", EXAMPLE, "--language", "de", "--units", "cm", "--out", out);
        assertEquals("", ran.err());
        assertEquals(0, ran.code());
        Properties english = words("");
        Properties german = words("_de");
        // Two words and more, without slots, that German does not share: what else may stand in a title or a name.
        List<String> telling = english.stringPropertyNames().stream().map(key -> List.of(english.getProperty(key), german.getProperty(key)))
                .filter(pair -> !pair.get(0).equals(pair.get(1)) && !pair.get(0).contains("{") && pair.get(0).matches(".*[A-Za-z]{2,}.* .*[a-z].*"))
                .map(pair -> plain(pair.get(0))).toList();
        assertTrue(telling.size() > 80, telling.size() + " phrases");
        for (String sheet : Ran.files(out).stream().filter(file -> file.endsWith(".pdf")).toList()) {
            try (PDDocument pdf = Loader.loadPDF(out.resolve(sheet).toFile())) {
                String text = plain(new PDFTextStripper().getText(pdf));
                assertEquals("de", pdf.getDocumentCatalog().getLanguage(), sheet);
                assertTrue(text.contains("Seite 1 von " + pdf.getNumberOfPages()), sheet);
                assertTrue(WITH_COMMA.matcher(text).find(), sheet + " has a decimal comma");
                assertEquals(List.of(), WITH_POINT.matcher(text).results().map(it -> it.group()).toList(), sheet);
                assertEquals(List.of(), telling.stream().filter(phrase -> Pattern.compile("(?<![A-Za-z])" + Pattern.quote(phrase) + "(?![A-Za-z])")
                        .matcher(text).find()).toList(), sheet);
                String information = pdf.getDocumentInformation().getTitle() + pdf.getDocumentInformation().getSubject();
                assertEquals(List.of(), telling.stream().filter(information::contains).toList(), sheet);
            }
        }
    }

    @Test
    void the_example_prints_without_a_warning_on_letter_paper() {
        assertEquals("", Ran.kitleaf("print", EXAMPLE, "--language", "de", "--paper", "letter", "--out", out).err());
    }

    /** A cloth counted both ways takes more words in German than a line of a small tag holds; the tag makes room for a second. */
    @ParameterizedTest
    @ValueSource(strings = {"{sides: folded}", "{size: sixth, sides: long-edge}", "{size: quarter, sides: short-edge}"})
    void small_tags_on_lying_a5_are_not_cut_short(String tags) throws IOException {
        Path basket = Ran.basket(out.resolve("b"), "tags: " + tags + "\n", """
                piece: Groyne
                designer: Nell Ferry
                stitches: 120 x 180
                cloth: {name: Bolt end, kind: linen, count: {warp: 71 in 2 in, weft: 145 in 10 cm}, over: 2}
                margin: 3 in
                progress: {started: 2026-02-14}
                threads: [{code: N1, stitches: {cross: 50}}, {code: N2, stitches: {cross: 50}}]
                """);
        Ran ran = Ran.kitleaf("print", basket, "--language", "de", "--paper", "A5 landscape", "--only", "bag-tags", "--out", out);
        assertEquals("", ran.err());
        try (PDDocument pdf = Loader.loadPDF(out.resolve("bag-tags.pdf").toFile())) {
            String text = plain(new PDFTextStripper().getText(pdf));
            assertTrue(text.contains("Bolt end (Leinen), 35,5 × 36,8 je Zoll (Kette × Schuss) über zwei"), text);
            assertTrue(text.contains("N1") && text.contains("N2") && !text.contains("Anhänger 1 von"), text);
        }
    }

    /** The example has a label with one skein; in large print capitals become small letters, which no ß may stand in the way of. */
    @Test
    void one_skein_is_a_skein_and_large_headings_are_spelt_right() throws IOException {
        Ran.kitleaf("print", EXAMPLE, "--language", "de", "--only", "bobbin-labels", "--out", out);
        Ran.kitleaf("print", EXAMPLE, "--language", "de", "--only", "cut-sheets", "--piece", "fog-bell", "--large", "--out", out);
        try (PDDocument labels = Loader.loadPDF(out.resolve("bobbin-labels.pdf").toFile());
                PDDocument large = Loader.loadPDF(out.resolve("cut-sheets.pdf").toFile())) {
            String text = plain(new PDFTextStripper().getText(labels));
            assertTrue(text.contains("1 Docke silk"), text);
            assertFalse(Pattern.compile("(?<![0-9,])1 Docken").matcher(text).find(), text);
            String cut = plain(new PDFTextStripper().getText(large));
            assertTrue(cut.contains("Eckenlehre · 1 : 1"), cut);
            assertFalse(cut.contains("grösse"), cut);
        }
    }

    @Test
    void plain_text_is_german_and_at_most_eighty_columns_wide() {
        String text = Ran.kitleaf("reckon", EXAMPLE, "almanac", "--language", "de").out()
                + Ran.kitleaf("reckon", EXAMPLE, "--language", "de").out();
        assertTrue(text.contains("  Motiv       11 1/4 x 14 3/8 Zoll        28,4 x 36,6 cm"), text.substring(0, 400));
        assertEquals(List.of(), text.lines().filter(line -> line.length() > 80).toList());
        List<String> rows = text.lines().filter(line -> line.length() > 12).map(line -> line.substring(0, 12).strip()).toList();
        assertTrue(rows.containsAll(List.of("Stoff", "Diagonalen", "Garne", "zu kaufen", "gewählt")), rows.toString());
        for (String english : List.of("cloth", "design", "diagonals", "count in", "threads", "needle", "to buy", "chosen", "not chosen", "pace")) {
            assertFalse(rows.contains(english), english);
        }
    }

    @Test
    void the_machines_own_language_changes_no_sheet() throws IOException {
        assertEquals(0, Ran.kitleaf("print", EXAMPLE, "--only", "goal-grid,buy-list", "--out", out.resolve("one")).code());
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals(0, Ran.in(Map.of("LANG", "de_DE.UTF-8"), "print", EXAMPLE, "--only", "goal-grid,buy-list", "--out", out.resolve("two")).code());
        } finally {
            Locale.setDefault(before);
        }
        List<String> printed = List.of("buy-list.csv", "buy-list.pdf", "goal-grid.pdf");
        assertEquals(printed, Ran.files(out.resolve("one")));
        assertEquals(printed, Ran.files(out.resolve("two")));
        for (String file : printed) {
            assertEquals(Files.readString(out.resolve("one").resolve(file), StandardCharsets.ISO_8859_1),
                    Files.readString(out.resolve("two").resolve(file), StandardCharsets.ISO_8859_1), file);
        }
    }

    @Test
    void a_language_that_is_not_spoken_is_told_of() {
        Ran ran = Ran.kitleaf("reckon", EXAMPLE, "--language", "fr");
        assertEquals(2, ran.code());
        assertTrue(ran.err().contains("\"fr\" is not a language Kitleaf speaks; write one of: en, en-GB, en-US, de"), ran.err());
    }
}
