package kitleaf.basket.form;

import java.util.regex.Pattern;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;

/**
 * A whole number in digits alone.
 *
 * @param least the least taken
 * @param most the most taken
 * @param example one to show her
 */
public record WholeText(int least, int most, String example) implements Form<Integer> {

    /** Nobody counts further; a thousand full-coverage charts stay below it. */
    public static final int MOST = 1_000_000_000;

    private static final Pattern GROUPED = Pattern.compile("[0-9]{1,3}([,.'’_ \u00a0\u202f][0-9]{3})+|[0-9]+(_[0-9]+)+");

    /** Any number of stitches from 0. */
    public static WholeText stitches() {
        return new WholeText(0, MOST, "2310");
    }

    @Override
    public Integer read(String text) throws Fault {
        String stripped = text.strip();
        if (!digits(stripped, 0)) {
            throw notDigits(stripped);
        }
        int from = 0;
        while (from < stripped.length() - 1 && stripped.charAt(from) == '0') {
            from++;
        }
        String digits = stripped.substring(from);
        if (digits.length() > 10 || Long.parseLong(digits) > most || Long.parseLong(digits) < least) {
            throw outside(stripped);
        }
        return Integer.parseInt(digits);
    }

    /** Whether there is nothing but digits, and one at least. */
    private static boolean digits(String text, int from) {
        for (int i = from; i < text.length(); i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return from < text.length();
    }

    private Fault notDigits(String text) {
        if (GROUPED.matcher(text).matches()) {
            return Fault.of("whole.mark", Quote.bare(text), Quote.bare(text.replaceAll("[^0-9]", "")));
        }
        return text.startsWith("-") && digits(text, 1) ? outside(text) : Fault.of("whole.none", Quote.bare(text), example);
    }

    private Fault outside(String text) {
        return Fault.of("whole.range", Quote.bare(text), least, most);
    }

    @Override
    public JsonShape shape() {
        return JsonShape.whole(least, most);
    }
}
