package kitleaf.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Drawn;
import kitleaf.ReadBack.Letter;
import kitleaf.press.markup.MarkupException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Blocks that flow, read back with PDFBox. Places are worked by hand from the sizes in the markup; drawings of known sizes stand for content. */
class FlowTests {

    private static final double MM = 0.01;
    private static final String BLACK = "<rect x=\"0\" y=\"0\" width=\"%s\" height=\"%s\"/>";

    /** Pages of 100 x 100 mm with 10 mm round what flows, so 80 x 80 mm for it. */
    private static Pressed flow(String inner) throws Exception {
        return Pressed.markup("<document title=\"t\"><pages width=\"100\" height=\"100\" left=\"10\" right=\"10\" top=\"10\" bottom=\"10\" font-size=\"10pt\">"
                + inner + "</pages></document>", PressSettings.plain());
    }

    private static String block(String attributes, double width, double height) {
        return "<place width=\"" + width + "\" height=\"" + height + "\" " + attributes + ">" + String.format(BLACK, width, height) + "</place>";
    }

    /** The left and top of each drawing, in the order drawn. */
    private static List<String> corners(Pressed pressed, int page) throws Exception {
        List<String> corners = new ArrayList<>();
        for (Drawn drawn : ReadBack.drawn(pressed.bytes, page)) {
            corners.add(Math.round(drawn.least(true) * 100) / 100.0 + " " + Math.round(drawn.least(false) * 100) / 100.0);
        }
        return corners;
    }

    private static String text(Pressed pressed, int page) throws Exception {
        return ReadBack.text(pressed.bytes, page).strip().replaceAll("\\s+", " ");
    }

    @Test
    void a_stack_is_one_below_the_other_with_what_is_blank_between() throws Exception {
        Pressed pressed = flow(block("after=\"3\"", 20, 10) + block("before=\"2\"", 20, 5) + block("", 20, 5));
        // 10; 10 + 10 + 3 + 2; that + 5
        assertEquals(List.of("10.0 10.0", "10.0 25.0", "10.0 30.0"), corners(pressed, 1));
    }

    /** "weeks 25–" has room in 19 mm and "weeks 25–37" has not. */
    @Test
    void a_line_does_not_end_within_a_range_of_numbers() throws Exception {
        List<Letter> letters = ReadBack.letters(flow("<text width=\"19\">weeks 25–37</text>").bytes, 1);
        assertTrue(letters.get(0).y() < letters.get(letters.size() - 1).y(), "two lines");
        assertEquals(1, letters.stream().filter(it -> "25–37".contains(it.text())).mapToDouble(Letter::y).distinct().count());
    }

    @Test
    void columns_have_millimetres_shares_content_and_what_is_left() throws Exception {
        // Of 80 mm: 12 + a quarter of 80 + a drawing of 8 and three gaps of 4 leave 28 to the last.
        Pressed pressed = flow("<row gap=\"4\">" + "<stack width=\"12\">" + block("", 5, 5) + "</stack><stack width=\"25%\">" + block("", 5, 5) + "</stack>"
                + block("", 8, 5) + "<stack width=\"*\"><rule stroke=\"#000\" stroke-width=\"1\"/></stack></row>");
        List<Drawn> drawn = ReadBack.drawn(pressed.bytes, 1);
        assertEquals(10, drawn.get(0).least(true), MM);
        assertEquals(26, drawn.get(1).least(true), MM);
        assertEquals(50, drawn.get(2).least(true), MM);
        assertEquals(62, drawn.get(3).least(true), MM);
        assertEquals(90, drawn.get(3).most(true), MM);
    }

    @Test
    void words_of_a_row_share_a_baseline_and_drawings_stand_at_the_middle_of_its_capitals() throws Exception {
        Pressed pressed = flow("<row gap=\"2\"><text font-size=\"30pt\">H</text><text>x</text>" + block("", 4, 4) + "</row>");
        List<Letter> letters = ReadBack.letters(pressed.bytes, 1);
        assertEquals(letters.get(0).y(), letters.get(1).y(), MM);
        Drawn square = ReadBack.drawn(pressed.bytes, 1).get(0);
        // Capitals of 30 pt are 0.668 x 30 x 25.4 / 72 = 7.07 mm high (cap height of the text face's font file).
        assertEquals(letters.get(0).y() - 7.07 / 2, (square.least(false) + square.most(false)) / 2, 0.02);
    }

