package kitleaf.sheet.page;

/**
 * Numbers as markup has them: with a point, without grouping, to a millionth at most. Lengths are reckoned in doubles, whose
 * last digits are noise ({@code 16.999999999999996}), and noise takes longer to write and to read than the number.
 */
public final class NumberText {

    private static final int DECIMALS = 6;
    private static final int[] TENS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};

    /** Beyond any paper; up to here the whole part is an int. */
    private static final double MOST = 1e9;

    /** A number and how it is written. */
    private record Written(double value, String text) { }

    /**
     * Numbers written lately, each where its bits put it; what stands on a label stands there on the next. A lost write is only made
     * again.
     */
    private static final Written[] LATELY = new Written[512];

    private NumberText() { }

    /** The number as markup has it. */
    public static String of(Number number) {
        if (number instanceof Integer || number instanceof Long) {
            return number.toString();
        }
        double value = number.doubleValue();
        return Math.abs(value) < MOST ? lately(value) : number.toString();
    }

    private static String lately(double value) {
        long bits = Double.doubleToRawLongBits(value) * 0x9E3779B97F4A7C15L;
        int place = (int) (bits >>> 55);
        Written known = LATELY[place];
        if (known == null || known.value() != value) {
            known = new Written(value, of(value, DECIMALS));
            LATELY[place] = known;
        }
        return known.text();
    }

    /**
     * The number to so many decimals, without trailing noughts.
     *
     * @param value below a thousand million
     * @param decimals 0 to 6
     */
    public static String of(double value, int decimals) {
        int one = TENS[decimals];
        double size = Math.abs(value);
        int whole = (int) size;
        int rest = (int) ((size - whole) * one + 0.5);
        if (rest == one) {
            whole++;
            rest = 0;
        }
        if (rest == 0) {
            return Integer.toString(value < 0 ? -whole : whole);
        }
        StringBuilder text = new StringBuilder(16);
        if (value < 0) {
            text.append('-');
        }
        text.append(whole).append('.');
        for (int digit = one / 10; rest != 0; digit /= 10) {
            text.append((char) ('0' + rest / digit));
            rest %= digit;
        }
        return text.toString();
    }
}
