package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Drawn;
import kitleaf.ReadBack.Letter;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The cloth plan, printed by the whole program and read back with PDFBox. */
class ClothPlanPrintTests {

    private static final double TRUE_MM = 0.02;
    private static final int TINT = 0xeef0ec;
    private static final int INK = 0x20262b;
    private static final int ACCENT = 0x9a2f2d;
    private static final String SEA_MIST = "{name: Sea-mist, kind: linen, count: 28, over: 2}";

    @TempDir
    private Path folder;

    private static String piece(String title, String stitches, String cloth, String more) {
        return "piece: " + title + "\nstitches: " + stitches + "\ncloth: " + cloth + "\nmargin: 2 in\n" + more;
    }

    private Path basket(String settings, String... pieces) throws IOException {
        return Ran.basket(folder.resolve("b"), settings, String.join("---\n", pieces));
    }

    private byte[] print(Path basket, Object... more) throws IOException {
        List<Object> arguments = new ArrayList<>(List.of("print", basket, "--only", "cloth-plan", "--out", folder.resolve("out")));
        arguments.addAll(List.of(more));
        Ran ran = Ran.kitleaf(arguments.toArray());
        assertEquals(0, ran.code(), ran.err());
        assertEquals("", ran.err());
        return Files.readAllBytes(folder.resolve("out/cloth-plan.pdf"));
    }

    private static JsonNode plan(Path basket) throws IOException {
        return new ObjectMapper().readTree(Ran.kitleaf("reckon", basket, "--json").out()).get("cloth-plan");
    }

    private static void contains(String text, String... words) {
        for (String word : words) {
            assertTrue(text.contains(word), () -> "\"" + word + "\" is not in: " + text);
        }
    }

    /** The pages that show a cloth, in their order: those that state a scale below a drawing. */
    private static List<Integer> drawings(byte[] pdf) throws IOException {
        List<Integer> found = new ArrayList<>();
        for (int page = 1; page <= ReadBack.pages(pdf); page++) {
            if (ReadBack.line(pdf, page).contains("scale 1 : ")) {
                found.add(page);
            }
        }
        return found;
    }

    private static double scale(byte[] pdf, int page) throws IOException {
        Matcher stated = Pattern.compile("scale 1 : ([0-9.]+)").matcher(ReadBack.line(pdf, page));
        assertTrue(stated.find(), ReadBack.line(pdf, page));
        return Double.parseDouble(stated.group(1));
    }

    /** The cloth's edges: four thin strokes, the first along its top from its left corner, fewer where the drawing breaks off. */
    private static Drawn outline(List<Drawn> drawn) {
        List<Drawn> found = drawn.stream().filter(it -> it.stroked() && !it.filled() && it.stroke() == INK && Math.abs(it.lineWidthMm() - 0.35) < 0.01
                && it.operations().matches("(ML){2,4}") && it.operations().length() >= 4).toList();
        assertEquals(1, found.size(), found.toString());
        return found.get(0);
    }

    private static List<Drawn> rectangles(List<Drawn> drawn) {
        return drawn.stream().filter(it -> it.filled() && it.stroked() && it.fill() == TINT && it.stroke() == INK).toList();
    }

    private static List<Drawn> cutLines(List<Drawn> drawn) {
        return drawn.stream().filter(it -> it.stroked() && !it.filled() && it.stroke() == INK && Math.abs(it.lineWidthMm() - 0.6) < 0.01
                && it.dashMm().isEmpty() && it.operations().equals("ML")).toList();
    }

    private static void assertDrawn(JsonNode place, Drawn box, double leftMm, double topMm, double scale, String where) {
        assertEquals(place.get("x-mm").asDouble() / scale, box.least(true) - leftMm, TRUE_MM, where);
        assertEquals(place.get("y-mm").asDouble() / scale, box.least(false) - topMm, TRUE_MM, where);
        assertEquals(place.get("width-mm").asDouble() / scale, box.most(true) - box.least(true), TRUE_MM, where);
        assertEquals(place.get("height-mm").asDouble() / scale, box.most(false) - box.least(false), TRUE_MM, where);
    }

