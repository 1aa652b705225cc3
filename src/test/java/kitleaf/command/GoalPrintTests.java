package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Drawn;
import kitleaf.TextBoxes;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The year on the wall, printed by the whole program and read back with PDFBox. */
class GoalPrintTests {

    private static final Path HARBOUR = Path.of("examples/harbour");
    private static final double TRUE_MM = 0.02;
    private static final int TINT = 0xeef0ec;
    private static final int INK = 0x20262b;
    private static final int RULE = 0xc3c8c4;

    private static final String SETTINGS = """
            title: Net loft
            pace: {stitches-per-hour: 100, hours-per-week: 10}
            """;

    @TempDir
    private Path folder;

    private static String piece(String title, String chart, String more) {
        return "piece: " + title + "\nstitches: " + chart + "\ncloth: {kind: linen, count: 28, over: 2}\nmargin: 2 in\n" + more;
    }

    private Path basket(String settings, String... pieces) throws IOException {
        return Ran.basket(folder.resolve("b"), settings, String.join("---\n", pieces));
    }

    private byte[] print(Path basket, Object... more) throws IOException {
        List<Object> arguments = new ArrayList<>(List.of("print", basket, "--only", "goal-grid", "--out", folder.resolve("out")));
        arguments.addAll(List.of(more));
        Ran ran = Ran.kitleaf(arguments.toArray());
        assertEquals(0, ran.code(), ran.err());
        assertEquals("", ran.err());
        return Files.readAllBytes(folder.resolve("out/goal-grid.pdf"));
    }

    private static void contains(String text, String... words) {
        for (String word : words) {
            assertTrue(text.contains(word), () -> "\"" + word + "\" is not in: " + text);
        }
    }

    @Test
    void without_goals_it_says_what_to_write() throws IOException {
        Path basket = basket(SETTINGS, piece("Groyne", "140 x 140", ""));
        Ran ran = Ran.kitleaf("print", basket, "--only", "goal-grid", "--out", folder.resolve("out"));
        assertEquals(1, ran.code(), ran.out());
        assertEquals("no goal grid: basket.yaml has no goals; write for example goals: {year: 2027, choose: 3}\n", ran.err());
        Ran both = Ran.kitleaf("print", basket, "--only", "goal-grid,cut-sheets", "--out", folder.resolve("out"));
        assertEquals(1, both.code());
        assertTrue(both.out().startsWith(folder.resolve("out/cut-sheets.pdf").toString()), both.out());
        print(basket("goals: {year: 2027, choose: 3}\n", piece("Groyne", "140 x 140", "")));
    }

    /** By hand: 5000 crosses at 100 an hour are 50 hours, at 10 a week from 1 January 2027 five weeks; 2000 are 20 hours. */
    @Test
    void cards_say_what_is_left_how_long_it_takes_and_when() throws IOException {
        byte[] pdf = print(basket(SETTINGS + "goals: {year: 2027, choose: 2}\n",
                piece("Groyne", "140 x 140", "coverage: 10000\nprogress: {started: 2026-10-01, done: 50%}\n"),
                piece("Beacon", "70 x 70", "coverage: 2000\n")), "--as-of", "2027-01-01");
        String wall = ReadBack.line(pdf, 1);
        contains(wall, "Two to finish", "2027", "Groyne", "28 count over two · 10 × 10 in", "5 000", "stitches left · 50 h", "50 %", "Beacon", "2 000", "stitches left · 20 h", "ready to begin",
                "each box 5 %", "done on");
        contains(ReadBack.line(pdf, 2), "10 hours a week · 100 stitches an hour · at the stated pace all in time, chance unknown", "The year 2027", "70 hours are needed", "Groyne", "Beacon", "they have no spread");
    }

