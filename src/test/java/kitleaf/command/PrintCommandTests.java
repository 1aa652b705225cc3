package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.ReadBack;
import kitleaf.TextBoxes;
import kitleaf.sheet.page.SheetKind;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrintCommandTests {

    private static final Path HARBOUR = Path.of("examples/harbour");

    /** 8 mm; crosses at tags' corners end right there, give or take the PDF's decimals. */
    private static final double CLEAR_MM = 8 - 0.001;
    private static final String SCISSORS = "✂";

    private static final String PIECE = """
            piece: Groyne
            designer: Nell Ferry
            stitches: 140 x 210
            cloth: {name: Spray, kind: linen, count: 36, over: 2}
            margin: 3 in
            """;

    @TempDir
    private Path folder;

    private Path out() {
        return folder.resolve("out");
    }

    private byte[] pdf() throws IOException {
        return Files.readAllBytes(out().resolve("cut-sheets.pdf"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"A5", "A4", "A3", "letter", "legal", "tabloid", "A2", "A1 landscape", "A4 landscape", "A5 landscape", "148 mm x 210 mm", "11 in x 9 in"})
    void the_example_basket_prints_on_any_paper_without_a_warning(String paper) throws IOException {
        Ran ran = Ran.kitleaf("print", HARBOUR, "--out", out(), "--paper", paper, "--all", "--only", "cut-sheets");
        assertEquals("", ran.err());
        assertEquals(0, ran.code());
        try (PDDocument document = Loader.loadPDF(pdf())) {
            assertTrue(document.getNumberOfPages() >= 24);
        }
    }

    /** Nothing within 8 mm of the paper's edge, no line under 0.2 mm: the contract of every sheet, but for the scissors at a cut. */
    @ParameterizedTest
    @ValueSource(strings = {"A4", "letter", "A5", "A4 landscape", "A5 landscape", "A3"})
    void every_mark_keeps_clear_of_the_edge_and_is_large_enough(String paper) throws IOException {
        String all = Stream.of(SheetKind.values()).map(SheetKind::id).collect(Collectors.joining(","));
        assertEquals("", Ran.kitleaf("print", HARBOUR, "--out", out(), "--paper", paper, "--only", all).err());
        for (SheetKind kind : SheetKind.values()) {
            byte[] pdf = Files.readAllBytes(out().resolve(kind.id() + ".pdf"));
            List<List<ReadBack.Drawn>> drawnByPage = ReadBack.drawnByPage(pdf);
            List<List<ReadBack.Letter>> lettersByPage = ReadBack.lettersByPage(pdf);
            try (PDDocument document = Loader.loadPDF(pdf)) {
                for (int page = 0; page < document.getNumberOfPages(); page++) {
                    double widthMm = document.getPage(page).getMediaBox().getWidth() * 25.4 / 72;
                    double heightMm = document.getPage(page).getMediaBox().getHeight() * 25.4 / 72;
                    String where = kind.id() + " on " + paper + ", page " + (page + 1);
                    for (ReadBack.Drawn drawn : drawnByPage.get(page)) {
                        assertTrue(drawn.least(true) >= CLEAR_MM && drawn.most(true) <= widthMm - CLEAR_MM
                                && drawn.least(false) >= CLEAR_MM && drawn.most(false) <= heightMm - CLEAR_MM, where + ": " + drawn);
                        assertTrue(!drawn.stroked() || drawn.lineWidthMm() >= 0.2 - 0.002, where + ": " + drawn);
                    }
                    List<ReadBack.Letter> words = lettersByPage.get(page).stream().filter(letter -> !letter.text().equals(SCISSORS)).toList();
                    assertEquals(List.of(), TextBoxes.nearEdge(words, widthMm, heightMm, 8), where);
                }
            }
        }
    }

    @Test
    void a_page_says_what_her_hands_need() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "title: Net loft", PIECE);
        assertEquals(0, Ran.kitleaf("print", basket, "--out", out()).code());
        String page = ReadBack.text(pdf(), 1).replace('\u00a0', ' ').replaceAll("\\s+", " ");
        for (String words : List.of("CUT SHEET", "Groyne", "Nell Ferry · 140 × 210 stitches · Spray linen, 36 count over two",
                // By hand: 7 7/9 + 6 in is 13 7/9, up to 14; 11 2/3 + 6 is 17 2/3, up to 17 3/4.
                "14 × 17 3⁄4 in", "35.6 × 45.1 cm", "7 3⁄4 × 11 5⁄8 in", "19.8 × 29.6 cm",
                // 3 1/9 in of 36 threads are 112; 3 1/24 in are 109.5, the 110th being the nearest whole one.
                "112 threads", "110 threads",
                // Half of 280 threads and 112; half of 420 and 110.
                "252 threads", "320 threads",
                "between stitches 70 and 71 across", "between stitches 105 and 106 down",
                // Pythagoras: hypot(14, 17.75) = 22.607 in, to the sixteenth 22 5/8.
                "Both diagonals must read 22 5⁄8 in (57.4 cm)", "Blades slip", "page 1 of 2", "Net loft")) {
            assertTrue(page.contains(words), () -> "\"" + words + "\" is not in:\n" + page);
        }
        assertFalse(page.contains("Dye"), "no dye bath, no caution about one");
    }

    @Test
    void over_dyed_cloth_brings_its_caution() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE.replace("over: 2", "over: 2, over-dyed: yes, shrink: 3%"));
        Ran.kitleaf("print", basket, "--out", out());
        String page = ReadBack.text(pdf(), 1);
        assertTrue(page.contains("Dye baths: gloves"), page);
        assertTrue(page.contains("Cut the cloth, before it shrinks"), page);
    }

    /** The first page of a cut sheet with these words on its cloth, as one line. */
    private String dyed(String cloth, String piece) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "units: cm", PIECE.replace("over: 2", "over: 2, " + cloth) + piece);
        Ran.kitleaf("print", basket, "--out", out(), "--piece", "piece");
        return ReadBack.text(pdf(), 1).replaceAll("[\\s\u00a0]+", " ");
    }

    /**
     * By hand: 197.56 and 296.33 mm (above) lose 10 % in the bath and come out at 177.80 and 266.70. The cloth is cut as it is
     * stitched.
     */
    @Test
    void what_is_dyed_when_it_is_stitched_shrinks_with_its_stitches() throws IOException {
        String page = dyed("over-dyed: after, shrink: 10%", "");
        assertTrue(page.contains("35 × 45 cm"), page);
        assertTrue(page.contains("When all is stitched, dye the piece") && page.contains("17.8 × 26.7 cm"), page);
        assertTrue(page.contains("not colour-fast") && page.contains("Dye baths"), page);
        assertFalse(page.contains("Now dye"), page);
    }

    @Test
    void where_no_shrink_is_written_dyeing_afterwards_says_so() throws IOException {
        String page = dyed("over-dyed: after", "");
        assertTrue(page.contains("How much it shrinks is not known"), page);
    }

    @Test
    void a_begun_piece_is_not_told_to_dye_its_cloth_now() throws IOException {
        for (String said : new String[] {"yes", "before"}) {
            String page = dyed("over-dyed: " + said + ", shrink: 3%", "progress: {started: 2026-01-03}\n");
            assertFalse(page.contains("Now dye") || page.contains("Dye baths"), page);
        }
        assertTrue(dyed("over-dyed: before, shrink: 3%", "").contains("Now dye"));
    }

    @Test
    void centimetres_come_first_when_asked_for_and_cuts_step_by_half_centimetres() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "units: in", PIECE);
        Ran.kitleaf("print", basket, "--out", out(), "--units", "cm");
        // By hand: 197.56 + 152.4 = 349.96 mm, up to 35 cm; 296.33 + 152.4 = 448.73, up to 45 cm.
        assertTrue(ReadBack.text(pdf(), 1).replace('\u00a0', ' ').contains("35 × 45 cm"));
    }

    @Test
    void the_document_tells_viewers_what_they_need() throws IOException {
        Ran.kitleaf("print", HARBOUR, "--all", "--out", out());
        try (PDDocument document = Loader.loadPDF(pdf())) {
            var catalog = document.getDocumentCatalog();
            // ISO 32000-1 12.2: PrintScaling None asks print dialogs not to scale.
            assertEquals("None", catalog.getViewerPreferences().getPrintScaling());
            assertEquals("en", catalog.getLanguage());
            assertEquals("Saltmarsh evening table: cut sheets", document.getDocumentInformation().getTitle());
            int bookmarks = 0;
            for (PDOutlineItem item : catalog.getDocumentOutline().children()) {
                bookmarks++;
                assertFalse(item.getTitle().isBlank());
            }
            assertEquals(15, bookmarks, "one a piece");
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                    assertTrue(font.getName().matches("[A-Z]{6}\\+.*"), font.getName() + " is not a subset");
                }
            }
        }
    }

    /** ISO 32000-1: user space is 1/72 in. ISO 216 A4 is 210 x 297 mm; ANSI/ASME Y14.1 size A is 8 1/2 x 11 in. */
    @ParameterizedTest
    @CsvSource({"A4, 595.2756, 841.8898", "letter, 612, 792", "A3, 841.8898, 1190.5512", "A5 landscape, 595.2756, 419.5276"})
    void pages_are_as_large_as_their_standard_says(String paper, double widthPt, double heightPt) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        Ran.kitleaf("print", basket, "--out", out(), "--paper", paper);
        try (PDDocument document = Loader.loadPDF(pdf())) {
            assertEquals(widthPt, document.getPage(0).getMediaBox().getWidth(), 0.006);
            assertEquals(heightPt, document.getPage(0).getMediaBox().getHeight(), 0.006);
        }
    }

    @Test
    void the_same_basket_gives_the_same_bytes_in_any_locale_and_time_zone() throws IOException {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.ENGLISH);
            TimeZone.setDefault(TimeZone.getTimeZone("UTC"));
            Ran.kitleaf("print", HARBOUR, "--out", out());
            byte[] first = pdf();
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
            Ran.kitleaf("print", HARBOUR, "--out", out());
            assertArrayEquals(first, pdf());
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            Ran.kitleaf("print", HARBOUR, "--out", out());
            assertArrayEquals(first, pdf());
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void a_bad_basket_writes_nothing_and_leaves_old_sheets_alone() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        Ran.kitleaf("print", basket, "--out", out());
        byte[] before = pdf();
        Files.writeString(basket.resolve("pieces/piece.yaml"), PIECE.replace("3 in", "3"));
        Ran ran = Ran.kitleaf("print", basket, "--out", out());
        assertEquals(1, ran.code());
        assertEquals("", ran.out());
        assertTrue(ran.err().contains("piece.yaml:5:9: \"3\" is a bare number"), ran.err());
        assertTrue(ran.err().endsWith("1 problem; nothing was written\n"), ran.err());
        assertArrayEquals(before, pdf());
        assertEquals(List.of("bag-tags.pdf", "cut-sheets.pdf", "kit-lists.pdf"), Ran.files(out()));
    }

    @Test
    void a_bad_basket_does_not_even_make_the_folder() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", "piece: Groyne\n");
        assertEquals(1, Ran.kitleaf("print", basket, "--out", out()).code());
        assertFalse(Files.exists(out()));
    }

    @Test
    void a_file_in_the_way_is_a_sentence_and_exit_3() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        Files.writeString(out(), "not a folder");
        Ran ran = Ran.kitleaf("print", basket, "--out", out());
        assertEquals(3, ran.code());
        assertEquals("could not write to " + out() + ": there is a file in the way; choose another folder with --out\n", ran.err());
    }

    @Test
    void a_folder_in_the_sheets_place_is_a_sentence_and_leaves_no_drafts() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        Files.createDirectories(out().resolve("cut-sheets.pdf"));
        Ran ran = Ran.kitleaf("print", basket, "--out", out());
        assertEquals(3, ran.code());
        assertTrue(ran.err().contains("a folder stands where the sheet should go"), ran.err());
        assertEquals(List.of("cut-sheets.pdf"), Ran.files(out()));
    }

    @Test
    void her_own_template_takes_the_place_of_the_built_in_one() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        Path templates = Files.createDirectories(folder.resolve("templates"));
        Files.writeString(templates.resolve("cut-sheets.ftlx"), """
                <document title="mine" lang="en"><page width="210" height="297"><text x="20" y="20">My own ${cuts[0].piece.title}</text></page></document>
                """);
        assertEquals(0, Ran.kitleaf("print", basket, "--out", out(), "--templates", templates).code());
        assertEquals("My own Groyne", ReadBack.text(pdf(), 1));
    }

    @Test
    void a_fault_in_the_markup_names_the_template_and_line_that_wrote_it() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        Path templates = Files.createDirectories(folder.resolve("templates"));
        Files.writeString(templates.resolve("cut-sheets.ftlx"), """
                <document title="mine" lang="en">
                <#list 1..3 as i>
                <page width="210" height="297">
                <rect x="1" y="1" width="10" height="10"/>
                <rekt x="1" y="1"/>
                </page>
                </#list>
                </document>
                """);
        Ran ran = Ran.kitleaf("print", basket, "--out", out(), "--templates", templates);
        assertEquals(1, ran.code());
        assertTrue(ran.err().startsWith("cut-sheets.ftlx:5: \"rekt\" is not an element"), ran.err());
        assertEquals(List.of(), Ran.files(out()));
    }

    @Test
    void a_fault_in_a_template_names_its_place() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        Path templates = Files.createDirectories(folder.resolve("templates"));
        Files.writeString(templates.resolve("cut-sheets.ftlx"), "<document title=\"t\" lang=\"en\">\n${nobody.home}\n</document>\n");
        Ran missing = Ran.kitleaf("print", basket, "--out", out(), "--templates", templates);
        assertEquals(1, missing.code());
        assertTrue(missing.err().startsWith("cut-sheets.ftlx:2:"), missing.err());
        Files.writeString(templates.resolve("cut-sheets.ftlx"), "<document>\n<#if\n</document>\n");
        Ran broken = Ran.kitleaf("print", basket, "--out", out(), "--templates", templates);
        assertEquals(1, broken.code());
        assertTrue(broken.err().startsWith("cut-sheets.ftlx:"), broken.err());
        for (Ran ran : List.of(missing, broken)) {
            assertFalse(ran.err().contains("\tat ") || ran.err().contains("Exception"), ran.err());
        }
    }

    /** A template may describe pages and nothing else. */
    @ParameterizedTest
    @ValueSource(strings = {"${\"freemarker.template.utility.Execute\"?new()(\"id\")}", "${cuts[0].piece.class.name}",
        "${cuts[0]?api.class}", "<#include \"/etc/passwd\">", "<#include \"../../../../../../etc/passwd\">"})
    void a_template_cannot_reach_out(String reach) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        Path templates = Files.createDirectories(folder.resolve("templates"));
        Files.writeString(templates.resolve("cut-sheets.ftlx"), "<document title=\"t\" lang=\"en\">" + reach + "</document>");
        Ran ran = Ran.kitleaf("print", basket, "--out", out(), "--templates", templates);
        assertEquals(1, ran.code(), ran.err());
        assertTrue(ran.err().startsWith("cut-sheets.ftlx:1:"), ran.err());
    }

    @Test
    void one_piece_can_be_printed_alone_and_an_unknown_one_is_told_of() throws IOException {
        assertEquals(0, Ran.kitleaf("print", HARBOUR, "--out", out(), "--piece", "fog-bell").code());
        assertTrue(ReadBack.text(pdf(), 1).contains("Fog bell"));
        Ran ran = Ran.kitleaf("print", HARBOUR, "--out", out(), "--piece", "fogbell");
        assertEquals(2, ran.code());
        assertTrue(ran.err().startsWith("there is no piece \"fogbell\" in " + HARBOUR + "; its pieces are: almanac, "), ran.err());
    }

    @Test
    void a_bare_piece_file_prints_too() throws IOException {
        Path file = folder.resolve("groyne.yaml");
        Files.writeString(file, PIECE);
        assertEquals(0, Ran.kitleaf("print", file, "--out", out()).code());
        assertTrue(ReadBack.text(pdf(), 1).contains("Groyne"));
    }

    @Test
    void titles_in_greek_cyrillic_and_with_signs_are_printed_and_what_no_font_has_is_named() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE.replace("Groyne", "Φάρος и маяк ♥ 'n' <b> & ẞ"));
        Ran fine = Ran.kitleaf("print", basket, "--out", out());
        assertEquals("", fine.err());
        assertTrue(ReadBack.text(pdf(), 1).contains("Φάρος и маяк ♥ ’n’ <b> & ẞ"), ReadBack.text(pdf(), 1));
        Ran.basket(basket, "", PIECE.replace("Groyne", "Groyne \u6f6e"));
        Ran odd = Ran.kitleaf("print", basket, "--out", out());
        assertEquals(0, odd.code());
        assertTrue(odd.err().contains("U+6F6E"), odd.err());
    }

    @Test
    void a_very_long_title_is_fitted_or_told_of_but_never_runs_off_the_page() throws IOException {
        String title = "The very long and winding title ".repeat(6).strip();
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE.replace("Groyne", title));
        Ran ran = Ran.kitleaf("print", basket, "--out", out());
        assertEquals(0, ran.code());
        assertEquals("", ran.err());
        assertTrue(ReadBack.line(pdf(), 1).contains(title), ReadBack.line(pdf(), 1));
        for (ReadBack.Letter letter : ReadBack.letters(pdf(), 1)) {
            assertTrue(letter.x() + letter.width() <= 202, letter.toString());
        }
        Ran small = Ran.kitleaf("print", basket, "--paper", "A5", "--out", out());
        assertTrue(small.err().contains("cut short"), small.err());
        for (ReadBack.Letter letter : ReadBack.letters(pdf(), 1)) {
            assertTrue(letter.x() + letter.width() <= 140, letter.toString());
        }
    }

    @Test
    void what_it_prints_to_the_screen_is_the_file_and_its_pages() {
        Ran ran = Ran.kitleaf("print", HARBOUR, "--out", out(), "--piece", "fog-bell", "--only", "cut-sheets");
        assertEquals(out().resolve("cut-sheets.pdf") + "  2 pages\n", ran.out());
        assertEquals("", new String(ran.err().getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8));
    }

    /** Of three pieces one is begun and one is cut: two of the three need no cut sheet; each is two pages, its guide behind it. */
    @Test
    void cut_cloth_gets_no_cut_sheet_unless_it_is_asked_for() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", "piece: Groyne\nstitches: 40 x 40\ncloth: {kind: aida, count: 14}\n");
        Files.writeString(basket.resolve("pieces/jetty.yaml"),
                "piece: Jetty\nstitches: 40 x 40\ncloth: {kind: aida, count: 14}\nprogress: {started: 2026-02-01}\n");
        Files.writeString(basket.resolve("pieces/mole.yaml"), "piece: Mole\nstitches: 40 x 40\ncloth: {kind: aida, count: 14, cut: yes}\n");
        Path pdf = out().resolve("cut-sheets.pdf");
        String spared = "cut sheets: 2 pieces whose cloth is cut are left out; --all prints them\n";
        assertEquals(pdf + "  2 pages\n" + spared, Ran.kitleaf("print", basket, "--out", out(), "--only", "cut-sheets").out());
        assertEquals(pdf + "  6 pages\n", Ran.kitleaf("print", basket, "--out", out(), "--only", "cut-sheets", "--all").out());
        assertEquals(pdf + "  2 pages\n", Ran.kitleaf("print", basket, "--out", out(), "--only", "cut-sheets", "--piece", "mole").out());
    }
}