    private Path drawer() throws IOException {
        return basket("""
                cloth-on-hand:
                  - {name: Sea-mist, kind: linen, count: 28, size: 90 cm x 70 cm, selvedge: left, turning: yes, flaws: [{from-top: 50 cm, wide: 2 cm}]}
                  - {name: Across, kind: linen, count: {warp: 30, weft: 32}, size: 100 cm x 40 cm, warp: across, turning: yes}
                cloth-cuts:
                  - {name: fat quarter, size: 27 in x 18 in, price: 14.00 GBP}
                """,
                piece("Groyne", "140 x 210", SEA_MIST, ""), piece("Beacon", "100 x 60", SEA_MIST, ""), piece("Bell", "40 x 60", SEA_MIST, ""),
                piece("Long Bell", "60 x 250", "{name: Across, kind: linen, count: {warp: 30, weft: 32}, over: 2, warp: across}", ""),
                piece("Bought", "60 x 70", "{name: Foam, kind: evenweave, count: 25, over: 2}", ""));
    }

    /** The places are the plan's own, as reckon gives them; what is tested is that they are drawn there. */
    @ParameterizedTest
    @ValueSource(strings = {"A4", "A5", "letter", "A3", "A4 landscape", "A5 landscape"})
    void every_rectangle_and_cut_is_drawn_where_the_plan_has_it_at_the_stated_scale(String paper) throws IOException {
        Path basket = drawer();
        JsonNode cloths = plan(basket).get("cloths");
        byte[] pdf = print(basket, "--paper", paper);
        List<Integer> pages = drawings(pdf);
        assertEquals(3, cloths.size());
        assertEquals(cloths.size(), pages.size());
        for (int i = 0; i < cloths.size(); i++) {
            JsonNode cloth = cloths.get(i);
            List<Drawn> drawn = ReadBack.drawn(pdf, pages.get(i));
            double scale = scale(pdf, pages.get(i));
            Drawn outline = outline(drawn);
            double left = outline.x(0);
            double top = outline.y(0);
            assertEquals(cloth.get("width-mm").asDouble() / scale, outline.most(true) - left, TRUE_MM);
            assertEquals(cloth.get("height-mm").asDouble() / scale, outline.most(false) - top, TRUE_MM);
            List<Drawn> boxes = rectangles(drawn);
            assertEquals(cloth.get("cuts").size(), boxes.size());
            for (int cut = 0; cut < boxes.size(); cut++) {
                assertDrawn(cloth.get("cuts").get(cut), boxes.get(cut), left, top, scale, paper + ", " + cloth.get("name") + ", piece " + (cut + 1));
            }
            // The signs below the drawing have lines of the same kind.
            List<Drawn> lines = cutLines(drawn).stream().filter(it -> it.most(false) <= outline.most(false) + 1).toList();
            // A selvedge is as heavy as a cut; it stands before them.
            lines = lines.subList(lines.size() - cloth.get("edge-cuts").size(), lines.size());
            for (int cut = 0; cut < lines.size(); cut++) {
                JsonNode edge = cloth.get("edge-cuts").get(cut);
                Drawn line = lines.get(cut);
                for (String end : List.of("1", "2")) {
                    int point = end.equals("1") ? 0 : 1;
                    assertEquals(edge.get("x" + end + "-mm").asDouble() / scale, line.x(point) - left, TRUE_MM);
                    assertEquals(edge.get("y" + end + "-mm").asDouble() / scale, line.y(point) - top, TRUE_MM);
                }
            }
            assertTrue(lines.size() >= 2, "cuts are drawn");
        }
    }

    /** Drawn first inside its rectangle, whole, and nothing but what belongs to the piece comes after. */
    @ParameterizedTest
    @ValueSource(strings = {"A4", "A5", "A3"})
    void every_number_stands_inside_its_rectangle(String paper) throws IOException {
        byte[] pdf = print(drawer(), "--paper", paper);
        int seen = 0;
        for (int page : drawings(pdf)) {
            List<Letter> letters = ReadBack.letters(pdf, page);
            List<Drawn> boxes = rectangles(ReadBack.drawn(pdf, page));
            for (int number = 1; number <= boxes.size(); number++) {
                Drawn box = boxes.get(number - 1);
                String inside = letters.stream().filter(it -> it.x() > box.least(true) && it.x() < box.most(true) && it.y() > box.least(false) && it.y() < box.most(false))
                        .map(Letter::text).collect(Collectors.joining()).strip();
                assertTrue(inside.startsWith(Integer.toString(number)), paper + ", piece " + number + ": " + inside);
                seen++;
            }
        }
        assertEquals(5, seen);
    }

