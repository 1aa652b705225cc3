package kitleaf.basket.place;

import java.util.Locale;
import kitleaf.words.Words;

/** Sets a problem out for a screen. */
public final class ProblemText {

    /** Longer source lines are shown in part. */
    private static final int WIDEST = 160;

    private ProblemText() {
    }

    /**
     * The problem as text: one line {@code file:line:column: wrong; write}, then the source line with carets
     * under what is meant. Problems of a whole file are the one line {@code file: wrong; write}. Lines are
     * parted by LF; there is none at the end.
     *
     * @param words of the language asked for, from {@link BasketWords}
     */
    public static String render(Problem p, Words words) {
        String place = p.line() == 0 ? "" : ":" + p.line() + ":" + column(p);
        String head = Quote.visible(p.file().toString()) + place + ": " + words.say(p.wrong()) + "; " + words.say(p.write());
        return p.source().isEmpty() ? head : head + "\n" + excerpt(p, p.source().get());
    }

    /** The column as she knows it: the characters of a text, the letters over a sheet of a workbook, whose cells are parted by tabs. */
    private static String column(Problem p) {
        if (!WorkbookName.is(p.file().toString())) {
            return String.valueOf(p.column());
        }
        String before = p.source().orElse("");
        int cell = 1 + (int) before.substring(0, offset(before, 0, p.column() - 1)).chars().filter(c -> c == '\t').count();
        return (cell > 26 ? Character.toString('A' + (cell - 1) / 26 - 1) : "") + Character.toString('A' + (cell - 1) % 26);
    }

    private static String excerpt(Problem p, String source) {
        // Only the part that is shown is looked at: a hostile line of a megabyte may hold a thousand problems.
        int column = Math.min(p.column() - 1, source.length());
        boolean all = source.length() <= WIDEST;
        int from = all ? 0 : Math.max(0, column - WIDEST / 2);
        int start = offset(source, 0, from);
        int end = all ? source.length() : offset(source, start, WIDEST);
        int[] line = Quote.visible(source.substring(start, end)).codePoints().toArray();
        int mark = Math.min(column - from, line.length);
        int carets = Math.max(1, Math.min(p.length(), line.length - mark));

        StringBuilder under = new StringBuilder(from > 0 ? " " : "");
        for (int i = 0; i < mark; i++) {
            if (line[i] == '\t') {
                under.append('\t');
            } else if (Character.getType(line[i]) != Character.NON_SPACING_MARK) {
                under.append(' ');
            }
        }
        under.append("^".repeat(carets));
        String shown = (from > 0 ? "…" : "") + new String(line, 0, line.length) + (end < source.length() ? "…" : "");
        String number = String.format(Locale.ROOT, "%4d", p.line());
        return number + " | " + shown + "\n" + " ".repeat(number.length()) + " | " + under;
    }

    /** The index so many characters after another one, or the end. */
    private static int offset(String text, int start, int characters) {
        int index = start;
        for (int i = 0; i < characters && index < text.length(); i++) {
            index += Character.charCount(text.codePointAt(index));
        }
        return index;
    }
}
