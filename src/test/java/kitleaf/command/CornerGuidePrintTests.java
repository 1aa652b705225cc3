package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Drawn;
import kitleaf.TextBoxes;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Corner guides printed by the whole program and measured on the page with PDFBox. What a length should be is
 * worked by hand in each test; it must be met within 0.02 mm.
 */
class CornerGuidePrintTests {

    private static final double TRUE_MM = 0.02;
    private static final double IN = 25.4;
    private static final int INK = 0x20262b;
    private static final int ACCENT = 0x9a2f2d;

    private static final String PIECE = """
            piece: Groyne
            stitches: 140 x 210
            cloth: {kind: linen, count: 36, over: 2}
            margin: 3 in
            """;

    @TempDir
    private Path folder;

    private byte[] print(String settings, String piece, String paper) throws IOException {
        Path basket = Ran.basket(folder.resolve("basket"), settings, piece);
        Ran ran = Ran.kitleaf("print", basket, "--paper", paper, "--out", folder.resolve("out"));
        assertEquals("", ran.err());
        assertEquals(0, ran.code());
        return Files.readAllBytes(folder.resolve("out/cut-sheets.pdf"));
    }

    private static boolean line(Drawn drawn, double widthMm, int colour) {
        return drawn.stroked() && drawn.operations().equals("ML") && Math.abs(drawn.lineWidthMm() - widthMm) < 0.005
                && drawn.stroke() == colour;
    }

    private static boolean upright(Drawn drawn) {
        return Math.abs(drawn.x(0) - drawn.x(1)) < 0.005;
    }

    private static double lengthMm(Drawn line) {
        return Math.hypot(line.x(1) - line.x(0), line.y(1) - line.y(0));
    }

    private static List<Drawn> lines(List<Drawn> all, double widthMm, int colour, boolean upright) {
        return all.stream().filter(it -> line(it, widthMm, colour) && upright(it) == upright)
                .sorted(Comparator.comparingDouble(it -> upright ? it.x(0) : it.y(0))).toList();
    }

    /** The centre of the ring round the first stitch. */
    private static double[] firstStitch(List<Drawn> all) {
        Drawn ring = all.stream().filter(it -> it.stroked() && it.stroke() == ACCENT && it.operations().startsWith("MCcc")).findFirst().orElseThrow();
        return new double[] {(ring.least(true) + ring.most(true)) / 2, (ring.least(false) + ring.most(false)) / 2};
    }

    private static double leftEdge(List<Drawn> all) {
        return lines(all, 0.6, INK, true).get(0).x(0);
    }

    private static double topEdge(List<Drawn> all) {
        return lines(all, 0.6, INK, false).get(0).y(0);
    }

    /**
     * By hand: 140 stitches over 2 on 36 are 7 7/9 in and 210 are 11 2/3 in. With 3 in on each side that is 13 7/9 and
     * 17 2/3; up to the quarter 14 and 17 3/4. Half of what was added goes to each side: 3 1/9 and 3 1/24 in.
     */
    @ParameterizedTest
    @CsvSource({"A4, 100, 100", "letter, 100, 100", "A4, 99.3, 99.8", "letter, 99.3, 99.8", "A3 landscape, 101.2, 98.9"})
    void the_first_stitch_stands_where_the_arithmetic_puts_it(String paper, double across, double down) throws IOException {
        byte[] pdf = print("printer: {measured-across: " + across + " mm, measured-down: " + down + " mm}", PIECE, paper);
        List<Drawn> all = ReadBack.drawn(pdf, 2);
        double[] stitch = firstStitch(all);
        assertEquals((3 + 1.0 / 9) * IN * 100 / across, stitch[0] - leftEdge(all), TRUE_MM);
        assertEquals((3 + 1.0 / 24) * IN * 100 / down, stitch[1] - topEdge(all), TRUE_MM);
    }