    /**
     * By hand: 100 and 60 stitches over two of 28 are 7 1/7 and 4 2/7 in; with 4 in of margins 11 1/7 and 8 2/7, up to 11 1/4 and 8 1/2.
     * The cloth is as high as the piece, so one cut from top to bottom is all.
     */
    @Test
    void a_step_says_which_part_where_and_what_comes_off() throws IOException {
        byte[] pdf = print(basket("cloth-on-hand: [{name: Sea-mist, kind: linen, count: 28, size: 20 in x 8 1/2 in, selvedge: left}]\n",
                piece("Beacon", "100 x 60", SEA_MIST, "")));
        contains(ReadBack.line(pdf, drawings(pdf).get(0)), "Sea-mist", "linen, 28 count · 20 × 8 1⁄2 in (50.8 × 21.6 cm) · on hand",
                "Measure from the edge a step names, draw out the thread there and cut along it.",
                "1 11 1⁄4 in 28.6 cm from the left edge of the whole cloth Piece 1 comes off: Beacon A is left over: keep",
                "A cut takes the one thread that is drawn and 3 mm for fraying", "that is counted in already",
                "Proved: no plan buys less, opens fewer cloths or leaves a larger rectangle");
        // By hand: 20 in less 11 1/4 in, one thread of 28 to the inch and 3 mm are 8.596 in, 218.3 mm.
        contains(ReadBack.line(pdf, drawings(pdf).get(0)), "keep", "8 5⁄8 × 8 1⁄2 in", "21.8 × 21.6 cm");
        String drawn = ReadBack.drawnText(pdf, drawings(pdf).get(0));
        contains(drawn, "selvedge", "warp", "✂1", "scale1:");
    }

    @Test
    void a_second_step_names_its_part_by_the_cut_that_made_it() throws IOException {
        byte[] pdf = print(basket("cloth-on-hand: [{name: Sea-mist, kind: linen, count: 28, size: 20 in x 10 in}]\n", piece("Beacon", "100 x 60", SEA_MIST, "")));
        String page = ReadBack.line(pdf, drawings(pdf).get(0));
        assertTrue(page.matches(".*from the (left|top) edge of the whole cloth .*"
                + "from the (left|top) edge of the part (left of|above) cut 1 "
                + "Piece 1 comes off: Beacon .*"), page);
    }

    /** Inches to the sixteenth above, as a ruler has them: 286 mm are 180.2 sixteenths, so 181, which are 11 5/16. */
    private static String inches(double mm) {
        int sixteenths = (int) Math.ceil(mm / 25.4 * 16 - 1e-6);
        int part = Integer.numberOfTrailingZeros(Integer.lowestOneBit(sixteenths % 16 | 16));
        String fraction = sixteenths % 16 == 0 ? "" : (sixteenths % 16 >> part) + "⁄" + (16 >> part);
        return ((sixteenths < 16 && !fraction.isEmpty() ? "" : sixteenths / 16 + " ") + fraction).strip() + " in";
    }

    private static String part(JsonNode step) {
        return switch (step.get("part").asText()) {
            case "whole" -> "the whole cloth";
            case "left", "right" -> "the part " + step.get("part").asText() + " of cut " + step.get("of-cut").asText();
            default -> "the part " + step.get("part").asText() + " cut " + step.get("of-cut").asText();
        };
    }

