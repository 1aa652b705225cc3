package kitleaf.sheet.page;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/**
 * Fractions of large print, in figures of full size with a slash between them: those set as fractions have figures of six tenths,
 * which would be the smallest on the page. Layouts and templates write fractions as ever; what is measured and what is
 * printed has another slash, which the press does not set small.
 */
public final class FullFractions implements TextRuler {

    private static final char FRACTION_SLASH = '\u2044';
    private static final char DIVISION_SLASH = '\u2215';

    private final TextRuler ruler;

    private FullFractions(TextRuler ruler) {
        this.ruler = ruler;
    }

    /** Settings that measure fractions as large print sets them; ordinary settings as they are. */
    public static SheetSettings in(SheetSettings settings) {
        return !settings.type().large() || settings.ruler() instanceof FullFractions ? settings
                : new SheetSettings(settings.paper(), settings.units(), settings.type(), settings.skip(), settings.asOf(),
                        settings.language(), new FullFractions(settings.ruler()));
    }

    /** A writer that puts the other slash into markup. */
    public static Writer into(Writer out) {
        return new FilterWriter(out) {
            @Override
            public void write(int c) throws IOException {
                super.write(c == FRACTION_SLASH ? DIVISION_SLASH : c);
            }

            @Override
            public void write(char[] characters, int from, int length) throws IOException {
                write(new String(characters, from, length), 0, length);
            }

            @Override
            public void write(String text, int from, int length) throws IOException {
                super.write(full(text), from, length);
            }
        };
    }

    private static String full(String text) {
        return text.replace(FRACTION_SLASH, DIVISION_SLASH);
    }

    @Override
    public int codeModules(String text) {
        return ruler.codeModules(text);
    }

    @Override
    public int lines(String text, String family, int weight, double sizePt, double widthMm) {
        return ruler.lines(full(text), family, weight, sizePt, widthMm);
    }

    @Override
    public double widthMm(String text, String family, int weight, double sizePt) {
        return ruler.widthMm(full(text), family, weight, sizePt);
    }
}
