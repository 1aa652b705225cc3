package kitleaf.basket.place;

import java.util.Locale;

/** Sets lengths into sentences. */
public final class Millimetres {

    /** Beyond this two lengths are the same to any ruler. */
    private static final int MOST_DECIMALS = 6;

    private Millimetres() {
    }

    /** Two lengths with their unit. */
    public record Pair(String first, String second) {
    }

    /** Two lengths to a tenth of a millimetre, or as much finer as it takes to tell them apart. */
    public static Pair apart(double aMm, double bMm) {
        int decimals = 1;
        while (decimals < MOST_DECIMALS && text(aMm, decimals).equals(text(bMm, decimals))) {
            decimals++;
        }
        return new Pair(text(aMm, decimals), text(bMm, decimals));
    }

    private static String text(double mm, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f mm", mm);
    }
}