    /** Steps are the plan's own, as reckon gives them; what is tested is that their measures stand at their numbers, large and once. */
    @ParameterizedTest
    @CsvSource({"A4,", "A5,", "A4 landscape,", "letter,", "A4, --large"})
    void the_measure_of_each_step_stands_beside_its_number(String paper, String large) throws IOException {
        Path basket = drawer();
        List<Object> options = new ArrayList<>(List.of("--paper", paper));
        if (large != null) {
            options.add(large);
        }
        byte[] pdf = print(basket, options.toArray());
        // Large print has a fraction sign of its own.
        String all = ReadBack.line(pdf, 0).replace('\u2215', '\u2044');
        int seen = 0;
        int from = 0;
        for (JsonNode cloth : plan(basket).get("cloths")) {
            for (JsonNode step : cloth.get("edge-cuts")) {
                String said = step.get("number").asText() + " " + inches(step.get("from-mm").asDouble()) + " ";
                String where = "from the " + (step.get("run").asText().equals("down") ? "left" : "top") + " edge of " + part(step);
                Matcher row = Pattern.compile(" " + Pattern.quote(said) + "[0-9.]+ cm " + Pattern.quote(where)).matcher(all);
                assertTrue(row.find(from), () -> said + where + " is not in: " + all);
                from = row.end();
                seen++;
            }
        }
        int discs = 0;
        for (int page = 1; page <= ReadBack.pages(pdf); page++) {
            List<Letter> letters = ReadBack.letters(pdf, page).stream().filter(it -> !it.text().isBlank()).toList();
            List<Drawn> drawn = ReadBack.drawn(pdf, page);
            List<Drawn> cloth = drawings(pdf).contains(page) ? List.of(outline(drawn)) : List.of();
            // Discs of the drawing stand on the cloth, left of it or above it.
            for (Drawn disc : drawn.stream().filter(it -> it.filled() && it.fill() == ACCENT && !it.stroked() && cloth.stream()
                    .noneMatch(edge -> it.least(true) < edge.most(true) && it.least(false) < edge.most(false))).toList()) {
                // The first figure of a measure is 14 pt or more, right of the number and on one line with it.
                discs += letters.stream().anyMatch(it -> it.sizePt() >= 15.9 && it.text().matches("[0-9]") && it.x() > disc.most(true)
                        && it.x() < disc.most(true) + 5 && it.y() > disc.least(false) && it.y() < disc.most(false) + 1.5) ? 1 : 0;
            }
        }
        assertTrue(seen >= 8, "steps: " + seen);
        assertEquals(seen, discs);
    }

    private static List<Drawn> pictures(List<Drawn> drawn) {
        return drawn.stream().filter(it -> it.stroked() && !it.filled() && it.stroke() == INK && !it.operations().startsWith("MLM")
                && it.points().size() >= 4 && it.most(true) - it.least(true) < 13.05 && it.most(false) - it.least(false) < 11.05
                && Math.abs(it.lineWidthMm() - 0.35) < 0.01).toList();
    }

    @ParameterizedTest
    @CsvSource({"A4,", "A5,", "A4 landscape,", "A4, --large"})
    void a_steps_picture_has_the_cut_where_it_lies_in_its_part(String paper, String large) throws IOException {
        Path basket = drawer();
        byte[] pdf = large == null ? print(basket, "--paper", paper) : print(basket, "--paper", paper, large);
        List<Drawn> parts = new ArrayList<>();
        List<Drawn> cuts = new ArrayList<>();
        for (int page = 1; page <= ReadBack.pages(pdf); page++) {
            List<Drawn> drawn = ReadBack.drawn(pdf, page);
            parts.addAll(pictures(drawn));
            cuts.addAll(drawn.stream().filter(it -> it.stroked() && it.stroke() == ACCENT
                    && Math.abs(it.lineWidthMm() - 0.6) < 0.01).toList());
        }
        int at = 0;
        for (JsonNode cloth : plan(basket).get("cloths")) {
            for (JsonNode step : cloth.get("edge-cuts")) {
                Drawn part = parts.get(at);
                Drawn cut = cuts.get(at++);
                boolean down = step.get("run").asText().equals("down");
                double scale = Math.max(step.get("part-width-mm").asDouble() / 13, step.get("part-height-mm").asDouble() / 11);
                assertEquals(step.get("part-width-mm").asDouble() / scale, part.most(true) - part.least(true), TRUE_MM);
                assertEquals(step.get("part-height-mm").asDouble() / scale, part.most(false) - part.least(false), TRUE_MM);
                assertEquals(step.get("from-mm").asDouble() / scale, cut.least(down) - part.least(down), TRUE_MM);
                assertEquals(cut.least(down), cut.most(down), TRUE_MM);
                assertTrue(cut.least(!down) < part.least(!down) && cut.most(!down) > part.most(!down), "from edge to edge");
            }
        }
        assertEquals(at, parts.size());
        assertEquals(at, cuts.size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"A4", "letter", "A4 landscape"})
    void the_steps_of_the_example_stand_on_the_page_of_their_drawing(String paper) throws IOException {
        Path harbour = Path.of("examples/harbour");
        byte[] pdf = print(harbour, "--paper", paper);
        JsonNode cloths = plan(harbour).get("cloths");
        List<Integer> pages = drawings(pdf);
        assertEquals(cloths.size(), pages.size());
        assertTrue(ReadBack.pages(pdf) <= 7, () -> "the pages before them: 6 of A4, 7 of letter, 7 lying");
        for (int i = 0; i < pages.size(); i++) {
            assertEquals(cloths.get(i).get("edge-cuts").size(), pictures(ReadBack.drawn(pdf, pages.get(i))).size());
        }
    }