    @Test
    void figures_stand_at_the_right_of_the_widest() throws Exception {
        Pressed pressed = flow("<grid columns=\"* auto\"><row><text>a</text><text text-anchor=\"end\">7</text></row>"
                + "<row><text>b</text><text text-anchor=\"end\">1000</text></row></grid>");
        List<Letter> letters = ReadBack.letters(pressed.bytes, 1);
        Letter seven = letters.stream().filter(it -> it.text().equals("7")).findFirst().orElseThrow();
        assertEquals(90, seven.x() + seven.width(), 0.02);
        List<Letter> ones = letters.stream().filter(it -> it.text().matches("[01]")).toList();
        assertEquals(90, ones.get(3).x() + ones.get(3).width(), 0.02);
    }

    @Test
    void pages_fill_and_say_which_they_are() throws Exception {
        // Eight of 10 mm fill 80 mm less a head of 5 and a foot of 5: seven a page; eighteen make three pages.
        String head = "<head>" + block("", 3, 5) + "</head>";
        String foot = "<foot><place width=\"30\" height=\"5\"><text x=\"0\" y=\"4\" font-size=\"8pt\">page \uFDD0 of \uFDD1</text></place></foot>";
        Pressed pressed = flow(head + foot + block("", 20, 10).repeat(18));
        assertEquals(3, pressed.report.pages());
        for (int page = 1; page <= 3; page++) {
            assertEquals("page " + page + " of 3", text(pressed, page));
        }
        assertEquals(8, corners(pressed, 1).size());
        assertEquals("10.0 15.0", corners(pressed, 2).get(1));
    }

    @Test
    void a_heading_is_never_the_last_on_a_page_and_a_break_begins_one() throws Exception {
        Pressed kept = flow(block("", 20, 35) + block("", 20, 35) + block("keep=\"next\"", 30, 5) + block("", 20, 30));
        assertEquals(2, corners(kept, 1).size());
        assertEquals(List.of("10.0 10.0", "10.0 15.0"), corners(kept, 2));
        Pressed broken = flow(block("", 20, 50) + block("break=\"before\"", 20, 30));
        assertEquals(2, broken.report.pages());
    }

    @Test
    void a_last_page_is_worth_turning_to() throws Exception {
        // Eight of 9 mm with 1 mm below fill a page, a ninth would stand alone: set 0.6 as wide apart they are 8 x 9.6 + 9 = 85.8, too much,
        // so two of the others come along until there are 22 mm.
        Pressed pressed = flow(block("after=\"1\"", 20, 9).repeat(9));
        assertEquals(2, pressed.report.pages());
        assertEquals(6, corners(pressed, 1).size());
        assertEquals(3, corners(pressed, 2).size());
        // With 3 mm between, 80 mm hold 6 x 12 + 8: seven blocks of 9, and an eighth if they are set closer: 8 x 9 + 7 x 1.14.
        assertEquals(2, flow(block("after=\"3\"", 20, 9).repeat(8)).report.pages());
        assertEquals(1, flow(block("after=\"1.5\"", 20, 9).repeat(8)).report.pages());
    }

    @Test
    void lines_of_a_text_go_on_over_a_page_but_not_one_alone() throws Exception {
        String words = IntStream.range(0, 200).mapToObj(i -> "word").collect(Collectors.joining(" "));
        Pressed pressed = flow(block("", 20, 60) + "<text together=\"3\">" + words + "</text>");
        assertTrue(pressed.report.pages() > 1);
        int seen = 0;
        for (int page = 1; page <= pressed.report.pages(); page++) {
            long lines = ReadBack.letters(pressed.bytes, page).stream().map(it -> Math.round(it.y() * 10)).distinct().count();
            assertTrue(lines >= 3, lines + " lines on page " + page);
            seen += text(pressed, page).split(" ").length;
        }
        assertEquals(200, seen);
        assertTrue(ReadBack.letters(pressed.bytes, 1).size() > 0, "it begins where there is room");
    }

