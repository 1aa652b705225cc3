package kitleaf.basket.place;

import java.text.Normalizer;

/** Sets what she wrote into a sentence. */
public final class Quote {

    private static final int MOST = 40;

    private Quote() {
    }

    /**
     * Her text, cut short after {@value #MOST} characters, with signs that do not show made visible. Quotation marks
     * are the phrase's, since each language has its own.
     */
    public static String bare(String text) {
        String shown = visible(text.strip());
        if (shown.codePointCount(0, shown.length()) > MOST) {
            shown = shown.substring(0, shown.offsetByCodePoints(0, MOST)) + "…";
        }
        return shown;
    }

    /** A text in which every control character but the tab is a replacement character, one for one. */
    public static String visible(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().forEach(c -> shown.appendCodePoint(c != '\t' && hidden(c) ? 0xFFFD : c));
        return shown.toString();
    }

    /** Whether a character steers a screen, a line or the direction of writing, or is none at all, rather than being seen. */
    public static boolean hidden(int character) {
        int type = Character.getType(character);
        return type == Character.CONTROL || type == Character.SURROGATE
                || (character & 0xFFFE) == 0xFFFE
                || character == 0x2028 || character == 0x2029
                || (character >= 0x202A && character <= 0x202E)
                || (character >= 0x2066 && character <= 0x2069);
    }

    /** Whether a text has such a character. */
    public static boolean hides(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if ((c < ' ' || c > '~') && hidden(text.codePointAt(i))) {
                return true;
            }
            if (Character.isHighSurrogate(c)) {
                i++;
            }
        }
        return false;
    }

    /** A text composed to one form, so that the same letters are the same text (Unicode NFC). */
    public static String composed(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFC);
    }
}
