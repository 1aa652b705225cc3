package kitleaf.basket.yaml;

/** Tells blanks that only look like the one YAML knows; text copied from a page has them. */
final class FalseBlank {

    private static final String KIN = "\u00a0\u2007\u202f\u3000";

    private FalseBlank() { }

    /** Whether a text begins with one, perhaps after plain blanks. */
    static boolean begins(String text) {
        // Asked of every key of a basket, so without a pattern.
        int first = 0;
        while (first < text.length() && text.charAt(first) == ' ') {
            first++;
        }
        return first < text.length() && KIN.indexOf(text.charAt(first)) >= 0;
    }
}
