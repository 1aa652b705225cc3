package kitleaf.press.type;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import kitleaf.press.markup.Quotes;
import kitleaf.words.Said;

/** Gathers what the reader of the sheet should know. Bounded, however many pages there are. */
public final class Warnings {

    /** More than this nobody reads. */
    private static final int MOST = 500;

    /** How much of a text is quoted: of a longer one its two ends, since what is lost is lost at its end. */
    private static final int QUOTED = 80;

    private final List<Said> list = new ArrayList<>();
    private final Set<Integer> missing = new HashSet<>();
    private int more;

    public void cut(int page, String whole, String kept) {
        add(kept.isEmpty() ? Said.of("warning.no-room", page, quoted(whole))
                : Said.of("warning.cut", page, quoted(whole), quoted(kept)));
    }

    /** Names the glyph's characters that no bundled face has, each once in a document. */
    void missing(int page, Glyph glyph) {
        glyph.text().codePoints().filter(c -> !Typefaces.canDraw(c)).filter(missing::add).forEach(c -> {
            String name = Character.getName(c);
            String number = String.format(Locale.ROOT, "U+%04X", c);
            add(Said.of("warning.missing", page, Character.toString(c), name == null ? number : number + " " + name));
        });
    }

    /** A code whose modules are smaller on paper than printers do well; the size is rounded down. */
    public void fine(int page, String text, double moduleMm, double leastMm) {
        add(Said.of("warning.fine", page, quoted(text.replace('\n', ' ')),
                String.format(Locale.ROOT, "%.2f", Math.floor(moduleMm * 100) / 100), String.format(Locale.ROOT, "%.2f", leastMm)));
    }

    public List<Said> list() {
        List<Said> all = new ArrayList<>(list);
        if (more > 0) {
            all.add(Said.of("warning.more", more));
        }
        return all;
    }

    private void add(Said warning) {
        if (list.size() < MOST) {
            list.add(warning);
        } else {
            more++;
        }
    }

    private static String quoted(String set) {
        String text = Quotes.straight(set);
        int length = text.codePointCount(0, text.length());
        return length <= QUOTED ? text : text.substring(0, text.offsetByCodePoints(0, QUOTED / 2)) + " ... "
                + text.substring(text.offsetByCodePoints(0, length - QUOTED / 2));
    }
}
