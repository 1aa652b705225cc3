package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Drawn;
import kitleaf.ReadBack.Letter;
import kitleaf.TextBoxes;
import kitleaf.sheet.page.SheetKind;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Large print, printed by the whole program and measured on the page with PDFBox. */
class LargePrintTests {

    private static final Path HARBOUR = Path.of("examples/harbour");
    /** UKAAF G003 (2019): large print is 16 pt or more. A thousandth for the numbers in the PDF. */
    private static final double LARGE_PT = 16 - 0.001;
    /** 8 mm; crosses at tags' corners end right there, give or take the PDF's decimals. */
    private static final double CLEAR_MM = 8 - 0.001;
    private static final List<String> SHEETS = Stream.of(SheetKind.values()).map(SheetKind::id).toList();
    private static final String SCISSORS = "✂";

    @TempDir
    private Path folder;

    private byte[] large(String sheet, String paper) throws IOException {
        return print(HARBOUR, sheet, "--large", "--paper", paper);
    }

    private byte[] print(Path basket, String sheet, Object... more) throws IOException {
        List<Object> arguments = new ArrayList<>(List.of("print", basket, "--out", folder.resolve("out"), "--only", sheet));
        arguments.addAll(List.of(more));
        Ran ran = Ran.kitleaf(arguments.toArray());
        assertEquals("", ran.err(), "nothing is cut short");
        assertEquals(0, ran.code());
        return Files.readAllBytes(folder.resolve("out/" + sheet + ".pdf"));
    }