    /** What is needed at the table is 10 pt or more: all on a cloth's page but head, foot, the scale and the notes at its end. */
    @Test
    void words_needed_at_the_table_are_ten_points_or_more() throws IOException {
        byte[] pdf = print(Path.of("examples/harbour"), "--paper", "A4");
        for (int page : drawings(pdf)) {
            StringBuilder small = new StringBuilder();
            ReadBack.letters(pdf, page).stream().filter(it -> it.y() > 40 && it.sizePt() < 9.9 && it.text().matches("\\p{L}"))
                    .forEach(it -> small.append(it.text()));
            String allowed = small.toString();
            for (String said : List.of("scale", "Thin rectangles", "A cut takes", "Proved:", "Saltmarsh")) {
                assertTrue(allowed.contains(said.replaceAll("[^A-Za-z]", "")), said);
            }
            for (String said : List.of("comes off", "upright", "turned", "warp", "flaw", "keep", "from the", "cloth as")) {
                assertFalse(allowed.contains(said.replace(" ", "")), () -> said + " is small: " + allowed);
            }
        }
    }

    @Test
    void flaws_and_turned_pieces_have_their_words() throws IOException {
        // 18 in of warp are too short for 19 in across the design, so the piece has to lie on its side.
        byte[] pdf = print(basket("cloth-on-hand: [{name: Sea-mist, kind: linen, count: 28, size: 12 in x 24 in, turning: yes, flaws: [{from-top: 22 in, wide: 1 in}]}]\n",
                piece("Groyne", "200 x 100", SEA_MIST, "")));
        String page = ReadBack.drawnText(pdf, drawings(pdf).get(0));
        contains(page, "flaw", "turned,warpacrossthedesign", "1Groyne");
        contains(ReadBack.line(pdf, 0), "turned: the design lies on its side here, warp across the design; its size is reckoned for that");
    }

    @Test
    void block_cloth_is_cut_along_its_holes() throws IOException {
        byte[] pdf = print(basket("cloth-on-hand: [{name: Foam, kind: block, count: 14, size: 30 in x 30 in}]\n",
                piece("Beacon", "100 x 60", "{name: Foam, kind: block, count: 14}", "")));
        String page = ReadBack.line(pdf, drawings(pdf).get(0));
        contains(page, "cut along the row of holes there", "A cut takes one row of blocks");
        assertFalse(page.contains("thread"), page);
    }

