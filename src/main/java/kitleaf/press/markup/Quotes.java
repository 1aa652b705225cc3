package kitleaf.press.markup;


/**
 * Apostrophes and quotation marks as a language's typography has them, for straight ones in a text (Unicode CLDR, delimiters of en and
 * de; the apostrophe is U+2019, The Unicode Standard, 6.2). What follows a figure stays straight: it is an inch or a foot.
 *
 * @param signs opening and closing, then the same within others
 */
public record Quotes(String signs) {

    /** What has no quotation marks of its own here has those of English. */
    static final Quotes ENGLISH = new Quotes("“”‘’");
    private static final Quotes GERMAN = new Quotes("„“‚‘");

    /** Straight signs that are to stay so, as in a code: noncharacters in the markup, like those of {@code Counters}. */
    private static final String KEPT = "\uFDD5\uFDD6";
    private static final String STRAIGHT = "'\"";
    private static final String OPENS = "([{<–—-/·+'\"\uFDD4";

    /** The marks of a language, by its tag. */
    public static Quotes of(String language) {
        return language.equals("de") || language.startsWith("de-") ? GERMAN : ENGLISH;
    }

    /** A text with its marks set, sign for sign. */
    public String set(String text) {
        StringBuilder set = null;
        boolean[] open = new boolean[STRAIGHT.length()];
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\'' || c == '"' || c >= '\uFDD4' && c <= '\uFDD6') {
                set = set == null ? new StringBuilder(text) : set;
                set.setCharAt(i, KEPT.indexOf(c) >= 0 ? STRAIGHT.charAt(KEPT.indexOf(c)) : set(text, i, open));
            }
        }
        return set == null ? text : set.toString();
    }

    /** A text as it may have been typed, for a screen: straight marks and hyphens. */
    public static String straight(String set) {
        return set.replaceAll("[‘’‚]", "'").replaceAll("[“”„]", "\"").replace('\u2011', '-');
    }

    private char set(String text, int i, boolean[] open) {
        char c = text.charAt(i);
        int kind = STRAIGHT.indexOf(c);
        if (kind < 0) {
            // Another way to say the text begins.
            open[0] = false;
            open[1] = false;
            return c;
        }
        boolean single = kind == 0;
        int from = single ? 2 : 0;
        if (begins(text, i)) {
            if (single ? closer(text, i) : i + 1 < text.length() && !blank(text.charAt(i + 1))) {
                open[kind] = true;
                return signs.charAt(from);
            }
        } else if (figure(text.charAt(i - 1)) && !(single ? text.startsWith("s", i + 1) : open[kind] && !closedLater(text, i))) {
            return c;
        }
        if (!open[kind] || single && letter(text, i + 1)) {
            return single ? '’' : begins(text, i) ? c : signs.charAt(1);
        }
        open[kind] = false;
        return signs.charAt(from + 1);
    }

    /** Whether what was opened is closed by the next mark, so that the one here is an inch. */
    private static boolean closedLater(String text, int i) {
        int next = text.indexOf('"', i + 1);
        return next > 0 && !begins(text, next);
    }

    /** Whether a single mark that may open is closed behind a word of more than one letter; else it stands for letters left out. */
    private static boolean closer(String text, int i) {
        for (int j = text.indexOf('\'', i + 3); j > 0; j = text.indexOf('\'', j + 1)) {
            if (!begins(text, j) && !letter(text, j + 1) && !figure(text.charAt(j - 1))) {
                return letter(text, i + 1);
            }
        }
        return false;
    }

    private static boolean begins(String text, int i) {
        return i == 0 || blank(text.charAt(i - 1)) || OPENS.indexOf(text.charAt(i - 1)) >= 0;
    }

    private static boolean letter(String text, int i) {
        return i < text.length() && Character.isLetterOrDigit(text.charAt(i));
    }

    private static boolean blank(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    private static boolean figure(char c) {
        return Character.isDigit(c) || Character.getType(c) == Character.OTHER_NUMBER;
    }
}