    /** Ten threads of 36 to the inch are 10/36 in: the nth tick stands at n times that, not at a sum of rounded steps. */
    @ParameterizedTest
    @CsvSource({"A4, 100, 100", "letter, 99.3, 99.8"})
    void every_tenth_thread_has_its_tick(String paper, double across, double down) throws IOException {
        byte[] pdf = print("printer: {measured-across: " + across + " mm, measured-down: " + down + " mm}", PIECE, paper);
        List<Drawn> all = ReadBack.drawn(pdf, 2);
        List<Drawn> acrossTicks = lines(all, 0.25, ACCENT, true);
        List<Drawn> downTicks = lines(all, 0.25, ACCENT, false);
        assertTrue(acrossTicks.size() >= 20 && downTicks.size() >= 24, acrossTicks.size() + ", " + downTicks.size());
        for (int i = 0; i < acrossTicks.size(); i++) {
            assertEquals((i + 1) * 10 / 36.0 * IN * 100 / across, acrossTicks.get(i).x(0) - leftEdge(all), TRUE_MM);
        }
        for (int i = 0; i < downTicks.size(); i++) {
            assertEquals((i + 1) * 10 / 36.0 * IN * 100 / down, downTicks.get(i).y(0) - topEdge(all), TRUE_MM);
        }
    }

    @Test
    void eighths_of_an_inch_run_along_the_top_and_millimetres_along_the_left() throws IOException {
        List<Drawn> all = ReadBack.drawn(print("", PIECE, "A4"), 2);
        double top = topEdge(all);
        double left = leftEdge(all);
        // The rules lie inside: trimmed along the edge, the paper keeps them. Both begin past the corner, where the other one stands.
        List<Drawn> inches = rule(lines(all, 0.2, INK, true), false, top);
        List<Drawn> millimetres = rule(lines(all, 0.2, INK, false), true, left);
        assertTrue(inches.size() > 40, inches.size() + " marks");
        assertTrue(millimetres.size() > 180, millimetres.size() + " marks");
        long firstInch = Math.round((inches.get(0).x(0) - left) / (IN / 8));
        for (int i = 0; i < inches.size(); i++) {
            assertEquals((firstInch + i) * IN / 8, inches.get(i).x(0) - left, TRUE_MM);
        }
        long firstMillimetre = Math.round(millimetres.get(0).y(0) - top);
        for (int i = 0; i < millimetres.size(); i++) {
            assertEquals(firstMillimetre + i, millimetres.get(i).y(0) - top, TRUE_MM);
        }
        assertTrue(firstInch <= 8 && firstMillimetre <= 20, firstInch + ", " + firstMillimetre);
    }

    /** The marks of a rule, which all begin at one line inside the cut edge. */
    private static List<Drawn> rule(List<Drawn> lines, boolean across, double edgeMm) {
        List<Drawn> marks = lines.stream().filter(it -> lengthMm(it) < 4.5 && it.least(across) > edgeMm).toList();
        double lineMm = marks.stream().mapToDouble(it -> it.least(across)).min().orElseThrow();
        assertTrue(marks.stream().allMatch(it -> Math.abs(it.least(across) - lineMm) < TRUE_MM));
        return marks;
    }

    /** The bars she measures: 100 mm both ways, and stretched by what a printer takes away. */
    @ParameterizedTest
    @CsvSource({"A4, 100, 100", "A5, 100, 100", "letter, 99.3, 99.8"})
    void the_bars_are_a_hundred_millimetres(String paper, double across, double down) throws IOException {
        byte[] pdf = print("printer: {measured-across: " + across + " mm, measured-down: " + down + " mm}", PIECE, paper);
        int pages = ReadBack.pages(pdf);
        List<Drawn> all = ReadBack.drawn(pdf, pages);
        assertEquals(100 * 100 / across, longest(lines(all, 0.35, INK, false), 101.5), TRUE_MM);
        assertEquals(100 * 100 / down, longest(lines(all, 0.35, INK, true), 101.5), TRUE_MM);
    }

