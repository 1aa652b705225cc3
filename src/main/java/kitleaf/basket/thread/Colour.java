package kitleaf.basket.thread;

import java.util.Objects;

/**
 * An sRGB colour as the stitcher wrote it.
 *
 * @param hex {@code #rrggbb} in lower case
 */
public record Colour(String hex) {

    public static final int DIGITS = 6;

    /** Refuses anything but {@code #} and six hexadecimal digits in lower case. */
    public Colour {
        Objects.requireNonNull(hex);
        if (!isHex(hex, DIGITS)) {
            throw new IllegalArgumentException("colour must be #rrggbb: " + hex);
        }
    }

    /** Whether a text is {@code #} and so many hexadecimal digits in lower case. */
    public static boolean isHex(String text, int digits) {
        if (text.length() != digits + 1 || text.charAt(0) != '#') {
            return false;
        }
        for (int i = 1; i <= digits; i++) {
            char c = text.charAt(i);
            if (!(c >= '0' && c <= '9' || c >= 'a' && c <= 'f')) {
                return false;
            }
        }
        return true;
    }
}
