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
import java.util.stream.Collectors;
import kitleaf.ReadBack.Drawn;
import kitleaf.ReadBack.Letter;
import kitleaf.ReadBack;
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
        List<Drawn> inches = lines(all, 0.2, INK, true).stream().filter(it -> Math.abs(Math.max(it.y(0), it.y(1)) - top) < 0.01).toList();
        List<Drawn> millimetres = lines(all, 0.2, INK, false).stream().filter(it -> Math.abs(Math.max(it.x(0), it.x(1)) - left) < 0.01).toList();
        assertTrue(inches.size() > 45, inches.size() + " marks");
        assertTrue(millimetres.size() > 180, millimetres.size() + " marks");
        for (int i = 0; i < inches.size(); i++) {
            assertEquals(i * IN / 8, inches.get(i).x(0) - left, TRUE_MM);
        }
        for (int i = 0; i < millimetres.size(); i++) {
            assertEquals(i, millimetres.get(i).y(0) - top, TRUE_MM);
        }
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
     * stitch is 12 in from both edges; no page but A3 upwards can show that. The pages are laid join on join and measured.
     */
    @ParameterizedTest
    @CsvSource({"A4, 100, 100", "letter, 100, 100", "A4, 99.3, 99.8", "A5, 100, 100"})
    void tiled_pages_laid_join_on_join_are_as_true_as_one(String paper, double across, double down) throws IOException {
        byte[] pdf = print("printer: {measured-across: " + across + " mm, measured-down: " + down + " mm}", """
                piece: Wide margin
                stitches: 140 x 140
                cloth: {kind: linen, count: 28, over: 2}
                margin: 12 in
                """, paper);
        List<Integer> guides = guidePages(pdf);
        assertTrue(guides.size() >= 4, guides.size() + " pages");
        int columns = columns(pdf, guides);
        double xMm = 0;
        double yMm = 0;
        for (int column = 0; column < columns; column++) {
            List<Drawn> page = ReadBack.drawn(pdf, guides.get(column));
            double from = column == 0 ? leftEdge(page) : joins(page, true).get(0);
            if (column < columns - 1) {
                xMm += joins(page, true).get(joins(page, true).size() - 1) - from;
            } else {
                List<Drawn> last = ReadBack.drawn(pdf, guides.get(guides.size() - 1));
                xMm += firstStitch(last)[0] - from;
            }
        }
        int rows = guides.size() / columns;
        for (int row = 0; row < rows; row++) {
            List<Drawn> page = ReadBack.drawn(pdf, guides.get(row * columns));
            double from = row == 0 ? topEdge(page) : joins(page, false).get(0);
            if (row < rows - 1) {
                yMm += joins(page, false).get(joins(page, false).size() - 1) - from;
            } else {
                yMm += firstStitch(ReadBack.drawn(pdf, guides.get(guides.size() - 1)))[1] - from;
            }
        }
        // Each join is read from two pages, so its error counts once a page.
        assertEquals(12 * IN * 100 / across, xMm, TRUE_MM);
        assertEquals(12 * IN * 100 / down, yMm, TRUE_MM);
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
            int scan = (int) Math.round((topEdge(all) - 0.9) * dotsPerMm);
            List<Double> dark = darkRuns(image, scan, (int) left - 20, (int) (left + 5.5 * 600));
            assertTrue(dark.size() > 40, dark.size() + " marks");
            for (int i = 0; i < dark.size(); i++) {
                assertEquals(left + i * 75, dark.get(i), 1, "mark " + i);
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

    /** The places of join lines: dashed, in ink. */
    private static List<Double> joins(List<Drawn> all, boolean upright) {
        return all.stream().filter(it -> line(it, 0.25, INK) && !it.dashMm().isEmpty() && upright(it) == upright)
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

    /** On A5 the words of the first stitch stand beside the design and the measure below them: a line of white lies between. */
    @Test
    void a_measure_keeps_clear_of_the_words_above_it() throws IOException {
        byte[] pdf = print("", "piece: Groyne\nstitches: 80 x 80\ncloth: {kind: linen, count: 28, over: 2}\nmargin: 3 in\n", "A5");
        List<Letter> letters = ReadBack.letters(pdf, ReadBack.pages(pdf));
        double words = letters.get(letters.stream().map(Letter::text).collect(Collectors.joining()).indexOf("be sure.")).y();
        double measure = letters.stream().filter(it -> it.turned() == 0 && it.font().contains("SemiBold") && it.y() > words && it.y() < words + 20)
                .mapToDouble(Letter::y).min().orElseThrow();
        // Capitals of 9 pt are 2.1 mm high; between them and the descenders above there are more than 3.5.
        assertTrue(measure - words > 6.5, words + ", " + measure);
    }
}
