package kitleaf.baskets;

import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Draws values by a seed: equal seeds, equal values. */
final class Draw {

    private static final List<String> SYLLABLES = List.of("tide", "rope", "knot", "lamp", "fog", "gull", "wrack", "keel", "mole", "quay",
            "spar",
            "buoy", "Möwe", "Anker", "Düne", "Ebbe", "Watt", "Priel", "Κύμα", "Якорь");

    private final Random random;

    Draw(long seed) {
        random = new Random(seed);
    }

    /** True once in so many times. */
    boolean once(int in) {
        return random.nextInt(in) == 0;
    }

    /** A whole number, both ends counted in. */
    int whole(int from, int to) {
        return from + random.nextInt(to - from + 1);
    }

    /** A whole number whose logarithm is even between those of both ends: as many from 1 to 10 as from 10 to 100. */
    int log(int from, int to) {
        return (int) Math.min(to, Math.floor(from * Math.pow((to + 1.0) / from, random.nextDouble())));
    }

    /** A number with one decimal. */
    String tenths(double from, double to) {
        return String.format(Locale.ROOT, "%.1f", from + random.nextDouble() * (to - from));
    }

    @SafeVarargs
    final <T> T of(T... all) {
        return all[random.nextInt(all.length)];
    }

    /** A length of cloth or paper in one of the ways they are written, from about nothing; more short ones than long. */
    String length(double mostMm) {
        double mm = random.nextDouble() * log(1, (int) mostMm);
        return switch (whole(0, 2)) {
            case 0 -> String.format(Locale.ROOT, "%.1f cm", mm / 10);
            case 1 -> Math.round(mm) + " mm";
            default -> (int) (mm / 25.4) + " " + whole(1, 7) + "/8 in";
        };
    }

    /** Words without a figure in them, so that a figure on a sheet is none of hers. */
    String words(int most) {
        StringBuilder words = new StringBuilder();
        int number = log(1, most);
        for (int i = 0; i < number; i++) {
            String word = syllable() + (once(6) ? syllable().toLowerCase(Locale.ROOT) : "");
            words.append(i == 0 ? Character.toUpperCase(word.charAt(0)) + word.substring(1) : " " + word);
        }
        return words.toString();
    }

    private String syllable() {
        return SYLLABLES.get(random.nextInt(SYLLABLES.size()));
    }

    /** A day of these years. */
    String day(int fromYear, int toYear) {
        return String.format(Locale.ROOT, "%04d-%02d-%02d", whole(fromYear, toYear), whole(1, 12), whole(1, 28));
    }
}
