package kitleaf.press;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import kitleaf.ReadBack;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Whatever is written in a box stays in it, by PDFBox's reckoning of widths. */
class TextInBoxTests {

    private static final double MM = 0.01;

    @Provide
    Arbitrary<String> words() {
        return Arbitraries.strings()
                .withCharRange('a', 'z').withCharRange('A', 'Z').withCharRange('0', '9')
                .withCharRange('\u00C0', '\u017F').withCharRange('\u0391', '\u03A1').withCharRange('\u03B1', '\u03C9')
                .withCharRange('\u0410', '\u044F').withChars(' ', ' ', ' ', '-', '/', '\u2013', '\u00BD', '\u00A0')
                .ofMinLength(1).ofMaxLength(200);
    }

    @Property(tries = 300)
    void textLiesWithinItsBox(@ForAll("words") String text, @ForAll @DoubleRange(min = 3, max = 80) double width,
            @ForAll @IntRange(min = 1, max = 6) int lines, @ForAll @IntRange(min = 0, max = 2) int anchor,
            @ForAll boolean fit) throws Exception {
        String markup = String.format(Locale.ROOT, "<text x=\"100\" y=\"50\" width=\"%.3f\" lines=\"%d\""
                + " font-size=\"14pt\" text-anchor=\"%s\"%s>%s</text>", width, lines,
                List.of("start", "middle", "end").get(anchor), fit ? " fit=\"6pt\"" : "", text);
        double left = 100 - width * anchor / 2;
        Pressed pressed = Pressed.page(markup);
        List<ReadBack.Letter> letters = pressed.letters();
        for (ReadBack.Letter letter : letters) {
            assertTrue(letter.x() >= left - MM, letter + " starts left of " + left);
            assertTrue(letter.x() + letter.width() <= left + width + MM || letter.text().isBlank(),
                    letter + " ends right of " + (left + width));
            assertTrue(letter.sizePt() >= 6 * 0.62 - 0.01, letter + " is too small");
        }
        // Either all of it is there or a warning says so; box drawing is no way out.
        long seen = letters.stream().filter(l -> !l.text().isBlank()).count();
        assertTrue(text.replace('\u00A0', ' ').isBlank() || seen > 0 || !pressed.warnings().isEmpty());
    }
}
