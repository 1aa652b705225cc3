package kitleaf.words;

import java.util.Locale;

/**
 * A text of somebody else's in a sentence on a screen: signs that would steer the screen are shown by their number, as in
 * {@code \\u202E}, so that it stays in its line and its direction, and what is very long is cut.
 */
public final class Shown {

    /** Longer than any path and any list a sentence has; a screen's height of it at most. */
    private static final int MOST = 2_000;

    private Shown() {
    }

    /** The text in one line, cut after {@value #MOST} characters. */
    public static String inOneLine(String text) {
        StringBuilder shown = new StringBuilder();
        for (int i = 0; i < Math.min(text.length(), MOST); i++) {
            add(text.charAt(i), shown);
        }
        return text.length() > MOST ? shown + "..." : shown.toString();
    }

    private static void add(char c, StringBuilder to) {
        if (steers(c)) {
            to.append(number(c));
        } else {
            to.append(c);
        }
    }

    /** Its number, as Java and JSON write it. */
    public static String number(char c) {
        return "\\u" + Integer.toHexString(0x1_0000 | c).substring(1).toUpperCase(Locale.ROOT);
    }

    /**
     * Whether a character steers a screen, a line or the direction of writing rather than being seen: the controls (Unicode's general
     * category Cc) but for the tab, the separators of lines and paragraphs, the marks, embeddings and isolates of the bidirectional
     * algorithm (Unicode Standard Annex 9, 2.1 to 2.6), and the controls after them that Unicode has given up (23.3).
     */
    public static boolean steers(char c) {
        return c < ' ' && c != '\t' || c >= '\u007F' && c <= '\u009F' || c == '\u061C' || c == '\u200E' || c == '\u200F'
                || c >= '\u2028' && c <= '\u202E' || c >= '\u2066' && c <= '\u206F';
    }
}
