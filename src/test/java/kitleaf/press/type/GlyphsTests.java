package kitleaf.press.type;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.Normalizer;
import org.junit.jupiter.api.Test;

/** Which texts need no look at their composition, against the JDK's own normalizer (Unicode, UAX #15). */
class GlyphsTests {

    @Test
    void what_is_plain_stays_as_it_is_in_any_company() {
        int plain = 0;
        for (char c = 0; c < Character.MAX_VALUE; c++) {
            if (!Glyphs.isPlain(String.valueOf(c))) {
                continue;
            }
            plain++;
            for (char before = 'A'; before <= 'z'; before++) {
                String text = String.valueOf(before) + c;
                assertEquals(text, Normalizer.normalize(text, Normalizer.Form.NFC));
            }
        }
        assertTrue(plain > 1_500, plain + " plain characters");
    }

    @Test
    void marks_and_letters_with_other_forms_are_not_plain() {
        for (String text : new String[] {"e\u0301", "\u212b", "\u2126", "\u2000", "\u2329", "\u1100\u1161", "\u2adc"}) {
            assertFalse(Glyphs.isPlain(text), text);
        }
    }
}