    /**
     * Nothing under 16 pt but the scissors at the edge of labels and tags, which are a sign and stand in the printer's margin;
     * nothing nearer than 8 mm to the edge, no text on another.
     */
    @ParameterizedTest
    @ValueSource(strings = {"A4", "letter", "A5", "A4 landscape"})
    void every_word_is_large_and_keeps_clear_of_the_edge_and_of_others(String paper) throws IOException {
        for (String sheet : SHEETS) {
            byte[] pdf = large(sheet, paper);
            List<List<Letter>> letters = ReadBack.lettersByPage(pdf);
            List<List<Drawn>> drawn = ReadBack.drawnByPage(pdf);
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertTrue(document.getNumberOfPages() > 0);
                for (int page = 0; page < document.getNumberOfPages(); page++) {
                    String where = sheet + " on " + paper + ", page " + (page + 1);
                    double widthMm = document.getPage(page).getMediaBox().getWidth() * 25.4 / 72;
                    double heightMm = document.getPage(page).getMediaBox().getHeight() * 25.4 / 72;
                    List<Letter> words = letters.get(page).stream().filter(it -> !it.text().isBlank() && !it.text().equals(SCISSORS)).toList();
                    assertEquals(List.of(), TextBoxes.smaller(words, LARGE_PT), where);
                    assertEquals(List.of(), TextBoxes.nearEdge(words, widthMm, heightMm, 8), where);
                    assertEquals(List.of(), TextBoxes.overlaps(words), where);
                    for (Drawn mark : drawn.get(page)) {
                        assertTrue(mark.least(true) >= CLEAR_MM && mark.most(true) <= widthMm - CLEAR_MM && mark.least(false) >= CLEAR_MM
                                && mark.most(false) <= heightMm - CLEAR_MM, where + ": " + mark);
                    }
                }
            }
        }
    }

    @Test
    void ordinary_sheets_have_no_text_on_another_either() throws IOException {
        for (String sheet : SHEETS) {
            for (List<Letter> page : ReadBack.lettersByPage(print(HARBOUR, sheet))) {
                assertEquals(List.of(), TextBoxes.overlaps(page), sheet);
            }
        }
    }

    /** Two texts laid on each other by hand are told of, and two beside each other are not. */
    @Test
    void the_check_for_overlaps_tells_of_one() throws IOException {
        Path templates = Files.createDirectories(folder.resolve("templates"));
        for (int y : new int[] {22, 30}) {
            Files.writeString(templates.resolve("kit-lists.ftlx"), "<document title=\"t\" lang=\"en\"><page width=\"100\" height=\"100\">"
                    + "<text x=\"20\" y=\"20\" font-size=\"16pt\">Tide</text><text x=\"20\" y=\"" + y + "\" font-size=\"16pt\">Rope</text></page></document>");
            List<Letter> letters = ReadBack.letters(print(HARBOUR, "kit-lists", "--templates", templates), 1);
            assertEquals(y == 30, TextBoxes.overlaps(letters).isEmpty());
            assertEquals(List.of(), TextBoxes.nearEdge(letters, 100, 100, 8));
            assertFalse(TextBoxes.nearEdge(letters, 100, 100, 19).isEmpty());
        }
    }

    @Test
    void the_basket_asks_for_it_in_its_own_words() throws IOException {
        Path basket = folder.resolve("b");
        String piece = "piece: Groyne\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\n";
        byte[] asked = print(Ran.basket(basket, "large-print: yes\n", piece), "cut-sheets");
        assertEquals(List.of(), TextBoxes.smaller(ReadBack.letters(asked, 1), LARGE_PT));
        byte[] option = print(Ran.basket(basket, "", piece), "cut-sheets", "--large");
        assertArrayEquals(asked, option);
        byte[] usual = print(basket, "cut-sheets");
        assertArrayEquals(usual, print(Ran.basket(basket, "large-print: no\n", piece), "cut-sheets"));
        Ran ran = Ran.kitleaf("print", Ran.basket(basket, "large-print: a bit\n", piece), "--out", folder.resolve("out"));
        assertEquals(1, ran.code());
        assertTrue(ran.err().contains("basket.yaml:1:14: \"a bit\" is neither yes nor no; write yes or no"), ran.err());
    }

    /**
     * By hand: A5 has 124 mm between its margins, 11 of them for cut numbers and 3 for the selvedge; 60 in of cloth are 1524 mm,
     * so the drawing is at 1 : 13.9 at most, 1 : 15 in round figures. A piece of 8 stitches over two of 28, 4/7 in, with 2 in of
     * margins, up to 2 3/4 in for a round size, is 4.7 mm wide there: two figures of 16 pt want 6 mm across, and turned they
     * want 4.2 mm with half a millimetre at both sides.
     */
    @Test
    void a_crowded_cloth_plan_leaves_out_numbers_and_says_so() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "cloth-on-hand: [{name: Sea-mist, kind: linen, count: 28, size: 60 in x 20 in, selvedge: left}]\n",
                "piece: Begun\nstitches: 20 x 20\ncloth: {name: Sea-mist, kind: linen, count: 28, over: 2}\nprogress: 4\n");
        for (int i = 0; i < 40; i++) {
            Files.writeString(basket.resolve("pieces/buoy-" + i + ".yaml"), "piece: Buoy " + i + "\nstitches: 8 x 60\ncloth: {name: Sea-mist, kind: linen, count: 28, over: 2}\nmargin: 1 in\n");
        }
        Ran ran = Ran.kitleaf("print", basket, "--out", folder.resolve("out"), "--only", "cloth-plan", "--large", "--paper", "A5");
        assertEquals(0, ran.code(), ran.err());
        byte[] pdf = Files.readAllBytes(folder.resolve("out/cloth-plan.pdf"));
        StringBuilder all = new StringBuilder();
        for (int page = 1; page <= ReadBack.pages(pdf); page++) {
            List<Letter> words = ReadBack.letters(pdf, page).stream().filter(it -> !it.text().isBlank()).toList();
            assertEquals(List.of(), TextBoxes.smaller(words, LARGE_PT), "page " + page);
            assertEquals(List.of(), TextBoxes.overlaps(words), "page " + page);
            assertEquals(List.of(), TextBoxes.nearEdge(words, 148, 210, 8), "page " + page);
            all.append(ReadBack.text(pdf, page).replaceAll("\\s+", " ")).append(' ');
        }
        assertTrue(all.toString().contains("Pieces whose numbers have no room in the drawing are found by the cuts they come off at."));
        for (int i = 0; i < 40; i++) {
            assertTrue(all.toString().contains("comes off: Buoy " + i + " "), "Buoy " + i);
        }
    }

    /** The scale of the look: 22 title, 13 section, 9.5 text, 8 table, 6.5 fine print, and the sizes between them; fractions apart. */
    @Test
    void ordinary_sheets_keep_their_sizes() throws IOException {
        byte[] pdf = print(HARBOUR, "cut-sheets", "--piece", "breakwater");
        TreeSet<Double> sizes = ReadBack.letters(pdf, 1).stream().filter(it -> !it.text().matches("[0-9⁄\\s]"))
                .map(it -> Math.rint(it.sizePt() * 100) / 100).collect(Collectors.toCollection(TreeSet::new));
        assertTrue(sizes.containsAll(List.of(6.5, 8.0, 9.5, 13.0, 22.0)), sizes.toString());
        assertTrue(List.of(6.5, 7.0, 7.5, 8.0, 9.5, 10.0, 13.0, 16.0, 19.0, 22.0, 25.0).containsAll(sizes), sizes.toString());
    }

    @ParameterizedTest
    @CsvSource({"A5 landscape,", "letter landscape, fits", "210 mm x 160 mm,", "148 mm x 210 mm, fits"})
    void paper_without_room_for_large_print_is_refused_with_what_to_do(String paper, String fits) throws IOException {
        Ran ran = Ran.kitleaf("print", HARBOUR, "--out", folder.resolve("out"), "--large", "--paper", paper);
        assertEquals(fits == null ? 2 : 0, ran.code(), ran.err());
        if (fits == null) {
            assertEquals("large print has no room on " + paper + "; turn it upright, choose larger paper such as A4, "
                    + "or print without large print\n", ran.err());
            assertEquals(List.of(), Ran.files(folder.resolve("out")));
        }
    }

    /** By hand: ten threads of 36 to the inch are 10 x 25.4 / 36 = 7.0556 mm; bars are 100 mm. Design.md allows 0.02 mm. */
    @ParameterizedTest
    @ValueSource(strings = {"A4", "A5"})
    void the_guide_stays_at_true_size(String paper) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", "piece: Groyne\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\nmargin: 3 in\n");
        byte[] pdf = print(basket, "cut-sheets", "--large", "--paper", paper);
        int guide = 1;
        while (!ReadBack.text(pdf, guide).startsWith("Corner guide")) {
            guide++;
        }
        List<Drawn> lines = ReadBack.drawn(pdf, guide).stream().filter(it -> it.operations().equals("ML")).toList();
        List<Drawn> ticks = lines.stream().filter(it -> it.stroke() == 0x9a2f2d && Math.abs(it.x(0) - it.x(1)) < 1e-3
                && it.most(false) - it.least(false) < 5).toList();
        double leftMm = lines.stream().filter(it -> Math.abs(it.lineWidthMm() - 0.6) < 0.01).mapToDouble(it -> it.least(true)).min().orElseThrow();
        assertTrue(ticks.size() > 8, ticks.size() + " ticks");
        for (int i = 0; i < ticks.size(); i++) {
            assertEquals(leftMm + (i + 1) * 10 * 25.4 / 36, ticks.get(i).x(0), 0.02);
        }
        assertEquals(2, lines.stream().filter(it -> Math.abs(Math.max(it.most(true) - it.least(true), it.most(false) - it.least(false)) - 100) < 0.02).count());
    }

    /** Outlines of all pages share one scale: by hand from the pieces' finished inches, the height of each over its stitches and count. */
    @Test
    void goal_outlines_share_one_scale_over_all_pages() throws IOException {
        byte[] pdf = large("goal-grid", "A5");
        List<Double> scales = new ArrayList<>();
        for (int page = 1; page <= ReadBack.pages(pdf); page++) {
            String text = ReadBack.text(pdf, page);
            for (Drawn outline : ReadBack.drawn(pdf, page).stream().filter(it -> it.fill() == 0xeef0ec && it.filled() && it.stroked()).toList()) {
                // Breakwater: 140 x 210 stitches at 18 an inch; Bosun's knot: 50 x 48 at 25; North cone: 40 x 40 at 16.
                if (text.contains("Breakwater")) {
                    scales.add((outline.most(true) - outline.least(true)) / (140 / 18.0));
                } else if (text.contains("Bosun")) {
                    scales.add((outline.most(true) - outline.least(true)) / (50 / 25.0));
                }
            }
        }
        assertEquals(2, scales.size());
        // Rectangles are drawn with two decimals of a point: 0.004 mm in 12.
        assertEquals(scales.get(0), scales.get(1), scales.get(0) * 0.002);
    }
}
