package kitleaf.basket;

import java.util.regex.Pattern;

/**
 * A whole number in digits alone.
 *
 * @param least the least taken
 * @param most the most taken
 * @param example one to show her
 */
record WholeText(int least, int most, String example) implements Form<Integer> {

    /** Nobody counts further; a thousand full-coverage charts stay below it. */
    static final int MOST = 1_000_000_000;

    private static final Pattern DIGITS = Pattern.compile("[0-9]+");
    private static final Pattern GROUPED = Pattern.compile("[0-9]{1,3}([,.'’_ \u00a0\u202f][0-9]{3})+|[0-9]+(_[0-9]+)+");

    /** Any number of stitches from 0. */
    static WholeText stitches() {
        return new WholeText(0, MOST, "2310");
    }

    @Override
    public Integer read(String text) throws Fault {
        String stripped = text.strip();
        if (GROUPED.matcher(stripped).matches()) {
            throw Fault.of("whole.mark", Quote.bare(stripped), Quote.bare(stripped.replaceAll("[^0-9]", "")));
        }
        if (stripped.matches("-[0-9]+")) {
            throw outside(stripped);
        }
        if (!DIGITS.matcher(stripped).matches()) {
            throw Fault.of("whole.none", Quote.bare(stripped), example);
        }
        String digits = stripped.replaceFirst("^0+(?=[0-9])", "");
        if (digits.length() > 10 || Long.parseLong(digits) > most || Long.parseLong(digits) < least) {
            throw outside(stripped);
        }
        return Integer.parseInt(digits);
    }

    private Fault outside(String text) {
        return Fault.of("whole.range", Quote.bare(text), least, most);
    }

    @Override
    public JsonShape shape() {
        return JsonShape.whole(least, most);
    }
}