    @Test
    void headings_of_a_grid_are_repeated_where_it_goes_on() throws Exception {
        String rows = IntStream.range(0, 30).mapToObj(i -> "<row><text>r" + i + ".</text></row>").collect(Collectors.joining());
        Pressed pressed = flow("<grid columns=\"*\"><head><row><text>Heading</text></row></head>" + rows + "</grid><text>end</text>");
        assertTrue(pressed.report.pages() > 1);
        for (int page = 1; page <= pressed.report.pages(); page++) {
            assertTrue(text(pressed, page).startsWith("Heading r"), text(pressed, page));
        }
        String all = text(pressed, 0);
        IntStream.range(0, 30).forEach(i -> assertEquals(2, all.split("r" + i + "\\.", -1).length, "r" + i));
    }

    /** A box of 40 mm leaves 5 and a heading of 5: three rows of 10. Of five the last two are shown, below one of 6 mm for the three before. */
    @Test
    void a_grid_of_last_rows_says_how_many_came_before() throws Exception {
        String rows = IntStream.rangeClosed(1, 5).mapToObj(i -> "<either><row>" + block("", i, 10) + "</row><row>" + block("", 40 + i, 6)
                + "</row></either>").collect(Collectors.joining());
        Pressed pressed = flow("<box most=\"40\"><grid columns=\"*\" rows=\"last\" spare=\"5\"><head><row>" + block("", 70, 5) + "</row></head>"
                + rows + "</grid></box>");
        assertEquals(List.of(70L, 43L, 4L, 5L), widths(pressed));
        assertEquals(List.of("10.0 10.0", "10.0 15.0", "10.0 21.0", "10.0 31.0"), corners(pressed, 1));
        assertEquals(List.of(1L, 2L), widths(flow("<box most=\"40\"><grid columns=\"*\" rows=\"last\">" + rows.substring(0,
                rows.indexOf("</either>", rows.indexOf("</either>") + 1) + 9) + "</grid></box>")));
    }

    private static List<Long> widths(Pressed pressed) throws Exception {
        return ReadBack.drawn(pressed.bytes, 1).stream().map(it -> Math.round(it.most(true) - it.least(true))).toList();
    }

    @ParameterizedTest
    @CsvSource({"20, short", "80, a long way of saying it"})
    void the_first_that_fits_is_said(double width, String said) throws Exception {
        Pressed pressed = flow("<row><stack width=\"" + width + "\"><either><text lines=\"1\">a long way of saying it</text><text lines=\"1\">short</text></either></stack></row>");
        assertEquals(said, text(pressed, 1));
        assertEquals(List.of(), pressed.warnings());
    }

    /** Of 20 mm, then of 5, where the first way with its 60 mm has no room; an id means the latest that has it. */
    @Test
    void what_is_named_is_laid_wherever_it_is_used() throws Exception {
        String use = "<use href=\"#it\"/>";
        String ways = "<row>" + block("id=\"it\"", 5, 4) + use + block("", 50, 1) + "</row>" + use;
        Pressed pressed = flow("<stack><defs><stack id=\"it\">" + block("", 20, 4) + "</stack></defs>" + use
                + "<row><stack width=\"30\"><either>" + ways + "</either></stack></row></stack>");
        assertEquals(List.of(20L, 5L), widths(pressed));
        MarkupException e = assertThrows(MarkupException.class, () -> flow("<stack><use href=\"it\"/></stack>"));
        assertTrue(e.getMessage().contains("\"it\" is not # and the id of a block before it"), e.getMessage());
    }

    @Test
    void a_box_has_padding_a_rule_and_a_least_height() throws Exception {
        Pressed pressed = flow("<box padding=\"4\" least=\"30\" rule=\"#eeeeee\">" + block("", 10, 5) + "</box>" + block("", 10, 5));
        List<Drawn> drawn = ReadBack.drawn(pressed.bytes, 1);
        assertEquals(80, drawn.get(0).most(true) - drawn.get(0).least(true), MM);
        assertEquals(30, drawn.get(0).most(false) - drawn.get(0).least(false), MM);
        assertEquals(14, drawn.get(1).least(true), MM);
        assertEquals(14, drawn.get(1).least(false), MM);
        assertEquals(40, drawn.get(2).least(false), MM);
    }

    @Test
    void what_takes_the_rest_is_drawn_as_often_as_there_is_room() throws Exception {
        // A page of 80 mm less 15 above and 5 below: six of 10 mm.
        Pressed pressed = flow(block("", 20, 15) + "<place width=\"20\" height=\"rest\" every=\"10\">" + String.format(BLACK, 20, 1) + "</place>" + block("", 20, 5));
        assertEquals(8, corners(pressed, 1).size());
        assertEquals("10.0 85.0", corners(pressed, 1).get(7));
    }