    @Test
    void the_first_page_tells_what_to_buy_what_stays_and_what_has_no_cloth() throws IOException {
        byte[] pdf = print(basket("""
                title: Net loft
                cloth-on-hand:
                  - {name: Sea-mist, kind: linen, count: 35, size: 30 in x 30 in}
                  - {name: Spare, kind: linen, count: 40, size: 10 in x 10 in}
                cloth-cuts: [{name: fat eighth, size: 13 in x 18 in, price: 7.60 GBP}]
                """,
                piece("Beacon", "60 x 60", "{name: Sea-mist, kind: linen, count: 36, over: 2}", ""),
                // 100 stitches over two of 28 are 7 1/7 in, so two of these do not fit on 13 x 18 in, one does.
                piece("North", "100 x 100", "{kind: linen, count: 28, over: 2}", ""), piece("South", "100 x 100", "{kind: linen, count: 28, over: 2}", ""),
                // By hand: 500 stitches over two of 28 are 35.71 in; with the margins 39.71, up to 39 3/4.
                piece("Giant", "500 x 500", "{kind: linen, count: 28, over: 2}", ""),
                piece("Begun", "60 x 60", SEA_MIST, "progress: 40\n"), piece("Done", "60 x 60", SEA_MIST, "progress: {started: 2026-01-01, finished: 2026-02-01}\n"),
                piece("Lying cut", "60 x 60", "{kind: linen, count: 28, over: 2, cut: yes}", "")));
        contains(ReadBack.line(pdf, 0), "From cloth to pieces", "3 pieces from 3 cloths", "2 × fat eighth", "15.20 GBP", "7.60 GBP each", "1 × fat eighth", "22.80 GBP",
                "Spare", "Giant", "39 3⁄4 × 39 3⁄4 in (101 × 101 cm)", "Sea-mist on hand has 35 threads to the inch; Beacon asks for 36.",
                "Begun, so cut already: Begun.", "Said to be cut already: Lying cut.", "Finished: Done.", "Square the cloth on a drawn thread first",
                "Measure twice", "selvedge", "Wash or dye only", "keep fingers clear", "its maker’s instructions", "Count the threads");
    }

    @Test
    void a_bolt_is_broken_off_where_nothing_is_cut() throws IOException {
        Path basket = basket("cloth-on-hand: [{name: Sea-mist, kind: linen, count: 28, size: 140 cm x 20 m}]\n", piece("Groyne", "140 x 210", SEA_MIST, ""));
        byte[] pdf = print(basket);
        int page = drawings(pdf).get(0);
        contains(ReadBack.line(pdf, page), "Beyond the zigzag the cloth goes on uncut", "55 1⁄8 × 787 3⁄8 in (140 × 2000 cm)");
        List<Drawn> drawn = ReadBack.drawn(pdf, page);
        Drawn outline = outline(drawn);
        assertTrue(scale(pdf, page) <= 10, "drawn whole it would be 1 : 120");
        assertDrawn(plan(basket).get("cloths").get(0).get("cuts").get(0), rectangles(drawn).get(0), outline.x(0), outline.y(0), scale(pdf, page), "Groyne");
    }

    @Test
    void a_selvedge_beyond_the_zigzag_is_told_of() throws IOException {
        byte[] pdf = print(basket("cloth-on-hand: [{name: Sea-mist, kind: linen, count: 28, size: 14 m x 60 cm, warp: down, selvedge: right}]\n",
                piece("Groyne", "140 x 210", SEA_MIST, "")));
        contains(ReadBack.line(pdf, drawings(pdf).get(0)), "Its selvedge is on the side beyond the zigzag.");
        assertFalse(ReadBack.drawnText(pdf, drawings(pdf).get(0)).replace("Itsselvedge", "").contains("selvedge"), "no edge that is drawn is one");
    }

    private Path sixty() throws IOException {
        return basket("cloth-on-hand: [{name: Sea-mist, kind: linen, count: 28, size: 160 cm x 100 cm, selvedge: right}]\n",
                IntStream.rangeClosed(1, 60).mapToObj(i -> piece("Ornament " + i, "30 x 30", SEA_MIST, "").replace("2 in", "1 in")).toArray(String[]::new));
    }

