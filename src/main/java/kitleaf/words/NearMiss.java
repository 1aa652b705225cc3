package kitleaf.words;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that was probably meant. */
public final class NearMiss {

    private NearMiss() {
    }

    /**
     * The known word nearest to the one written, if it is near: at most one slip in words of up to four
     * letters, two in longer ones. A slip is a letter added, dropped or changed, or two neighbours swapped
     * (optimal string alignment distance). Of equally near words the first known one is taken.
     */
    public static Optional<String> of(String written, Collection<String> known) {
        String low = written.toLowerCase(Locale.ROOT);
        String best = null;
        int least = Integer.MAX_VALUE;
        for (String word : known) {
            int slips = slipsAllowed(Math.min(low.length(), word.length()));
            if (Math.abs(low.length() - word.length()) > slips) {
                continue;
            }
            int distance = distance(low, word.toLowerCase(Locale.ROOT));
            if (distance <= slips && distance < least && distance < word.length()) {
                best = word;
                least = distance;
            }
        }
        return Optional.ofNullable(best);
    }

    private static int slipsAllowed(int length) {
        return length <= 4 ? 1 : 2;
    }

    static int distance(String a, String b) {
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