    @Test
    void type_in_a_box_is_as_large_as_fits() throws Exception {
        String box = "<box x=\"10\" y=\"10\" width=\"%s\" height=\"20\" shrink=\"0.5\" font-size=\"20pt\"><text lines=\"1\">Harbour lights</text></box>";
        double full = Pressed.page(String.format(box, 100)).letters().get(0).sizePt();
        assertEquals(20, full, MM);
        Pressed narrow = Pressed.page(String.format(box, 32));
        double smaller = narrow.letters().get(0).sizePt();
        double endMm = narrow.letters().stream().mapToDouble(it -> it.x() + it.width()).max().orElseThrow();
        assertTrue(smaller < 20 && smaller >= 10, smaller + " pt");
        // No step of a 32nd larger would have had room.
        assertTrue(endMm <= 42 + MM && (endMm - 10) * (smaller + 20 / 32.0) / smaller > 32, endMm + " mm at " + smaller);
        assertEquals(List.of(), narrow.warnings());
    }

    /** Two of 30 x 20 in a round of 50 across stand 5 mm from its top: 25 mm from its middle to their corners, of 15 and 20. One of 31 has no room. */
    @Test
    void what_stands_in_a_round_is_as_wide_as_the_round_lets_it_be_and_halfway_down() throws Exception {
        String round = "<either><box width=\"50\" shape=\"round\">%s</box><text>no</text></either>";
        Pressed pressed = flow(String.format(round, block("", 30, 20).repeat(2)));
        assertEquals(List.of("20.0 15.0", "20.0 35.0"), corners(pressed, 1));
        assertEquals("no", text(flow(String.format(round, block("", 31, 20) + block("", 30, 20))), 1));
        String words = "slack water by the long groyne and back to the harbour before the lamps are lit on the quay";
        Pressed said = flow("<box width=\"50\" shape=\"round\" text-anchor=\"middle\"><text>" + words + "</text><text>" + words + "</text></box>");
        List<Letter> letters = ReadBack.letters(said.bytes, 1);
        assertTrue(letters.stream().map(Letter::y).distinct().count() > 5);
        assertTrue(letters.stream().allMatch(it -> Math.hypot(it.x() - 35, it.y() - 35) < 25
                && Math.hypot(it.x() + it.width() - 35, it.y() - 35) < 25), letters.toString());
    }

    /** Of 20 mm a drawing takes 10, so that 10 mm are left, in points 10 x 72 / 25.4 = 28.35; sizes are found to a 128th of 20 to 60. */
    @Test
    void what_has_a_least_size_is_as_large_as_all_else_leaves_room_for() throws Exception {
        Pressed pressed = flow("<box most=\"20\" shrink=\"0.5\" line-height=\"1\"><text lines=\"1\" font-size=\"60pt\" fit=\"20pt\" least=\"12pt\">A</text>"
                + block("", 5, 10) + "</box>");
        double sizePt = ReadBack.letters(pressed.bytes, 1).get(0).sizePt();
        assertTrue(sizePt <= 28.36 && sizePt > 28.35 - 40 / 128.0, sizePt + " pt");
    }

    @ParameterizedTest
    @CsvSource({"32, Harbour lights", "15, Harbour"})
    void type_gives_way_before_words_do(double width, String said) throws Exception {
        Pressed pressed = flow("<box width=\"" + width + "\" shrink=\"0.5\" font-size=\"20pt\"><text lines=\"1\">Harbour lights\uFDD4Harbour</text></box>");
        assertEquals(said, text(pressed, 1));
        double sizePt = ReadBack.letters(pressed.bytes, 1).get(0).sizePt();
        assertTrue(sizePt >= 10 && sizePt < 20, sizePt + " pt");
        assertEquals("Harbour lights", text(flow("<text lines=\"1\" font-size=\"20pt\">Harbour lights\uFDD4Harbour</text>"), 1));
    }

    @Test
    void a_line_ends_where_the_text_says() throws Exception {
        List<Letter> letters = ReadBack.letters(flow("<text>1 strand\u2028lot 7</text>").bytes, 1);
        assertEquals(2, letters.stream().mapToDouble(Letter::y).distinct().count());
    }

