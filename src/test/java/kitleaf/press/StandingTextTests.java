package kitleaf.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import kitleaf.ReadBack;
import org.junit.jupiter.api.Test;

/** Text that was set before is taken as it stands: nobody may see that. */
class StandingTextTests {

    private static final String CUT = "<text x=\"10\" y=\"20\" width=\"20\" font-size=\"9pt\">Lighthouse keeper's almanac</text>";

    private static String page(String inner) {
        return "<page width=\"210\" height=\"297\">" + inner + "</page>";
    }

    private static Pressed pages(String... pages) throws Exception {
        StringBuilder markup = new StringBuilder("<document title=\"t\">");
        for (String inner : pages) {
            markup.append(page(inner));
        }
        return Pressed.markup(markup.append("</document>").toString(), PressSettings.plain());
    }

    @Test
    void it_is_drawn_and_warned_of_on_each_page() throws Exception {
        Pressed pressed = pages(CUT, CUT);
        assertEquals(ReadBack.letters(pressed.bytes, 1), ReadBack.letters(pressed.bytes, 2));
        assertTrue(ReadBack.letters(pressed.bytes, 2).size() > 5);
        List<String> warnings = pressed.warnings();
        assertEquals(2, warnings.size(), warnings.toString());
        assertEquals(warnings.get(0).replace("page 1", "page 2"), warnings.get(1));
    }

    @Test
    void the_same_words_in_another_box_size_or_anchor_are_set_anew() throws Exception {
        String other = "<text x=\"10\" y=\"20\" width=\"100\" font-size=\"9pt\">Lighthouse keeper's almanac</text>";
        String larger = "<text x=\"10\" y=\"20\" width=\"20\" font-size=\"12pt\">Lighthouse keeper's almanac</text>";
        String right = "<text x=\"10\" y=\"20\" width=\"20\" font-size=\"9pt\" text-anchor=\"end\">Lighthouse keeper's almanac</text>";
        String lines = "<text x=\"10\" y=\"20\" width=\"20\" lines=\"3\" font-size=\"9pt\">Lighthouse keeper's almanac</text>";
        Pressed together = pages(CUT, other, larger, right, lines);
        int number = 1;
        for (String alone : List.of(CUT, other, larger, right, lines)) {
            assertEquals(ReadBack.letters(pages(alone).bytes, 1), ReadBack.letters(together.bytes, number), alone);
            number++;
        }
    }

    @Test
    void more_texts_and_colours_than_are_kept_are_all_drawn() throws Exception {
        StringBuilder many = new StringBuilder();
        int texts = 2_500;
        for (int i = 0; i < texts; i++) {
            many.append(String.format(Locale.ROOT, "<text x=\"1\" y=\"%d\" font-size=\"9pt\" fill=\"#%06x\">K%04d</text>", 10 + i % 250, i, i));
        }
        Pressed pressed = pages(many.toString() + many);
        assertEquals(2 * 5 * texts, ReadBack.letters(pressed.bytes, 1).size());
    }
}