    @ParameterizedTest
    @CsvSource({"A4, 100, 100", "A5 landscape, 100, 100", "legal, 99.3, 99.8"})
    void every_page_has_check_bars_of_50_mm_and_2_in(String paper, double across, double down) throws IOException {
        byte[] pdf = print("printer: {measured-across: " + across + " mm, measured-down: " + down + " mm}", PIECE, paper);
        for (int page = 1; page <= ReadBack.pages(pdf); page++) {
            List<Double> bars = lines(ReadBack.drawn(pdf, page), 0.3, INK, false).stream().map(CornerGuidePrintTests::lengthMm).sorted().toList();
            assertEquals(2, bars.size(), "page " + page);
            assertEquals(50 * 100 / across, bars.get(0), TRUE_MM);
            assertEquals(2 * IN * 100 / across, bars.get(1), TRUE_MM);
        }
    }

    /**
     * By hand: 12 in of margin all round an exact 10 in design (140 over 2 on 28) cut at 34 in exactly, so the first
     * stitch is 12 in from both edges. Such a guide is an L: the strips are laid join on join and measured to where each says the first
     * stitch is, and the patch is laid by the two figures on it.
     */
    @ParameterizedTest
    @CsvSource({"A4, 100, 100", "letter, 100, 100", "A4, 99.3, 99.8", "A5, 100, 100"})
    void strips_laid_join_on_join_are_as_true_as_one(String paper, double across, double down) throws IOException {
        byte[] pdf = print("printer: {measured-across: " + across + " mm, measured-down: " + down + " mm}", """
                piece: Wide margin
                stitches: 140 x 140
                cloth: {kind: linen, count: 28, over: 2}
                margin: 12 in
                """, paper);
        List<Integer> guides = guidePages(pdf);
        int columns = columns(pdf, guides);
        assertTrue(columns >= 2 && guides.size() >= columns + 2, columns + " columns on " + guides.size() + " pages");
        List<Integer> topStrip = guides.subList(0, columns);
        List<Integer> leftStrip = new ArrayList<>(List.of(guides.get(0)));
        leftStrip.addAll(guides.subList(columns, guides.size() - 1));
        // Each join is read from two pages, so its error counts once a page.
        assertEquals(12 * IN * 100 / across, alongMm(pdf, topStrip, true), TRUE_MM);
        assertEquals(12 * IN * 100 / down, alongMm(pdf, leftStrip, false), TRUE_MM);
        String patch = ReadBack.line(pdf, guides.get(guides.size() - 1)).replace('\u00a0', ' ');
        assertTrue(patch.contains("12 in (30.5 cm) from the left edge 12 in (30.5 cm) from the top edge Lay this patch by both."), patch);
    }

    /** From the cut edge to the line on the last page of a strip that says where the first stitch is. */
    private static double alongMm(byte[] pdf, List<Integer> strip, boolean upright) throws IOException {
        double mm = 0;
        for (int page : strip) {
            List<Drawn> all = ReadBack.drawn(pdf, page);
            List<Double> joins = joins(all, upright);
            double from = page != strip.get(0) ? joins.get(0) : upright ? leftEdge(all) : topEdge(all);
            boolean last = page == strip.get(strip.size() - 1);
            Drawn sight = !last ? null : lines(all, 0.35, ACCENT, upright).get(0);
            mm += (!last ? joins.get(joins.size() - 1) : upright ? sight.x(0) : sight.y(0)) - from;
        }
        return mm;
    }

    /**
     * An altar cloth with 16 in around took twenty pages of A5, eleven of them blank. By hand: its first stitch is some 409 mm from both
     * edges; strips to there and a patch are fewer than ten pages, and on each there are the ticks of an edge or the first stitch.
     */
    @Test
    void no_page_of_a_guide_is_blank() throws IOException {
        byte[] pdf = print("", "piece: Altar cloth\nstitches: 600 x 400\ncloth: {kind: linen, count: 28, over: 2}\nmargin: 16 in\n", "A5");
        List<Integer> guides = guidePages(pdf);
        assertTrue(guides.size() < 10, guides.size() + " pages");
        for (int page : guides) {
            long marks = ReadBack.drawn(pdf, page).stream().filter(it -> it.stroked() && it.stroke() == ACCENT).count();
            assertTrue(marks > 0, "page " + page);
        }
    }

