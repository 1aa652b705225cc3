package kitleaf.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Drawn;
import kitleaf.ReadBack.Letter;
import kitleaf.press.markup.MarkupException;
import org.junit.jupiter.api.Test;

/** Cards on sheets, read back with PDFBox. Places are worked by hand from the sizes in the markup. */
class FlowCardsTests {

    /** Sheets of 100 x 100 mm with two cards of 40 x 40 mm side by side; 2 mm are blank inside a card. */
    private static Pressed cards(String attributes, String slots, String inner) throws Exception {
        return Pressed.markup("<document title=\"t\"><cards width=\"100\" height=\"100\" card-width=\"40\" card-height=\"40\" padding=\"2\" columns=\"2\" font-size=\"10pt\" "
                + attributes + ">" + slots + inner + "</cards></document>", PressSettings.plain());
    }

    private static final String FOLDED = "<slot x=\"5\" y=\"50\" back-x=\"5\" back-y=\"10\" back-turned=\"over\"/><slot x=\"50\" y=\"50\" back-x=\"50\" back-y=\"10\" back-turned=\"over\"/>";
    private static final String BOTH_SIDES = "<slot x=\"5\" y=\"50\" back-x=\"55\" back-y=\"50\"/><slot x=\"50\" y=\"50\" back-x=\"10\" back-y=\"50\"/>";

    private static String square(double side) {
        return "<place width=\"" + side + "\" height=\"" + side + "\"><rect x=\"0\" y=\"0\" width=\"" + side + "\" height=\"" + side + "\"/></place>";
    }

    private static String text(Pressed pressed, int page) throws Exception {
        return ReadBack.text(pressed.bytes, page).strip().replaceAll("\\s+", " ");
    }

    @Test
    void a_folded_back_stands_on_its_head_above_its_front() throws Exception {
        Pressed pressed = cards("", FOLDED, "<card><front>" + square(10) + "</front><back>" + square(6) + "</back></card>");
        assertEquals(1, pressed.report.pages());
        List<Drawn> drawn = ReadBack.drawn(pressed.bytes, 1);
        // The front begins 2 mm inside 5, 50; the back, turned about its middle, ends 2 mm inside the right and lower side of 5, 10.
        assertEquals(7, drawn.get(0).least(true), 0.01);
        assertEquals(52, drawn.get(0).least(false), 0.01);
        assertEquals(5 + 40 - 2, drawn.get(1).most(true), 0.01);
        assertEquals(10 + 40 - 2, drawn.get(1).most(false), 0.01);
    }

    @Test
    void backs_of_a_sheet_lie_on_the_page_behind_it() throws Exception {
        String card = "<card><front>" + square(10) + "</front><back>" + square(6) + "</back></card>";
        Pressed pressed = cards("backs=\"behind\"", BOTH_SIDES, card.repeat(3));
        assertEquals(4, pressed.report.pages());
        assertEquals(2, ReadBack.drawn(pressed.bytes, 1).size());
        List<Drawn> backs = ReadBack.drawn(pressed.bytes, 2);
        assertEquals(57, backs.get(0).least(true), 0.01);
        assertEquals(12, backs.get(1).least(true), 0.01);
        assertEquals(1, ReadBack.drawn(pressed.bytes, 3).size());
    }

    @Test
    void what_has_no_room_goes_on_further_cards_that_count_themselves() throws Exception {
        // 36 mm hold three of 10; seven are shared as evenly as can be over three cards.
        String card = "<card bookmark=\"Groyne\"><front><head><text many=\"only\">\uFDD2 of \uFDD3</text></head>" + square(9).repeat(7) + "</front><back><text>log</text></back></card>";
        Pressed pressed = cards("", FOLDED, card);
        assertEquals(2, pressed.report.pages());
        String all = text(pressed, 1) + " " + text(pressed, 2);
        assertTrue(all.contains("1 of 3") && all.contains("2 of 3") && all.contains("3 of 3"), all);
        assertEquals(7, ReadBack.drawn(pressed.bytes, 1).size() + ReadBack.drawn(pressed.bytes, 2).size());
        Pressed one = cards("", FOLDED, card.replace(square(9).repeat(7), square(9)));
        assertTrue(!text(one, 1).contains(" of "), text(one, 1));
    }

    /** 36 mm hold three squares of 10; of the backs the first is one face of two, and what follows them is blank but for its head. */
    @Test
    void both_sides_know_of_further_cards_and_of_several_faces_each_comes_once() throws Exception {
        Pressed pressed = cards("", FOLDED, "<card><front>" + square(10).repeat(7) + "</front><back>"
                + "<head><text many=\"only\">\uFDD2 of \uFDD3</text></head><text>log</text><text break=\"before\" many=\"only\">lines</text></back></card>");
        assertEquals("1 of 3 log 2 of 3 lines", text(pressed, 1));
        assertEquals("3 of 3", text(pressed, 2));
    }

