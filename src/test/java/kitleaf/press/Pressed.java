package kitleaf.press;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Drawn;
import kitleaf.ReadBack.Letter;
import kitleaf.press.markup.MarkupException;
import kitleaf.press.markup.PressWords;

/**
 * A document pressed for a test and read back with PDFBox.
 */
final class Pressed {

    final byte[] bytes;
    final PressReport report;

    private Pressed(byte[] bytes, PressReport report) {
        this.bytes = bytes;
        this.report = report;
    }

    static Pressed markup(String markup, PressSettings settings) throws MarkupException, IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PressReport report = Press.press(new StringReader(markup), out, settings);
        return new Pressed(out.toByteArray(), report);
    }

    /** One A4 page with this in it. */
    static Pressed page(String inner, PressSettings settings) throws MarkupException, IOException {
        return markup("<document title=\"t\"><page width=\"210\" height=\"297\">" + inner + "</page></document>",
                settings);
    }

    static Pressed page(String inner) throws MarkupException, IOException {
        return page(inner, PressSettings.plain());
    }

    /** What was warned of, in English. */
    List<String> warnings() {
        return report.warnings().stream().map(PressWords.in(Locale.ENGLISH)::say).toList();
    }

    static PressSettings corrected(double across, double down) {
        return new PressSettings(across, down, Optional.empty(), page -> { });
    }

    List<Drawn> drawn() throws IOException {
        return ReadBack.drawn(bytes, 1);
    }

    Drawn onlyDrawn() throws IOException {
        List<Drawn> all = drawn();
        if (all.size() != 1) {
            throw new AssertionError("one path expected: " + all);
        }
        return all.get(0);
    }

    List<Letter> letters() throws IOException {
        return ReadBack.letters(bytes, 0);
    }

    String text() throws IOException {
        return ReadBack.text(bytes, 0);
    }
}
