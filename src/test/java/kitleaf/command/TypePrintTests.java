package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