    /** 36 mm hold no square of 37, so that the first way is not taken. */
    @Test
    void what_takes_the_room_that_is_left_is_one_of_several_ways() throws Exception {
        String rest = "<place width=\"5\" height=\"rest\" every=\"5\"><rect x=\"0\" y=\"0\" width=\"5\" height=\"1\"/></place>";
        Pressed pressed = cards("", FOLDED, "<card><front><either><stack>" + square(37) + rest + "</stack>"
                + "<stack><text>log</text>" + rest + "</stack></either></front></card>");
        assertEquals("log", text(pressed, 1));
        // A line of 10 pt at 1.2 is 4.2 mm; 36 - 4.2 hold six of 5.
        assertEquals(6, ReadBack.drawn(pressed.bytes, 1).size());
    }

    @Test
    void type_shrinks_until_no_head_is_cut_either() throws Exception {
        Pressed pressed = cards("shrink=\"0.5\"", FOLDED,
                "<card><front><head><text font-size=\"20pt\" lines=\"1\">Harbour lights</text></head><text>a</text></front></card>");
        assertTrue(ReadBack.letters(pressed.bytes, 1).get(0).sizePt() < 20);
        assertEquals(List.of(), pressed.warnings());
    }

    @Test
    void more_words_give_way_where_fewer_save_a_card() throws Exception {
        String threads = IntStream.range(0, 6).mapToObj(i -> "<either saves=\"cards\"><stack>" + square(4) + "<text lines=\"1\">K" + i + " Kelp</text></stack><stack>" + square(5)
                + "</stack></either>").collect(Collectors.joining());
        // Two of some 8 mm and more fit with their names beside nothing else: both ways take one card where there is room for the names.
        Pressed roomy = cards("", FOLDED, "<card><front>" + threads.substring(0, threads.length() / 6 * 2) + "</front></card>");
        assertTrue(text(roomy, 1).contains("K1 Kelp"), text(roomy, 1));
        Pressed tight = cards("", FOLDED, "<card><front>" + threads + "</front></card>");
        assertEquals("", text(tight, 1));
        assertEquals(6, ReadBack.drawn(tight.bytes, 1).size());
    }

    @Test
    void type_shrinks_together_until_nothing_is_cut_or_parted() throws Exception {
        Pressed pressed = cards("shrink=\"0.5\"", FOLDED, "<card><front><text font-size=\"20pt\" lines=\"1\">Harbour lights</text><text font-size=\"20pt\">a</text></front></card>");
        List<Letter> letters = ReadBack.letters(pressed.bytes, 1);
        double size = letters.get(0).sizePt();
        assertTrue(size >= 10 && size < 20, size + " pt");
        assertEquals(size, letters.get(letters.size() - 1).sizePt(), 0.001);
        assertTrue(letters.stream().allMatch(it -> it.x() + it.width() <= 43.01), letters.toString());
        assertEquals(List.of(), pressed.warnings());
    }

    @Test
    void a_sheet_has_what_belongs_to_its_side_and_rows() throws Exception {
        String sheets = "<sheet side=\"front\" rows=\"1\"><text x=\"5\" y=\"95\">fronts</text></sheet><sheet side=\"back\"><text x=\"5\" y=\"95\">backs</text></sheet>"
                + "<sheet rows=\"2\"><text x=\"5\" y=\"95\">two rows</text></sheet>";
        Pressed pressed = cards("backs=\"behind\"", BOTH_SIDES, sheets + "<card><front>" + square(4) + "</front></card>");
        assertEquals("fronts", text(pressed, 1));
        assertEquals("backs", text(pressed, 2));
    }

    @Test
    void places_that_are_used_already_are_skipped() throws Exception {
        Pressed pressed = cards("skip=\"1\"", FOLDED, "<card><front>" + square(4) + "</front></card>".repeat(1));
        assertEquals(52, ReadBack.drawn(pressed.bytes, 1).get(0).least(true), 0.01);
    }

    @Test
    void what_stands_in_a_slot_is_drawn_with_the_card_that_lies_there() throws Exception {
        String slots = FOLDED.replace("\"over\"/>", "\"over\"><line x1=\"5\" y1=\"50\" x2=\"45\" y2=\"50\" stroke=\"#000\"/></slot>");
        Pressed pressed = cards("skip=\"1\"", slots, "<card><front>" + square(4) + "</front></card>");
        List<Drawn> drawn = ReadBack.drawn(pressed.bytes, 1);
        assertEquals(2, drawn.size());
        assertEquals(40, drawn.get(1).most(true) - drawn.get(1).least(true), 0.01);
    }

    @Test
    void cards_without_a_place_are_told() {
        MarkupException e = assertThrows(MarkupException.class, () -> cards("", "", "<card><front>" + square(4) + "</front></card>"));
        assertTrue(e.getMessage().contains("slot"), e.getMessage());
    }
}
