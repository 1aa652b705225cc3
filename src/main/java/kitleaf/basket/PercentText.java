package kitleaf.basket;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A percentage with its sign, read as a fraction.
 *
 * @param most the greatest fraction taken
 * @param tooMuch what is wrong with more than that, after the value
 * @param range what to write instead of what is out of range
 * @param example one to show her
 */
record PercentText(double most, String tooMuch, String range, String example) implements Form<Double> {

    private static final Pattern PERCENT = Pattern.compile("(-?[0-9.,]+)\\s*[%٪％]");
    private static final Pattern BARE = Pattern.compile("([0-9]{1,9}(\\.[0-9]{0,9})?|\\.[0-9]{1,9})");

    /** A percentage from 0. */
    PercentText(double most, String tooMuch, String example) {
        this(most, tooMuch, "write 0% to " + BigDecimal.valueOf(most).movePointRight(2).stripTrailingZeros().toPlainString() + "%", example);
    }

    /** A share of a whole, up to all of it. */
    static PercentText share() {
        return new PercentText(1, "is more than the whole", "12%");
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
                throw new Fault(Quote.of(stripped) + " is less than nothing", range);
            }
            if (fraction > most) {
                throw new Fault(Quote.of(stripped) + " " + tooMuch, range);
            }
            return fraction;
        }
        if (BARE.matcher(stripped).matches()) {
            throw new Fault(Quote.of(stripped) + " has no % sign", "write " + proposal(new BigDecimal(stripped)));
        }
        throw new Fault(Quote.of(stripped) + " is not a percentage", "write one, such as " + example);
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
        return JsonShape.pattern("([0-9]+(\\.[0-9]*)?|\\.[0-9]+)\\s*[%٪％]", JsonShape.sentence(range));
    }
}
