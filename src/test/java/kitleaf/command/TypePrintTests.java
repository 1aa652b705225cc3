package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import kitleaf.ReadBack;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Her own words on sheets: set as her language sets type, but for codes and inch marks; as typed wherever a program reads them. */
class TypePrintTests {

    private static final String PIECE = """
            piece: Harbour-master's "Gull", 5" high
            designer: Nell's "Ferry"
            stitches: 140 x 210
            cloth: {name: Natural linen, kind: linen, count: 28, over: 2}
            threads:
              - {code: "N'a-7", name: "Gull's wing", symbol: "'", stitches: {cross: 900}, lot: "B's"}
            """;
    private static final String TYPED = "Harbour-master's \"Gull\", 5\" high";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"en, “Gull”, Nell’s “Ferry”", "de, „Gull“, Nell’s „Ferry“"})
    void her_words_are_set_and_her_codes_are_as_typed(String language, String gull, String designer) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "goals: {year: 2027}\npace: {stitches-per-hour: 100, hours-per-week: 5}\n"
                + "cloth-on-hand:\n  - {name: Gull's linen, kind: linen, count: 28, size: 70 cm x 90 cm}\n", PIECE);
        Ran ran = Ran.kitleaf("print", basket, "--out", folder.resolve("out"), "--language", language, "--as-of", "2027-01-01");
        assertEquals(0, ran.code(), ran.err());
        assertEquals("", ran.err());
        String title = "Harbour-master’s " + gull + ", 5\" high";
        for (String sheet : new String[] {"cut-sheets", "kit-lists", "bag-tags", "bobbin-labels", "buy-list", "goal-grid", "cloth-plan"}) {
            String text = text(sheet);
            assertTrue(text.contains(title), sheet + ": " + text);
            assertTrue(!text.contains("Harbour-master's"), sheet + ": " + text);
        }
        assertTrue(text("cut-sheets").contains(designer), text("cut-sheets"));
        assertTrue(!text("cut-sheets").toLowerCase().contains("linen linen"), text("cut-sheets"));
        assertTrue(text("cloth-plan").contains("Gull’s linen"), text("cloth-plan"));
        for (String sheet : new String[] {"kit-lists", "bag-tags", "bobbin-labels", "buy-list"}) {
            assertTrue(text(sheet).contains("N'a-7"), sheet + ": " + text(sheet));
            assertTrue(text(sheet).contains("Gull’s wing"), sheet + ": " + text(sheet));
        }
        assertTrue(text("bobbin-labels").contains("B's"), text("bobbin-labels"));
        String code = TagPrintTests.decoded(pdf("bag-tags"), 1).get(0);
        assertTrue(code.contains(TYPED) && code.contains("Nell's \"Ferry\"") && code.contains("N'a-7"), code);
        assertTrue(Files.readString(folder.resolve("out/buy-list.csv")).contains("N'a-7"));
        try (PDDocument tags = Loader.loadPDF(pdf("bag-tags"))) {
            assertEquals(TYPED, tags.getDocumentCatalog().getDocumentOutline().getFirstChild().getTitle());
        }
    }

    /** Two styles on all sheets, as the look of the sheets asks: what is cut is solid, what is folded dash-dot, and nothing else is. */
    @ParameterizedTest
    @CsvSource({"bobbin-labels, true, true", "bag-tags, true, true", "cut-sheets, false, true", "goal-grid, false, false"})
    void lines_to_cut_are_solid_and_folds_alone_are_dash_dot(String sheet, boolean folded, boolean cut) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "goals: {year: 2027, wall: A2}\n"
                + "pace: {stitches-per-hour: 100, hours-per-week: 5}\n", PIECE);
        Ran ran = Ran.kitleaf("print", basket, "--out", folder.resolve("out"), "--only", sheet, "--as-of", "2027-01-01", "--paper", "A4");
        assertEquals(0, ran.code(), ran.err());
        List<ReadBack.Drawn> lines = ReadBack.drawnByPage(pdf(sheet)).stream().flatMap(List::stream)
                .filter(ReadBack.Drawn::stroked).toList();
        assertEquals(folded, lines.stream().anyMatch(it -> it.dashMm().size() == 4), "dash-dot");
        List<ReadBack.Drawn> cuts = lines.stream().filter(it -> it.stroke() == 0x8a918d).toList();
        assertEquals(cut, !cuts.isEmpty());
        assertTrue(cuts.stream().allMatch(it -> it.dashMm().isEmpty()), cuts.toString());
    }

    /** What is read at the table is 10 pt or more on A4, the rest of what says something of bars and joins 8. */
    @ParameterizedTest
    @CsvSource({"cut-sheets, 10, Bars off", "cloth-plan, 10, Bars off", "kit-lists, 8, Lay a ruler", "cut-sheets, 8, join A:",
        "goal-grid, 8, join A:"})
    void what_bars_and_joins_say_is_large_enough_to_read(String sheet, double leastPt, String words) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "goals: {year: 2027, wall: A1}\npace: {stitches-per-hour: 100, hours-per-week: 5}\n",
                PIECE.replaceFirst("stitches: .*", "stitches: 420 x 96\nmargin: 9 in"));
        for (String title : List.of("two", "three")) {
            Files.writeString(basket.resolve("pieces/" + title + ".yaml"), PIECE.replaceFirst("piece: .*", "piece: " + title));
        }
        Ran ran = Ran.kitleaf("print", basket, "--out", folder.resolve("out"), "--only", sheet, "--as-of", "2027-01-01", "--paper", "A4");
        assertEquals(0, ran.code(), ran.err());
        int found = 0;
        for (List<ReadBack.Letter> all : ReadBack.lettersByPage(pdf(sheet))) {
            List<ReadBack.Letter> page = all.stream().filter(it -> it.text().length() == 1).toList();
            String text = page.stream().map(ReadBack.Letter::text).collect(Collectors.joining());
            for (int at = text.indexOf(words); at >= 0; at = text.indexOf(words, at + 1)) {
                assertTrue(page.get(at).sizePt() > leastPt - 0.001, page.get(at).toString());
                found++;
            }
        }
        assertTrue(found > 0, words + " is said");
    }

    private byte[] pdf(String sheet) throws IOException {
        return Files.readAllBytes(folder.resolve("out/" + sheet + ".pdf"));
    }

    /** All its words, in one line. */
    private String text(String sheet) throws IOException {
        byte[] pdf = pdf(sheet);
        StringBuilder text = new StringBuilder();
        for (int page = 1; page <= ReadBack.pages(pdf); page++) {
            text.append(ReadBack.line(pdf, page)).append(' ');
        }
        return text.toString();
    }
}