    private Path longNames() throws IOException {
        String name = "Sea-mist from the third shelf of a chandler who had this only once, in May 2024";
        String title = "A title that winds on and on and on like a rope around its drum, eighty letters";
        String cloth = "{name: \"" + name + "\", kind: linen, count: 28, over: 2}";
        return basket("cloth-on-hand: [{name: \"" + name + "\", kind: linen, count: 28, size: 60 cm x 45 cm, selvedge: bottom}]\n",
                piece(title, "100 x 100", cloth, ""), piece(title + "!", "60 x 60", cloth, ""), piece(title + "?", "40 x 130", cloth, ""), piece(title + "...", "20 x 20", cloth, ""));
    }

    private Path crumb() throws IOException {
        String crumb = "{name: Crumb, kind: linen, count: 40, over: 2}";
        return basket("cut-step: 1 mm\ncutting: {fray: 0 mm}\ncloth-on-hand: [{name: Crumb, kind: linen, count: 40, size: 25 mm x 22 mm, selvedge: right}]\n",
                piece("Speck", "10 x 10", crumb, "").replace("2 in", "1 mm"), piece("Fleck", "4 x 4", crumb, "").replace("2 in", "1 mm"));
    }

    private Path named(String which) throws IOException {
        return switch (which) {
            case "sixty" -> sixty();
            case "names" -> longNames();
            case "crumb" -> crumb();
            case "bolt" -> basket("cloth-on-hand: [{name: Sea-mist, kind: linen, count: 28, size: 140 cm x 20 m, selvedge: left, flaws: [{from-left: 60 cm, wide: 5 mm}]}]\n",
                    piece("Groyne", "140 x 210", SEA_MIST, ""), piece("Beacon", "100 x 60", SEA_MIST, ""));
            default -> drawer();
        };
    }