    /** Lines of 10 pt at 1.2 are 4.23 mm apart: 9 mm hold two. */
    @Test
    void what_may_be_cut_is_cut_to_the_room_it_has_and_told() throws Exception {
        Pressed pressed = flow("<box most=\"9\"><text may=\"cut\" line-height=\"1.2\">" + "word ".repeat(90) + "</text></box>");
        assertEquals(2, ReadBack.letters(pressed.bytes, 1).stream().mapToDouble(Letter::y).distinct().count());
        assertEquals(1, pressed.warnings().size());
        assertTrue(pressed.warnings().get(0).contains("cut short"), pressed.warnings().toString());
    }

    @Test
    void the_last_of_a_stack_may_stand_at_the_foot_of_its_room() throws Exception {
        Pressed pressed = Pressed.page("<box x=\"10\" y=\"10\" width=\"30\" height=\"40\">" + block("", 20, 5) + block("align=\"bottom\"", 20, 5) + "</box>");
        assertEquals(List.of("10.0 10.0", "10.0 45.0"), corners(pressed, 1));
    }

    @Test
    void what_has_no_room_in_its_box_is_told() throws Exception {
        Pressed pressed = Pressed.page("<box x=\"10\" y=\"10\" width=\"30\" height=\"5\"><text>one</text><text>two</text><text>three</text></box>");
        assertEquals(1, pressed.warnings().size());
        assertTrue(pressed.warnings().get(0).contains("one"), pressed.warnings().toString());
    }

    @Test
    void an_empty_text_takes_no_room() throws Exception {
        assertEquals(List.of("10.0 10.0"), corners(flow("<text before=\"9\" after=\"9\"></text>" + block("", 20, 5)), 1));
    }

    @Test
    void pages_stream_however_many_there_are() throws Exception {
        String rows = block("", 20, 9).repeat(4000);
        assertEquals(500, flow(rows).report.pages());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"<text keep=\"yes\">a</text>|keep", "<row><text width=\"wide\">a</text></row>|width", "<place width=\"3\"/>|height",
        "<grid columns=\"12 x\"><row><text>a</text></row></grid>|columns", "<box most=\"-1\"/>|most"})
    void what_cannot_be_read_is_told_with_its_name(String markup, String attribute) {
        MarkupException e = assertThrows(MarkupException.class, () -> flow(markup));
        assertTrue(e.getMessage().contains("\"" + attribute + "\""), e.getMessage());
    }

    /** Of 80 mm what comes after takes 5 + 30, so 45 are left: a drawing of 50 has no room there, one of 40 has; alone the largest has. */
    @Test
    void the_largest_of_several_that_has_the_room_that_is_left_is_taken() throws Exception {
        String sizes = "<either height=\"rest\">" + block("", 60, 50) + block("", 48, 40) + block("", 36, 30) + "</either>";
        String beside = "<row><stack width=\"*\" align=\"top\">" + sizes + "</stack><place width=\"5\" height=\"1\"/></row>";
        for (String row : List.of(sizes, beside)) {
            Pressed pressed = flow(row + block("before=\"5\"", 20, 30));
            assertEquals(List.of("10.0 10.0", "10.0 55.0"), corners(pressed, 1));
            assertEquals(40, ReadBack.drawn(pressed.bytes, 1).get(0).most(false) - 10, MM);
            Pressed parted = flow(row + block("", 20, 60));
            assertEquals(50, ReadBack.drawn(parted.bytes, 1).get(0).most(false) - 10, MM);
            assertEquals(List.of("10.0 10.0"), corners(parted, 2));
        }
    }

    /** Of 80 mm the first way wants 50 + 40, the second 50 + 30. Where neither is, the last may go on over the next page. */
    @Test
    void the_first_of_several_that_fits_on_a_page_is_taken() throws Exception {
        String first = "<stack>" + block("", 60, 50) + block("", 20, 40) + "</stack>";
        String second = "<stack>" + block("", 50, 50) + block("", 20, 30) + "</stack>";
        String either = "<either height=\"page\">" + first + second + block("", 40, 10) + "</either>";
        Pressed pressed = flow(either);
        assertEquals(1, pressed.report.pages());
        assertEquals(60, ReadBack.drawn(pressed.bytes, 1).get(0).most(true), MM);
        assertEquals(2, flow("<either height=\"page\">" + second.replace("30", "31") + first + "</either>").report.pages());
        assertEquals(70, ReadBack.drawn(flow(either.replace(" height=\"page\"", "")).bytes, 1).get(0).most(true), MM);
    }
}
