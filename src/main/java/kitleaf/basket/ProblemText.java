package kitleaf.basket;

import java.util.Locale;

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
     */
    public static String render(Problem p) {
        String place = p.line() == 0 ? "" : ":" + p.line() + ":" + p.column();
        String head = Quote.visible(p.file().toString()) + place + ": " + p.wrong() + "; " + p.write();
        return p.source().isEmpty() ? head : head + "\n" + excerpt(p, p.source().get());
    }

    private static String excerpt(Problem p, String source) {
        int[] line = Quote.visible(source).codePoints().toArray();
        int mark = Math.min(p.column() - 1, line.length);
        int from = line.length <= WIDEST ? 0 : Math.max(0, Math.min(mark - WIDEST / 2, line.length - WIDEST));
        int to = Math.min(line.length, from + WIDEST);
        int carets = Math.max(1, Math.min(p.length(), to - mark));

        StringBuilder under = new StringBuilder(from > 0 ? " " : "");
        for (int i = from; i < mark; i++) {
            if (line[i] == '\t') {
                under.append('\t');
            } else if (Character.getType(line[i]) != Character.NON_SPACING_MARK) {
                under.append(' ');
            }
        }
        under.append("^".repeat(carets));
        String shown = (from > 0 ? "…" : "") + new String(line, from, to - from) + (to < line.length ? "…" : "");
        String number = String.format(Locale.ROOT, "%4d", p.line());
        return number + " | " + shown + "\n" + " ".repeat(number.length()) + " | " + under;
    }
}