    /** Both pages of a join carry its letter, and its two ringed crosses at the same places along it. */
    @Test
    void both_pages_of_a_join_carry_the_same_marks() throws IOException {
        byte[] pdf = print("", """
                piece: Wide ends
                stitches: 140 x 140
                cloth: {kind: linen, count: 28, over: 2}
                margin: {top: 3 in, right: 9 in, bottom: 3 in, left: 9 in}
                """, "A4");
        List<Integer> guides = guidePages(pdf);
        assertEquals(2, guides.size());
        List<Double> first = ringHeights(ReadBack.drawn(pdf, guides.get(0)));
        List<Double> second = ringHeights(ReadBack.drawn(pdf, guides.get(1)));
        assertEquals(2, first.size());
        for (int i = 0; i < 2; i++) {
            assertEquals(first.get(i), second.get(i), TRUE_MM);
        }
        assertTrue(ReadBack.drawnText(pdf, guides.get(0)).contains("joinA:slidethisstripunder"));
        assertTrue(ReadBack.drawnText(pdf, guides.get(1)).contains("joinA:cuthere"));
    }

    /**
     * In the picture a viewer makes at 600 dots to the inch, marks stand within a dot of where they belong: 75 dots
     * from one eighth of an inch to the next.
     */
    @Test
    void rules_and_ticks_stand_within_a_dot_at_600_dpi() throws IOException {
        byte[] pdf = print("", PIECE, "A4");
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(1, 600, ImageType.GRAY);
            double dotsPerMm = 600 / IN;
            List<Drawn> all = ReadBack.drawn(pdf, 2);
            double left = leftEdge(all) * dotsPerMm;
            double rule = rule(lines(all, 0.2, INK, true), false, topEdge(all)).get(0).least(false);
            int scan = (int) Math.round((rule + 0.9) * dotsPerMm);
            List<Double> dark = darkRuns(image, scan, (int) (left + 25 * dotsPerMm), (int) (left + 5.5 * 600));
            assertTrue(dark.size() > 30, dark.size() + " marks");
            long first = Math.round((dark.get(0) - left) / 75);
            for (int i = 0; i < dark.size(); i++) {
                assertEquals(left + (first + i) * 75, dark.get(i), 1, "mark " + i);
            }
            int inside = (int) Math.round((topEdge(all) + 2) * dotsPerMm);
            List<Double> ticks = darkRuns(image, inside, (int) left + 60, (int) (left + 2.2 * 600));
            assertTrue(ticks.size() >= 7, ticks.size() + " ticks");
            for (int i = 0; i < ticks.size(); i++) {
                assertEquals(left + (i + 1) * 10 / 36.0 * 600, ticks.get(i), 1, "tick " + i);
            }
        }
    }

    /** Cloth that will shrink is drawn as it lies on the table: 36 to the inch at the hoop is 36 x 0.95 before. */
    @Test
    void ticks_are_drawn_for_the_cloth_before_it_shrinks() throws IOException {
        byte[] pdf = print("", PIECE.replace("over: 2", "over: 2, shrink: {warp: 0%, weft: 5%}"), "A4");
        List<Drawn> all = ReadBack.drawn(pdf, 2);
        List<Drawn> ticks = lines(all, 0.25, ACCENT, true);
        assertEquals(100 / (36 * 0.95) * IN, ticks.get(9).x(0) - leftEdge(all), TRUE_MM);
        // Warp threads keep their length here, so weft threads keep their distance.
        assertEquals(100 / 36.0 * IN, lines(all, 0.25, ACCENT, false).get(9).y(0) - topEdge(all), TRUE_MM);
    }

    private static List<Double> darkRuns(BufferedImage image, int y, int fromX, int toX) {
        List<Double> centres = new ArrayList<>();
        int start = -1;
        for (int x = fromX; x <= toX; x++) {
            boolean dark = (image.getRGB(x, y) & 0xff) < 200;
            if (dark && start < 0) {
                start = x;
            } else if (!dark && start >= 0) {
                centres.add((start + x) / 2.0);
                start = -1;
            }
        }
        return centres;
    }

    private static List<Double> ringHeights(List<Drawn> all) {
        return all.stream().filter(it -> it.stroked() && it.stroke() == INK && it.operations().startsWith("MCcc"))
                .map(it -> (it.least(false) + it.most(false)) / 2).sorted().toList();
    }

    /** The places of join lines, in ink: solid where one cuts, dashed where the next page lies on it. */
    private static List<Double> joins(List<Drawn> all, boolean upright) {
        return all.stream().filter(it -> line(it, 0.25, INK) && upright(it) == upright)
                .map(it -> upright ? it.x(0) : it.y(0)).sorted().toList();
    }

    private static double longest(List<Drawn> lines, double mostMm) {
        return lines.stream().mapToDouble(CornerGuidePrintTests::lengthMm).filter(mm -> mm <= mostMm).max().orElseThrow();
    }

    private static List<Integer> guidePages(byte[] pdf) throws IOException {
        List<Integer> guides = new ArrayList<>();
        for (int page = 1; page <= ReadBack.pages(pdf); page++) {
            if (ReadBack.text(pdf, page).contains("CORNER GUIDE")) {
                guides.add(page);
            }
        }
        return guides;
    }

    private static int columns(byte[] pdf, List<Integer> guides) throws IOException {
        int columns = 0;
        while (columns < guides.size() && ReadBack.text(pdf, guides.get(columns)).contains("row 1,")) {
            columns++;
        }
        return columns;
    }

    /**
     * Small paper, paper that lies, a hand's breadth of margin and hardly any, a design with no room for words: both figures stand on the
     * page of the first stitch, nothing is cut short, and no line runs through a word. By hand: 14 stitches to the inch; 80 are 5 5/7 in,
     * with 6 in cut at 11 3/4, so the edges are 3.018 in, 7.7 cm; 12 are 6/7 in, cut at 7, 3.071 in; 300 are 21 3/7, cut at 27 1/2, 3.036;
     * 412 are 29 3/7 in, cut at 35 1/2, 3.036; 14 are 1 in, cut at 7, 3. With half an inch 80 are cut at 6 3/4: 0.518 in.
     */
    @ParameterizedTest
    @CsvSource({"80 x 80, 3 in, 3 in, 3 in", "12 x 300, 3 in, 3 1⁄16 in, 3 1⁄16 in",
        "412 x 14, 3 in, 3 1⁄16 in, 3 in", "80 x 80, 0.5 in, 1⁄2 in, 1⁄2 in"})
    void both_figures_of_the_first_stitch_stand_on_every_paper(String stitches, String margin, String left, String top) throws IOException {
        for (String paper : List.of("A4", "A5", "A5 landscape", "letter landscape")) {
            byte[] pdf = print("", "piece: Groyne\nstitches: " + stitches
                    + "\ncloth: {kind: linen, count: 28, over: 2}\nmargin: " + margin + "\n",
                    paper);
            int page = ReadBack.pages(pdf);
            String text = ReadBack.line(pdf, page).replace('\u00a0', ' ');
            assertTrue(text.contains("First stitch"), paper + ": " + text);
            assertTrue(text.matches(".*(→ " + left + "|" + left + "( \\([0-9.]+ cm\\))? from the left).*"), paper + ": " + text);
            assertTrue(text.matches(".*(↓ " + top + "|" + top + "( \\([0-9.]+ cm\\))? from the top).*"), paper + ": " + text);
            assertEquals(List.of(), TextBoxes.overlaps(ReadBack.letters(pdf, page)), paper);
            assertEquals(List.of(), TextBoxes.struck(ReadBack.letters(pdf, page), ReadBack.drawn(pdf, page)), paper);
        }
    }
}
