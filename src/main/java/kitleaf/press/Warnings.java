package kitleaf.press;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Gathers what the reader of the sheet should know. Bounded, however many pages there are. */
final class Warnings {

    /** More than this nobody reads. */
    private static final int MOST = 500;

    /** How much of a text is quoted. */
    private static final int QUOTED = 80;

    private final List<String> list = new ArrayList<>();
    private final Set<Integer> missing = new HashSet<>();
    private int more;

    void cut(int page, String whole, String kept) {
        add("page " + page + ": " + (kept.isEmpty()
                ? "no room for \"" + quoted(whole) + "\""
                : "\"" + quoted(whole) + "\" was cut short to \"" + quoted(kept) + "\""));
    }

    /** Names the glyph's characters that no bundled face has, each once in a document. */
    void missing(int page, Glyph glyph) {
        glyph.text().codePoints().filter(c -> !Typefaces.canDraw(c)).filter(missing::add).forEach(c -> {
            String name = Character.getName(c);
            add("page " + page + ": no bundled face has \"" + Character.toString(c) + "\" ("
                    + String.format(Locale.ROOT, "U+%04X", c) + (name == null ? "" : " " + name)
                    + "); a box was drawn for it");
        });
    }

    /** A code whose modules are smaller on paper than printers do well; the size is rounded down. */
    void fine(int page, String text, double moduleMm, double leastMm) {
        add("page " + page + ": the code of \"" + quoted(text.replace('\n', ' ')) + "\" has modules of "
                + String.format(Locale.ROOT, "%.2f", Math.floor(moduleMm * 100) / 100) + " mm, and below "
                + String.format(Locale.ROOT, "%.2f", leastMm)
                + " mm it may not be readable when printed; shorten the text or enlarge the code");
    }

    List<String> list() {
        List<String> all = new ArrayList<>(list);
        if (more > 0) {
            all.add("and " + more + " more");
        }
        return all;
    }

    private void add(String warning) {
        if (list.size() < MOST) {
            list.add(warning);
        } else {
            more++;
        }
    }

    private static String quoted(String text) {
        return text.codePointCount(0, text.length()) <= QUOTED ? text
                : text.substring(0, text.offsetByCodePoints(0, QUOTED)) + "...";
    }
}