    /** Nothing within 8 mm of the paper's edge, no line under 0.2 mm, nothing under 6 pt but parts of fractions, and no letter on another. */
    @ParameterizedTest
    @CsvSource({"drawer, A4", "drawer, A5 landscape", "sixty, A4", "sixty, A5", "sixty, A4 landscape", "names, A4", "names, letter", "crumb, A4", "crumb, A5",
        "bolt, A4", "bolt, A5 landscape", "drawer, A3"})
    void every_mark_keeps_clear_of_the_edge_and_of_the_others(String which, String paper) throws IOException {
        byte[] pdf = print(named(which), "--paper", paper);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                double widthMm = document.getPage(page - 1).getMediaBox().getWidth() * 25.4 / 72;
                double heightMm = document.getPage(page - 1).getMediaBox().getHeight() * 25.4 / 72;
                String where = which + ", " + paper + ", page " + page;
                for (Drawn drawn : ReadBack.drawn(pdf, page)) {
                    assertTrue(drawn.least(true) >= 8 && drawn.most(true) <= widthMm - 8 && drawn.least(false) >= 8 && drawn.most(false) <= heightMm - 8, () -> where + ": " + drawn);
                    assertTrue(!drawn.stroked() || drawn.lineWidthMm() >= 0.2 - 0.002, () -> where + ": " + drawn);
                }
                List<Letter> letters = ReadBack.letters(pdf, page).stream().filter(it -> !it.text().isBlank() && !it.text().equals("\u2044")).toList();
                List<Rectangle2D> places = letters.stream().map(ClothPlanPrintTests::place).toList();
                for (int i = 0; i < letters.size(); i++) {
                    Rectangle2D place = places.get(i);
                    Letter letter = letters.get(i);
                    assertTrue(place.getMinX() >= 8 && place.getMaxX() <= widthMm - 8 && place.getMinY() >= 8 && place.getMaxY() <= heightMm - 8, () -> where + ": " + letter);
                    assertTrue(letter.sizePt() >= 6 * 0.62 - 0.01, () -> where + ": " + letter);
                    for (int other = 0; other < i; other++) {
                        if (place.intersects(places.get(other))) {
                            fail(where + ": " + letter + " lies on " + letters.get(other));
                        }
                    }
                }
            }
        }
    }

    /** The middle of a letter: what its neighbours in the word do not reach into. */
    private static Rectangle2D place(Letter letter) {
        double high = letter.sizePt() * 0.62 * 25.4 / 72;
        double inset = 0.25 * letter.width();
        return letter.turned() == 0 ? new Rectangle2D.Double(letter.x() + inset, letter.y() - high, letter.width() - 2 * inset, high)
                : new Rectangle2D.Double(letter.x() - high, letter.y() - letter.width() + inset, high, letter.width() - 2 * inset);
    }

    @Test
    void sixty_pieces_have_sixty_numbers_in_their_rectangles() throws IOException {
        byte[] pdf = print(sixty());
        int page = drawings(pdf).get(0);
        List<Drawn> boxes = rectangles(ReadBack.drawn(pdf, page));
        List<Letter> letters = ReadBack.letters(pdf, page);
        assertEquals(60, boxes.size());
        for (int i = 0; i < 60; i++) {
            Drawn box = boxes.get(i);
            String first = letters.stream().filter(it -> it.x() > box.least(true) && it.x() < box.most(true) && it.y() > box.least(false) && it.y() < box.most(false))
                    .map(Letter::text).collect(Collectors.joining());
            assertTrue(first.startsWith(Integer.toString(i + 1)), i + 1 + ": " + first);
        }
    }

    @Test
    void it_is_among_the_usual_sheets_where_the_basket_tells_of_cloth() throws IOException {
        Path out = folder.resolve("out");
        Ran.kitleaf("print", basket("", piece("Beacon", "60 x 60", SEA_MIST, "")), "--out", out);
        assertEquals(List.of("bag-tags.pdf", "cut-sheets.pdf", "kit-lists.pdf"), Ran.files(out));
        Ran.kitleaf("print", basket("cloth-cuts: [{name: fat eighth, size: 13 in x 18 in}]\n", piece("Beacon", "60 x 60", SEA_MIST, "")), "--out", out);
        assertEquals(List.of("bag-tags.pdf", "buy-list.csv", "buy-list.pdf", "cloth-plan.pdf", "cut-sheets.pdf", "kit-lists.pdf"), Ran.files(out));
    }

    @Test
    void asked_for_it_comes_without_any_cloth_and_names_the_usual_cuts() throws IOException {
        byte[] pdf = print(basket("", piece("Beacon", "60 x 60", SEA_MIST, "")));
        contains(ReadBack.line(pdf, 1), "Planned with the usual shop cuts: fat quarter, fat eighth, half yard, 50 x 70 cm cut.", "1 × ");
    }

    @Test
    void with_nothing_to_plan_it_says_so() throws IOException {
        Ran ran = Ran.kitleaf("print", basket("", piece("Beacon", "60 x 60", SEA_MIST, "progress: 40\n")), "--only", "cloth-plan", "--out", folder.resolve("out"));
        assertEquals(1, ran.code(), ran.out());
        assertEquals("no cloth plan: every piece is begun, finished or cut already, so there is nothing to plan\n", ran.err());
        assertEquals(List.of(), Ran.files(folder.resolve("out")));
    }

    @Test
    void a_plan_for_thirty_pieces_says_that_it_is_not_proved() throws IOException {
        Path basket = basket("cloth-on-hand: [{name: Sea-mist, kind: linen, count: 28, size: 200 cm x 150 cm, turning: yes}]\n",
                IntStream.rangeClosed(1, 30).mapToObj(i -> piece("Piece " + i, 40 + 7 * i + " x " + (250 - 6 * i), SEA_MIST, "")).toArray(String[]::new));
        Ran ran = Ran.kitleaf("print", basket, "--only", "cloth-plan", "--out", folder.resolve("out"));
        assertEquals(0, ran.code(), ran.err());
        assertEquals("", ran.err());
        contains(ReadBack.line(Files.readAllBytes(folder.resolve("out/cloth-plan.pdf")), 0), "Not proved to be the best plan.");
    }

    @Test
    void centimetres_come_first_when_asked_for() throws IOException {
        byte[] pdf = print(drawer(), "--units", "cm");
        contains(ReadBack.line(pdf, drawings(pdf).get(0)), "90 × 70 cm (35 7⁄16 × 27 9⁄16 in)");
    }

    @Test
    void the_same_basket_gives_the_same_bytes() throws IOException {
        Path basket = drawer();
        assertArrayEquals(print(basket), print(basket));
    }
}