    /**
     * By hand: twelve days from 20 December to the year's first. The gift's 10 hours are seven of them, to the 26th; the five days left
     * are 7.1 hours of
     * what was begun, and its other 42.9 are thirty days, to 30 January, in week 4.
     */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"en; 10 h · before 2027; 26 Dec 2026, at this pace; 50 h · to wk 4; 43 hours are needed, and 521 are there; asked for",
        "de; 10 h · vor 2027; 26. Dez. 2026, bei diesem Tempo; 50 h · bis KW 4; 43 Stunden sind nötig, und 521 sind; Gewünschte"})
    void what_is_done_before_the_year_is_said_to_be(String language, String before, String likely, String into, String fit, String fewer) throws IOException {
        Path basket = basket(SETTINGS + "language: " + language + "\ngoals: {year: 2027, choose: 2, main-share: 100%}\n",
                piece("Groyne", "140 x 140", "coverage: 10000\nprogress: {started: 2026-10-01, done: 50%}\n"),
                piece("Gift", "70 x 70", "coverage: 1000\ngoal: {by: 2026-12-31}\n"));
        byte[] pdf = print(basket, "--as-of", "2026-12-20");
        contains(ReadBack.line(pdf, 1), before, likely, into);
        // Two were asked for, and only one of these is the year's.
        contains(ReadBack.line(pdf, 2), fit, fewer);
    }

    /** By hand: 40 hours at 10 a week end on 28 January; one pace gives one day, and neither a span nor a chance. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"en; 28; at the stated pace all in time, chance unknown; 28 Jan, at this pace",
        "en; 27; at the stated pace not all in time, chance unknown; 28 Jan, at this pace",
        "de; 28; beim angegebenen Tempo alle rechtzeitig, Chance unbekannt; 28. Jan., bei diesem Tempo"})
    void one_stated_pace_gives_no_chance(String language, int wanted, String all, String likely) throws IOException {
        byte[] pdf = print(basket(SETTINGS + "language: " + language + "\ngoals: {year: 2027, pieces: [piece]}\n",
                piece("Groyne", "100 x 100", "coverage: 4000\ngoal: {by: 2027-01-" + wanted + "}\n")), "--as-of", "2027-01-01");
        contains(ReadBack.line(pdf, 1), likely);
        contains(ReadBack.line(pdf, 2), all);
        assertFalse(ReadBack.line(pdf, 1).contains("28 Jan – 28 Jan"));
    }

    private Path uneven(double hoursPerWeek, String wanted) throws IOException {
        StringBuilder log = new StringBuilder();
        for (int week = 0; week < 16; week++) {
            log.append(week == 0 ? "" : ", ").append("{on: ").append(LocalDate.of(2026, 8, 3).plusWeeks(week)).append(", hours: ").append(week % 4 == 3 ? 17 : 1)
                    .append(", stitches: 100}");
        }
        return basket("pace: {stitches-per-hour: 100, hours-per-week: " + hoursPerWeek + "}\ngoals: {year: 2027, pieces: [piece]}\n",
                piece("Groyne", "140 x 140", "coverage: 4040\n" + wanted), piece("Beacon", "70 x 70", "progress: {finished: 2026-11-29, log: [" + log + "]}\n"));
    }

    private double chance(Path basket) throws IOException {
        return new ObjectMapper().readTree(Ran.kitleaf("reckon", basket, "--json", "--as-of", "2027-01-01").out()).at("/goals/pieces/0/chance").asDouble();
    }

    /**
     * By hand: 40.4 hours at 5 a week are 56.6 days, to 26 February, when it is wanted; but three of four weeks have one hour and one
     * has 17, so
     * that two long weeks of eight make 40 hours, which is too little, and three of eight are in less than one year of three. What is
     * said to save it is tried: so many hours a week more, and half less.
     */
    @Test
    void a_piece_that_is_more_likely_late_than_not_is_named_with_what_would_save_it() throws IOException {
        Path basket = uneven(5, "goal: {by: 2027-02-26}\n");
        assertTrue(chance(basket) < 0.5, "chance " + chance(basket));
        byte[] pdf = print(basket, "--as-of", "2027-01-01");
        String strip = ReadBack.line(pdf, 2);
        contains(strip, "to finish each by its own day", "to be finished by 26 Feb", "a piece that is wanted earlier has fewer hours before its day");
        Matcher said = Pattern.compile("Groyne: planned in time, but .* to be finished by 26 Feb; it may as well be after .* as before\\. ([0-9.]+) more hours a week").matcher(strip);
        assertTrue(said.find(), strip);
        double more = Double.parseDouble(said.group(1));
        assertTrue(chance(uneven(5 + more, "goal: {by: 2027-02-26}\n")) >= 0.5);
        assertTrue(chance(uneven(5 + more - 0.5, "goal: {by: 2027-02-26}\n")) < 0.5);
    }

    /**
     * By hand, on a square cell of side a: a cross in rows is 2d + 2a of thread with d = 1.41421 a, so 4.82843 a; a half stitch d + a, half
     * of it. 4000 half stitches are 2000 crosses, 20 hours at 100.
     */
    @Test
    void hours_that_are_not_stitches_by_the_hour_are_explained() throws IOException {
        String half = piece("Groyne", "140 x 140", "threads: [{code: N1, stitches: {half: 4000}}]\n");
        byte[] pdf = print(basket(SETTINGS + "goals: {year: 2027, pieces: [piece]}\n", half), "--as-of", "2027-01-01");
        contains(ReadBack.line(pdf, 1), "stitches left · 20 h");
        contains(ReadBack.line(pdf, 2), "Hours are reckoned in full crosses, 100 an hour", "The 4 000 stitches of Groyne are the work of 2 000 crosses.");
        contains(ReadBack.line(print(basket(SETTINGS + "language: de\ngoals: {year: 2027, pieces: [piece]}\n", half), "--as-of", "2027-01-01"), 2), "2\u202f000 Kreuzstiche");
        assertFalse(ReadBack.line(print(basket(SETTINGS + "goals: {year: 2027, pieces: [piece]}\n", half.replace("half", "cross")), "--as-of", "2027-01-01"), 2)
                .contains("full crosses"));
    }

    @Test
    void without_days_of_their_own_pieces_are_finished_in_the_year() throws IOException {
        byte[] pdf = print(uneven(5, ""), "--as-of", "2027-01-01");
        contains(ReadBack.line(pdf, 2), "to finish all");
        assertFalse(ReadBack.line(pdf, 2).contains("wanted earlier"));
    }

    /** A join in the middle of a card would run through its boxes, and the words beside it over them. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"A3, cards: 2 x 2; A4", "A3, cards: 3 x 3; A4", "A2, cards: 2 x 3; A4", "A2, cards: 3 x 3; A4",
        "A3 landscape, cards: 3 x 3; A4", "A4, cards: 3 x 3; A5", "A3, cards: 3 x 3; letter",
        "A3 landscape, cards: 3 x 3; letter", "A2, cards: 3 x 3; letter", "tabloid, cards: 3 x 3; letter"})
    void tiles_are_joined_between_cards_or_where_these_are_blank(String wall, String paper) throws IOException {
        List<String> pieces = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            pieces.add(piece("Groyne " + i, "70 x 70", "coverage: 2000\n"));
        }
        byte[] pdf = print(basket(SETTINGS + "goals: {year: 2027, wall: " + wall + "}\n", pieces.toArray(String[]::new)), "--as-of", "2027-01-01", "--paper", paper);
        int joins = 0;
        for (int page = 1; page < ReadBack.pages(pdf); page++) {
            List<Drawn> drawn = ReadBack.drawn(pdf, page);
            List<Drawn> cards = drawn.stream().filter(it -> it.stroked() && it.stroke() == RULE && it.most(true) - it.least(true) > 40 && it.most(false) - it.least(false) > 40).toList();
            for (Drawn line : drawn.stream().filter(it -> it.operations().equals("ML") && it.stroke() == INK
                    && Math.abs(it.lineWidthMm() - 0.25) < 0.005).toList()) {
                boolean across = Math.abs(line.x(0) - line.x(1)) < 0.01;
                double at = across ? line.x(0) : line.y(0);
                joins++;
                // Boxes are the only closed shapes so low.
                List<Drawn> whole = across ? cards
                        : drawn.stream().filter(it -> it.stroked() && it.operations().endsWith("Z") && it.most(false) - it.least(false) > 4.5 && it.most(false) - it.least(false) < 20).toList();
                assertFalse(whole.stream().anyMatch(shape -> shape.least(across) < at - 0.5 && shape.most(across) > at + 0.5), "page " + page + ": " + at);
            }
        }
        assertTrue(joins > 3, joins + " joins");
    }

    /** A high outline reaches down beside what stands against a piece; on narrow cards that goes on two lines rather than over it. */
    @ParameterizedTest
    @CsvSource({"A5, en", "A5, de", "A4, de"})
    void no_word_of_a_card_lies_on_its_outline(String paper, String language) throws IOException {
        byte[] pdf = print(HARBOUR, "--paper", paper, "--language", language);
        int outlines = 0;
        for (int page = 1; page < ReadBack.pages(pdf); page++) {
            List<Drawn> drawn = ReadBack.drawn(pdf, page);
            for (Drawn outline : drawn.stream().filter(it -> it.filled() && it.stroked() && it.fill() == TINT).toList()) {
                outlines++;
                assertFalse(ReadBack.letters(pdf, page).stream().anyMatch(letter -> !letter.text().isBlank() && letter.x() + letter.width() > outline.least(true) && letter.x() < outline.most(true)
                        && letter.y() > outline.least(false) && letter.y() - 1.4 < outline.most(false)), "page " + page + ": " + outline);
            }
        }
        assertEquals(9, outlines);
    }

    /** Outlines share one scale: 140 x 140 and 70 x 70 stitches on one cloth are 10 and 5 in, two to one. */
    @Test
    void outlines_are_to_one_common_scale() throws IOException {
        byte[] pdf = print(basket(SETTINGS + "goals: {year: 2027, choose: 2}\n", piece("Groyne", "140 x 140", "coverage: 3000\n"),
                piece("Beacon", "70 x 28", "coverage: 1000\n")), "--as-of", "2027-01-01");
        List<Drawn> outlines = ReadBack.drawn(pdf, 1).stream().filter(it -> it.filled() && it.stroked() && it.fill() == TINT)
                .sorted(Comparator.comparingDouble((Drawn it) -> it.most(false) - it.least(false))).toList();
        assertEquals(2, outlines.size());
        double perInch = (outlines.get(1).most(true) - outlines.get(1).least(true)) / 10;
        assertEquals(5 * perInch, outlines.get(0).most(true) - outlines.get(0).least(true), TRUE_MM);
        assertEquals(2 * perInch, outlines.get(0).most(false) - outlines.get(0).least(false), TRUE_MM);
        assertEquals(10 * perInch, outlines.get(1).most(false) - outlines.get(1).least(false), TRUE_MM);
    }

    /**
     * By hand: 885 of 12686 is 6.98 %, 7 and 93; 62 % of 6570 is 4073.4, so 4073, which is 61.99 %; 3 of 1000 and 997 of 1000 are neither
     * nothing nor all; 25 of 1000 is 2.5 %, half up.
     */
    @ParameterizedTest
    @CsvSource({"12686, 885, 7, 93", "6570, 62%, 62, 38", "1000, 3, 1, 99", "1000, 997, 99, 1", "1000, 25, 3, 97"})
    void what_is_done_and_what_is_left_are_a_hundred(int all, String done, int percent, int left) throws IOException {
        Path basket = basket(SETTINGS + "goals: {year: 2027, choose: 1}\n", piece("Groyne", "140 x 140", "progress: " + done + "\nthreads: [{code: N1, stitches: {cross: " + all + "}}]\n"));
        contains(ReadBack.line(print(basket, "--as-of", "2027-01-01"), 1), percent + " % each box 5 %");
        assertEquals(0, Ran.kitleaf("print", basket, "--only", "kit-lists", "--out", folder.resolve("out")).code());
        contains(ReadBack.line(Files.readAllBytes(folder.resolve("out/kit-lists.pdf")), 1), left + " % of this piece is still to be stitched");
    }

    @Test
    void a_piece_finished_in_the_year_is_plainly_done() throws IOException {
        byte[] pdf = print(basket(SETTINGS + "goals: {year: 2027, choose: 2}\n", piece("Groyne", "140 x 140", "coverage: 3000\n"),
                piece("Beacon", "70 x 70", "coverage: 2000\nprogress: {started: 2026-12-01, finished: 2027-02-14}\n")), "--as-of", "2027-03-01");
        contains(ReadBack.line(pdf, 1), "Two to finish", "Beacon", "Finished", "14 February 2027", "100 %");
    }

    /** By hand: 40000 crosses at 1000 a week are 40 weeks; wanted by the end of January, they cannot be had. */
    @Test
    void a_late_piece_says_by_how_much_and_what_would_save_it() throws IOException {
        byte[] pdf = print(basket(SETTINGS + "goals: {year: 2027, pieces: [piece]}\n",
                piece("Groyne", "300 x 300", "coverage: 40000\ngoal: {by: 2027-01-31}\n")), "--as-of", "2027-01-01");
        assertFalse(ReadBack.line(pdf, 1).contains("late"), ReadBack.line(pdf, 1));
        assertTrue(ReadBack.line(pdf, 2).matches(".*Groyne: \\d+ days late for 31 Jan\\. [\\d.]+ more hours a week would save it\\..*"), ReadBack.line(pdf, 2));
    }

    @Test
    void without_a_pace_it_says_what_to_write() throws IOException {
        byte[] pdf = print(basket("goals: {year: 2027, choose: 2}\n", piece("Groyne", "140 x 140", "")));
        contains(ReadBack.line(pdf, ReadBack.pages(pdf)), "There is no pace yet: write hours into the logs");
    }

    @Test
    void without_goals_there_is_no_wall() throws IOException {
        Ran ran = Ran.kitleaf("print", basket("", piece("Groyne", "140 x 140", "")), "--only", "goal-grid", "--out", folder.resolve("out"));
        assertEquals(1, ran.code(), ran.err());
        assertEquals(List.of(), Ran.files(folder.resolve("out")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"A5", "A4", "A3", "A2", "letter", "legal", "tabloid"})
    void the_example_wall_fits_any_paper(String paper) throws IOException {
        byte[] pdf = print(HARBOUR, "--paper", paper);
        for (int page = 1; page <= ReadBack.pages(pdf); page++) {
            double widthMm;
            double heightMm;
            try (PDDocument document = Loader.loadPDF(pdf)) {
                widthMm = document.getPage(page - 1).getMediaBox().getWidth() * 25.4 / 72;
                heightMm = document.getPage(page - 1).getMediaBox().getHeight() * 25.4 / 72;
            }
            for (Drawn drawn : ReadBack.drawn(pdf, page)) {
                assertTrue(drawn.least(true) >= 7.99 && drawn.most(true) <= widthMm - 7.99 && drawn.least(false) >= 7.99
                        && drawn.most(false) <= heightMm - 7.99, paper + ", page " + page + ": " + drawn);
            }
        }
    }

    /**
     * A3 on A4, two cards side by side: by hand, 396 mm less a strip of 8 are two cards of 194 mm, of which a sheet holds one. The left side of
     * each, read from its tile and carried to the wall over the join lines, is where it is on a wall printed whole.
     */
    @Test
    void tiles_laid_join_on_join_give_the_whole_wall() throws IOException {
        Path basket = basket(SETTINGS + "goals: {year: 2027, choose: 2, cards: 2 x 3, wall: A3 landscape}\n", piece("One", "100 x 100", "coverage: 1000\n"),
                piece("Two", "90 x 90", "coverage: 1100\n"));
        List<Double> wholeCards = cards(ReadBack.drawn(print(basket, "--as-of", "2027-01-01", "--paper", "A3 landscape"), 1));
        assertEquals(2, wholeCards.size());
        assertEquals(194 + 8, wholeCards.get(1) - wholeCards.get(0), TRUE_MM);
        byte[] tiled = print(basket, "--as-of", "2027-01-01", "--paper", "A4");
        assertEquals(3, ReadBack.pages(tiled), "two tiles and the year, none blank");
        double wall = 0;
        for (int tile = 1; tile <= 2; tile++) {
            List<Drawn> drawn = ReadBack.drawn(tiled, tile);
            List<Drawn> lines = drawn.stream().filter(it -> it.stroked() && it.stroke() == INK && Math.abs(it.lineWidthMm() - 0.25) < 0.005
                    && it.operations().equals("ML") && Math.abs(it.x(0) - it.x(1)) < 0.01).toList();
            List<Double> joins = lines.stream().map(it -> it.x(0)).sorted().toList();
            assertEquals(1, joins.size());
            assertEquals(tile == 2, lines.get(0).dashMm().isEmpty(), "solid where it is cut, at the left of the second tile");
            double from = tile == 1 ? cards(drawn).get(0) - wholeCards.get(0) : joins.get(0);
            assertEquals(wholeCards.get(tile - 1), cards(drawn).get(0) - from + wall, TRUE_MM);
            wall += joins.get(0) - from;
        }
    }

    /** As the look of the cards asks: a title of a tenth of its card, an outline of two fifths of the side that has least room for it. */
    @ParameterizedTest
    @CsvSource({"A4", "A5", "letter"})
    void one_goal_fills_its_sheet(String paper) throws IOException {
        byte[] pdf = print(basket(SETTINGS + "goals: {year: 2027, choose: 1}\n", piece("Groyne", "140 x 140", "coverage: 3000\n")), "--as-of", "2027-01-01", "--paper", paper);
        List<Drawn> drawn = ReadBack.drawn(pdf, 1);
        Drawn card = drawn.stream().filter(it -> it.stroked() && !it.filled() && it.stroke() == RULE && it.most(false) - it.least(false) > 40).findFirst().orElseThrow();
        Drawn outline = drawn.stream().filter(it -> it.filled() && it.stroked() && it.fill() == TINT).findFirst().orElseThrow();
        double highMm = card.most(false) - card.least(false);
        double widthMm = card.most(true) - card.least(true);
        assertTrue(widthMm * highMm > 0.5 * (paper.equals("A5") ? 148 * 210 : 0.95 * 210 * 297), widthMm + " x " + highMm);
        double part = Math.max((outline.most(false) - outline.least(false)) / highMm, (outline.most(true) - outline.least(true)) / widthMm);
        assertTrue(part > 0.36 && part < 0.42, "outline " + part);
        double titlePt = ReadBack.letters(pdf, 1).stream().filter(it -> it.y() > card.least(false) && !it.text().isBlank())
                .min(Comparator.comparingDouble(it -> it.y())).orElseThrow().sizePt();
        assertTrue(titlePt * 25.4 / 72 > 0.075 * highMm && titlePt * 25.4 / 72 < 0.125 * highMm, titlePt + " pt on " + highMm + " mm");
    }

    private Path many(int number, String settings) throws IOException {
        List<String> titles = List.of("Groyne", "The herring fleet coming home in the evening", "Cormorant Row, number four", "Beacon");
        List<String> charts = List.of("140 x 140", "280 x 90", "90 x 280", "70 x 70");
        List<String> pieces = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            pieces.add(piece(titles.get(i % 4) + (i < 4 ? "" : " " + i), charts.get(i / 2 % 4), "coverage: " + (1200 + 150 * i) + "\n"
                    + (i == 1 ? "progress: {finished: 2027-01-05}\n" : i % 3 == 0 ? "progress: 35%\n" : "")));
        }
        StringBuilder ids = new StringBuilder("piece");
        for (int i = 2; i <= number; i++) {
            ids.append(", piece-").append(i);
        }
        return basket(SETTINGS + "goals: {year: 2027, pieces: [" + ids + "]" + settings + "}\n", pieces.toArray(String[]::new));
    }

    /** Columns and rows as asked for, counted by the sides of the cards; by hand, 273 mm less four strips of 4 are five cards of 51.4. */
    @ParameterizedTest
    @CsvSource({"20, 5 x 4, A3", "12, 2 x 6, A4", "12, 4 x 3, A4"})
    void cards_lie_as_asked(int number, String asked, String paper) throws IOException {
        byte[] pdf = print(many(number, ", cards: " + asked), "--as-of", "2027-01-10", "--paper", paper);
        List<Drawn> cards = ReadBack.drawn(pdf, 1).stream().filter(it -> it.stroked() && !it.filled() && it.stroke() == RULE && it.most(false) - it.least(false) > 25).toList();
        String grid = cards.stream().map(it -> Math.round(it.least(true))).distinct().count() + " x " + cards.stream().map(it -> Math.round(it.least(false))).distinct().count();
        assertEquals(asked, grid);
    }

    /** By hand, A4 lying has (273 - 4 x 4) / 5 = 51.4 mm for a card of five: less than its words take. What is offered is printed. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "paper: A4| | on A4: their words would be smaller than can be read, or cut; write |, or name larger paper or a larger wall",
        "paper: A3| --paper=A4| on A4 (--paper A4): their words would be smaller than can be read, or cut; write |, or name larger "
            + "paper or a larger wall, or leave out --paper A4",
        "paper: A3| --large| on A3 in large print (--large): their words would be smaller than can be read, or cut; write |, or name "
            + "larger paper or a larger wall, or leave out --large",
        "language: de| | auf A4 keinen Platz: Ihre Wörter wären zu klein zum Lesen oder abgeschnitten; schreiben Sie |, oder nennen "
            + "Sie größeres Papier oder eine größere Wand (wall)"})
    void a_grid_without_room_is_a_problem_at_its_place(String setting, String option, String told, String more) throws IOException {
        Path basket = many(20, ", cards: 5 x 4");
        Path settings = basket.resolve("basket.yaml");
        Files.writeString(settings, Files.readString(settings) + setting + "\n");
        List<Object> print = new ArrayList<>(List.of("print", basket, "--as-of", "2027-01-10", "--out", folder.resolve("none")));
        Ran check = Ran.kitleaf("check", basket);
        if (option == null) {
            assertEquals(1, check.code());
        } else {
            assertEquals(0, check.code(), check.err());
            print.add(option);
        }
        Ran ran = Ran.kitleaf(print.toArray());
        assertEquals(1, ran.code());
        for (String err : option == null ? List.of(ran.err(), check.err()) : List.of(ran.err())) {
            String line = err.lines().filter(it -> it.contains("5 x 4")).findFirst().orElseThrow();
            assertTrue(line.matches(".*basket\\.yaml:\\d+:\\d+: 5 x 4 .*") && line.contains(told) && line.endsWith(more), err);
            assertTrue(err.contains("^^^^^\n"), err);
        }
        assertFalse(Files.exists(folder.resolve("none")));
        String offered = ran.err().replaceAll("(?s).*(?:write|schreiben Sie) (\\d+ x \\d+).*", "$1");
        Files.writeString(settings, Files.readString(settings).replace("5 x 4", offered));
        assertEquals(0, Ran.kitleaf(print.toArray()).code(), offered);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"1; --paper A4", "2; --paper letter", "5; --paper A5", "12; --paper A4", "40; --paper A4", "5; --paper A4 --language de",
        "12; --paper A5 --language de", "5; --paper A4 --large", "2; --paper A5 --large --language de", "12; --paper letter --large", "5, wall: A3; --paper A4",
        "12, wall: A2; --paper A4 --language de", "5, wall: A2 landscape; --paper A4 --large", "1, wall: A2; --paper A4", "40, wall: A2; --paper A4", "2, wall: A3; --paper A5"})
    void no_text_of_a_wall_lies_on_another_or_on_a_line(String goals, String options) throws IOException {
        String[] parts = goals.split(",", 2);
        List<Object> more = new ArrayList<>(List.of("--as-of", "2027-01-10"));
        more.addAll(List.of(options.split(" ")));
        byte[] pdf = print(many(Integer.parseInt(parts[0]), parts.length > 1 ? "," + parts[1] : ""), more.toArray());
        int cards = 0;
        for (int page = 1; page <= ReadBack.pages(pdf); page++) {
            List<Drawn> drawn = ReadBack.drawn(pdf, page);
            List<ReadBack.Letter> letters = ReadBack.letters(pdf, page);
            assertEquals(List.of(), TextBoxes.overlaps(letters), "page " + page);
            int here = (int) drawn.stream().filter(it -> it.stroked() && !it.filled() && it.stroke() == RULE && it.operations().endsWith("Z")).count();
            cards += here;
            if (here > 0) {
                assertEquals(List.of(), TextBoxes.struck(letters, drawn), "page " + page);
            } else {
                assertFalse(ReadBack.text(pdf, page).contains("row 1"), "page " + page + " is blank");
            }
        }
        assertEquals(Integer.parseInt(parts[0]), cards);
    }

    /** By hand: 600 hours at 10 a week are 420 days, of which 365 are in 2027; the 55th of 2028 is 24 February. */
    @Test
    void what_is_finished_after_the_year_runs_past_it_to_its_day() throws IOException {
        byte[] pdf = print(basket(SETTINGS + "goals: {year: 2027, pieces: [piece]}\n", piece("Groyne", "300 x 300", "coverage: 60000\n")), "--as-of", "2027-01-01");
        List<ReadBack.Letter> letters = ReadBack.letters(pdf, 2);
        contains(ReadBack.line(pdf, 2), "24 Feb 2028");
        double december = ReadBack.drawn(pdf, 2).stream().filter(it -> it.stroked() && it.stroke() == RULE && it.operations().equals("ML")
                && Math.abs(it.x(0) - it.x(1)) < 0.01).mapToDouble(it -> it.x(0)).max().orElseThrow();
        Drawn arrow = ReadBack.drawn(pdf, 2).stream().filter(it -> it.filled() && it.fill() == INK && it.least(true) > december + 16).findFirst().orElseThrow();
        double day = letters.stream().filter(it -> it.x() > arrow.most(true) && Math.abs(it.y() - arrow.least(false)) < 3).mapToDouble(it -> it.x()).min().orElseThrow();
        assertTrue(day - arrow.most(true) < 2, day + " beside " + arrow);
        assertEquals(List.of(), TextBoxes.struck(letters, List.of(arrow)));
    }

    /** The left sides of the cards. */
    private static List<Double> cards(List<Drawn> drawn) {
        return drawn.stream().filter(it -> it.stroked() && !it.filled() && it.stroke() == RULE && it.most(false) - it.least(false) > 40)
                .map(it -> it.least(true)).distinct().sorted().toList();
    }

    @Test
    void the_same_basket_and_day_give_the_same_bytes() throws IOException {
        byte[] first = print(HARBOUR);
        assertArrayEquals(first, print(HARBOUR));
        assertFalse(java.util.Arrays.equals(first, print(HARBOUR, "--as-of", "2027-06-01")));
    }
}
