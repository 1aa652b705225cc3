package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Drawn;
import kitleaf.ReadBack.Letter;
import kitleaf.TextBoxes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The drawing on the cut sheet, read back with PDFBox. */
class CutSheetPrintTests {

    private static final int TINT = 0xeef0ec;
    private static final double MM_PER_POINT = 25.4 / 72;

    @TempDir
    private Path folder;

    /** A line at a letter's middle height, as long as it is wide. */
    private static Line2D middle(Letter letter) {
        double angle = Math.toRadians(-letter.turned());
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double up = letter.sizePt() * MM_PER_POINT * 0.3;
        double x = letter.x() + up * sin;
        double y = letter.y() - up * cos;
        return new Line2D.Double(x, y, x + letter.width() * cos, y + letter.width() * sin);
    }

    /**
     * What is cut is no smaller in one unit than in the other, wherever it stands. By hand: 115 x 168 stitches, 14 to the inch, are
     * 8 3/14 x 12 in, with 3 in all round up to 14 1/4 x 18 in; these are 361.95 x 457.2 mm, and 27 x 18 3/4 in of cloth to buy 685.8 x
     * 476.25 mm.
     * The design is measured: 12 in are 304.8 mm, 8 3/14 in 208.6 mm, to the nearest eighth 8 1/4 in.
     */
    @Test
    void what_is_cut_is_rounded_up_wherever_it_stands() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "cloth-cuts: [{name: fat quarter, size: 27 in x 18 3/4 in}]\n",
                "piece: Groyne\nstitches: 115 x 168\ncloth: {kind: linen, count: 28, over: 2}\nthreads: [{code: K12}]\n");
        for (String print : List.of("--units=in", "--units=cm", "--large")) {
            String sheets = "cut-sheets,kit-lists,bag-tags,buy-list,cloth-plan";
            Ran ran = Ran.kitleaf("print", basket, "--only", sheets, "--paper", "A3", print, print.equals("--units=cm") ? "--language=de"
                    : "--language=en", "--out", folder.resolve("out"));
            assertEquals("", ran.err());
            String cut = print.equals("--units=cm") ? "36,5 × 46 cm" : "36.2 × 45.8 cm";
            for (String sheet : sheets.split(",")) {
                String text = ReadBack.line(Files.readAllBytes(folder.resolve("out/" + sheet + ".pdf")), 0);
                String wanted = sheet.equals("buy-list") ? cut.contains(",") ? "68,6 × 47,7 cm" : "68.6 × 47.7 cm" : cut;
                assertTrue(text.contains(wanted), sheet + print + ": " + text);
                assertTrue(!sheet.equals("cut-sheets") || print.equals("--units=cm") || text.contains("20.9 × 30.5 cm"), text);
            }
        }
        assertTrue(Ran.kitleaf("reckon", basket).out().contains("36.2 x 45.8 cm"), Ran.kitleaf("reckon", basket).out());
    }

    /** By hand: 60 x 80 stitches at 20 to the inch are 3 x 4 in, 5 in from corner to corner; with 3 in round it that is 11 in. */
    @Test
    void a_hooped_piece_is_told_how_wide_a_hoop_it_needs() throws IOException {
        String piece = "piece: Ring\nstitches: 60 x 80\ncloth: {kind: block, count: 20}\nfinish: hooped\n";
        for (String margin : List.of("", "margin: 2 in\n")) {
            String basket = Ran.basket(folder.resolve("b" + margin.length()), "units: in\n", piece + margin).toString();
            assertEquals("", Ran.kitleaf("print", basket, "--only", "cut-sheets", "--out", folder.resolve("out")).err());
            String text = ReadBack.line(Files.readAllBytes(folder.resolve("out/cut-sheets.pdf")), 0).replace('\u00a0', ' ');
            assertTrue(text.contains("needs a hoop 5 in wide inside"), text);
            assertEquals(margin.isEmpty(), text.contains("3 in around the circle through the design’s corners, left in a hoop"), text);
            assertEquals(margin.isEmpty(), text.contains("11 × 11 in"), text);
        }
    }

    /**
     * Bands and bookmarks are ordinary pieces. By hand: on 28 count over two there are 14 stitches to the inch, so 300 x 9 are
     * 21 3/7 x 9/14 in, with 3 in all round 27 3/7 x 6 9/14 in, up to the quarter 27 1/2 x 6 3/4 in; and so the others.
     */
    @ParameterizedTest
    @CsvSource({"300 x 9, 27 1⁄2 × 6 3⁄4 in", "60 x 3, 10 1⁄2 × 6 1⁄4 in", "200 x 7, 20 1⁄2 × 6 1⁄2 in", "600 x 17, 49 × 7 1⁄4 in",
            "12 x 300, 7 × 27 1⁄2 in",
        "2000 x 1, 149 × 6 1⁄4 in", "1 x 2000, 6 1⁄4 × 149 in"})
    void low_and_thin_pieces_print_with_no_word_on_another(String stitches, String cut) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", "piece: Groyne\nstitches: " + stitches
                + "\ncloth: {kind: linen, count: 28, over: 2}\n");
        for (String paper : List.of("A4", "A5", "letter landscape")) {
            for (String print : List.of("--units=in", "--large", "--language=de")) {
                if (!print.equals("--large") || !paper.endsWith("landscape")) {
                    Ran ran = Ran.kitleaf("print", basket, "--only", "cut-sheets", "--paper", paper, print, "--out", folder.resolve("out"));
                    assertEquals("", ran.err(), paper + print);
                    byte[] pdf = Files.readAllBytes(folder.resolve("out/cut-sheets.pdf"));
                    String text = ReadBack.line(pdf, 1);
                    assertTrue(print.equals("--language=de") || text.replace('\u2215', '⁄').contains(cut), text);
                    for (List<Letter> page : ReadBack.lettersByPage(pdf)) {
                        assertEquals(List.of(), TextBoxes.overlaps(page), paper + print);
                    }
                }
            }
        }
    }

    /**
     * Long and low or high and narrow as pieces may be: beside each drawing stand, in the order they are drawn, both distances of the first
     * stitch, then the cut's width and height, which the head of the page has too, and somewhere what the steps say of the diagonals.
     */
    @ParameterizedTest
    @CsvSource({"A4, false", "A4, true", "A5, false", "A5, true", "letter, false", "letter, true", "A4 landscape, false",
        "A4 landscape, true"})
    void every_drawing_has_all_its_figures(String paper, boolean large) throws IOException {
        Random random = new Random(412L * 14);
        List<String> charts = new ArrayList<>(List.of("412 x 14", "14 x 412", "12 x 300"));
        for (int i = 0; i < 9; i++) {
            charts.add(Math.round(Math.pow(600, random.nextDouble())) + " x " + Math.round(Math.pow(600, random.nextDouble())));
        }
        Path basket = Ran.basket(folder.resolve("b"), "", "piece: Rail 0\nstitches: 90 x 90\ncloth: {kind: linen, count: 28, over: 2}\n");
        for (String chart : charts) {
            Files.writeString(basket.resolve("pieces/rail-" + chart.replace(' ', '-') + ".yaml"), "piece: Rail " + chart + "\nstitches: "
                    + chart + "\ncloth: {kind: linen, count: 28, over: 2}\nmargin: {top: 2 in, right: 1 in, bottom: 3 in, left: 2 in}\n");
        }
        Ran ran = Ran.kitleaf("print", basket, "--only", "cut-sheets", "--paper", paper, large ? "--large" : "--units=in",
                "--out", folder.resolve("out"));
        assertEquals("", ran.err());
        byte[] pdf = Files.readAllBytes(folder.resolve("out/cut-sheets.pdf"));
        List<List<Letter>> letters = ReadBack.lettersByPage(pdf);
        List<List<Drawn>> drawn = ReadBack.drawnByPage(pdf);
        StringBuilder before = new StringBuilder();
        int drawings = 0;
        for (int page = 0; page < letters.size(); page++) {
            String said = letters.get(page).stream().map(Letter::text).collect(Collectors.joining())
                    .replaceAll("[\\s\u00a0]", "").replace('\u2215', '⁄');
            if (!said.matches("(?i)corner ?guide.*")) {
                assertEquals(List.of(), TextBoxes.overlaps(letters.get(page)), paper);
                assertEquals(List.of(), TextBoxes.struck(letters.get(page).stream().filter(it -> it.turned() % 90 == 0).toList(),
                        drawn.get(page).stream().filter(it -> it.stroke() != TINT).toList()), paper);
                before.append(said);
            } else if (before.length() > 0) {
                Matcher figures = Pattern.compile("firststitch(F)in(F)in(F)in(F)in".replace("F", "[0-9⁄]+")).matcher(before);
                assertTrue(figures.find(), before::toString);
                assertTrue(before.indexOf(figures.group(3) + "×" + figures.group(4) + "in") >= 0, before::toString);
                Matcher diagonal = Pattern.compile("Bothdiagonalsmustread([0-9⁄]+in)").matcher(before);
                assertTrue(diagonal.find(), before::toString);
                assertTrue(before.indexOf(diagonal.group(1)) < diagonal.start() || before.indexOf(diagonal.group(1), diagonal.end()) >= 0,
                        before::toString);
                drawings++;
                before.setLength(0);
            }
        }
        assertEquals(charts.size() + 1, drawings);
    }

    /** Long and low, square with equal margins, high, with unequal margins, and with hardly a margin: it stands clear, or not along the line. */
    @ParameterizedTest
    @CsvSource({"240 x 60, 2 in, false", "80 x 80, 3 in, true", "150 x 100, 3 in, false", "90 x 150, 2 in, false",
        "'140 x 90', '{top: 1 in, right: 5 in, bottom: 3 in, left: 2 in}', true", "400 x 100, 1 in, false", "600 x 40, 1 in, false"})
    void the_diagonal_is_written_where_it_crosses_no_edge(String stitches, String margin, boolean room) throws IOException {
        for (String paper : List.of("A4", "letter", "A4 landscape")) {
            Path basket = Ran.basket(folder.resolve("b"), "", "piece: Groyne\nstitches: " + stitches + "\ncloth: {kind: linen, count: 28, over: 2}\nmargin: " + margin + "\n");
            Ran ran = Ran.kitleaf("print", basket, "--only", "cut-sheets", "--paper", paper, "--out", folder.resolve("out"));
            assertEquals("", ran.err());
            byte[] pdf = Files.readAllBytes(folder.resolve("out/cut-sheets.pdf"));
            Drawn design = ReadBack.drawn(pdf, 1).stream().filter(it -> it.filled() && it.stroked() && it.fill() == TINT).findFirst().orElseThrow();
            Drawn line = ReadBack.drawn(pdf, 1).stream().filter(it -> it.operations().equals("ML") && !it.dashMm().isEmpty()
                    && it.x(0) != it.x(1) && it.y(0) != it.y(1)).findFirst().orElseThrow();
            Rectangle2D edges = new Rectangle2D.Double(design.least(true), design.least(false), design.most(true) - design.least(true),
                    design.most(false) - design.least(false));
            List<Letter> along = ReadBack.letters(pdf, 1).stream().filter(it -> Math.abs(it.turned()) > 1 && Math.abs(it.turned()) < 89).toList();
            assertTrue(!along.isEmpty() || !room, paper + ": written along the diagonal");
            boolean inside = !along.isEmpty() && edges.contains(along.get(0).x(), along.get(0).y());
            for (Letter letter : along) {
                Line2D middle = middle(letter);
                assertEquals(inside, edges.contains(middle.getP1()) && edges.contains(middle.getP2()), paper + ": " + letter);
                assertTrue(middle.getX2() < line.most(true) && middle.getY2() < line.most(false), paper + ": " + letter);
            }
        }
    }
}
