package kitleaf.basket.form;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.words.Said;

/**
 * A number with or without decimals, after a decimal point whatever the reader's country.
 *
 * @param least the least taken, itself included unless {@code above}
 * @param above whether the number must be above {@code least}
 * @param most the most taken, itself included
 * @param outside the name of the fault of others
 * @param example one to show her
 */
public record NumberText(double least, boolean above, double most, String outside, String example)
        implements Form<Double> {

    private static final Pattern PLAIN = Pattern.compile("-?([0-9]+(\\.[0-9]*)?|\\.[0-9]+)");
    private static final Pattern WITH_COMMA = Pattern.compile("-?[0-9]+,[0-9]+");

    @Override
    public Double read(String text) throws Fault {
        double number = plain(text.strip(), example);
        if (!(number >= least && number <= most) || (above && number == least)) {
            throw Fault.of(outside, Quote.bare(text));
        }
        return number;
    }

    /** A number as she writes it, which is how a file has it in any language. */
    public static String written(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    /** A number of any size, as written. */
    static double plain(String text, String example) throws Fault {
        if (WITH_COMMA.matcher(text).matches()) {
            throw decimalComma(text);
        }
        if (!PLAIN.matcher(text).matches()) {
            throw Fault.of("number.none", Quote.bare(text), example);
        }
        return Double.parseDouble(text);
    }

    /** The fault of {@code 7,5}; three digits after the comma may be thousands, so no number is proposed then. */
    static Fault decimalComma(String text) {
        if (text.matches(".*,[0-9]{3}(?![0-9]).*") || text.indexOf(',') != text.lastIndexOf(',')) {
            return Fault.of("number.comma", Quote.bare(text));
        }
        return Fault.of("number.decimal-comma", Quote.bare(text), Quote.bare(text.replace(',', '.')));
    }

    @Override
    public JsonShape shape() {
        return JsonShape.number(least, above, most, Said.of(outside + ".write"));
    }
}
