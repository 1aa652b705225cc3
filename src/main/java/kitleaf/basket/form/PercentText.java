package kitleaf.basket.form;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.words.Said;

/**
 * A percentage with its sign, read as a fraction.
 *
 * @param most the greatest fraction taken
 * @param tooMuch the name of the fault of more than that
 * @param example one to show her
 */
public record PercentText(double most, String tooMuch, String example) implements Form<Double> {

    private static final Pattern PERCENT = Pattern.compile("(-?[0-9.,]+)\\s*[%٪％]");
    private static final Pattern BARE = Pattern.compile("([0-9]{1,9}(\\.[0-9]{0,9})?|\\.[0-9]{1,9})");

    /** A share of a whole, up to all of it. */
    public static PercentText share() {
        return new PercentText(1, "percent.whole", "12%");
    }

    /** Whether a text means to be a percentage. */
    static boolean meant(String text) {
        return text.contains("%");
    }

    @Override
    public Double read(String text) throws Fault {
        String stripped = text.strip();
        Matcher percent = PERCENT.matcher(stripped);
        if (percent.matches()) {
            // The fraction is taken in decimal, so that 12% is the double nearest to 0.12.
            double number = NumberText.plain(checked(percent.group(1), stripped), example);
            double fraction = Double.isInfinite(number) ? number
                    : new BigDecimal(percent.group(1)).movePointLeft(2).doubleValue();
            if (number < 0) {
                throw Fault.of(Said.of("percent.negative", Quote.bare(stripped)), outside(stripped).write());
            }
            if (fraction > most) {
                throw outside(stripped);
            }
            return fraction;
        }
        if (BARE.matcher(stripped).matches()) {
            throw Fault.of("percent.sign", Quote.bare(stripped), proposal(new BigDecimal(stripped)));
        }
        throw Fault.of("percent.none", Quote.bare(stripped), example);
    }

    private Fault outside(String text) {
        return Fault.of(tooMuch, Quote.bare(text), BigDecimal.valueOf(most).movePointRight(2).stripTrailingZeros().toPlainString() + "%");
    }

    private static String checked(String number, String whole) throws Fault {
        if (number.indexOf(',') >= 0) {
            throw NumberText.decimalComma(whole);
        }
        return number;
    }

    private static String proposal(BigDecimal number) {
        BigDecimal percent = number.signum() > 0 && number.compareTo(BigDecimal.ONE) < 0 ? number.movePointRight(2) : number;
        return percent.stripTrailingZeros().toPlainString() + "%";
    }

    @Override
    public JsonShape shape() {
        return JsonShape.pattern("([0-9]+(\\.[0-9]*)?|\\.[0-9]+)\\s*[%٪％]", outside("").write());
    }
}
