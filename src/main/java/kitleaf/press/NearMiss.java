package kitleaf.press;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;

/** Finds the known word that a mistyped one was probably meant to be. */
final class NearMiss {

    /** More slips than this and it is another word. */
    private static final int MOST_SLIPS = 2;

    private NearMiss() {
    }

    /** The closest known word at most two letters added, left out, changed or swapped away. */
    static Optional<String> of(String word, Collection<String> known) {
        String best = null;
        int least = Math.min(MOST_SLIPS, word.length() - 1) + 1;
        for (String candidate : new TreeSet<>(known)) {
            int slips = slips(word.toLowerCase(Locale.ROOT), candidate);
            if (slips < least) {
                least = slips;
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    /** The tail of a message: {@code ; did you mean "rect"?} or nothing. */
    static String hint(String word, Collection<String> known) {
        return of(word, known).map(near -> "; did you mean \"" + near + "\"?").orElse("");
    }

    /** The optimal string alignment distance (Damerau-Levenshtein without overlapping swaps). */
    private static int slips(String a, String b) {
        if (Math.abs(a.length() - b.length()) > MOST_SLIPS) {
            return MOST_SLIPS + 1;
        }
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
