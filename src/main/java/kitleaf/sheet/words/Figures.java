package kitleaf.sheet.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import kitleaf.basket.Price;
import kitleaf.basket.Units;
import kitleaf.words.Words;

/**
 * Lengths and numbers as they stand on a sheet: inches as whole numbers and true fractions, centimetres to
 * the millimetre. Parts of one figure are held together by no-break spaces.
 */
public final class Figures {

    /** Holds the parts of a figure together. */
    public static final char NO_BREAK = '\u00a0';
    /** Between the two measures of a size, which stand in one line. */
    public static final String TIMES = NO_BREAK + "×" + NO_BREAK;
    private static final char FRACTION_SLASH = '\u2044';
    private static final Pattern LONG_DASH = Pattern.compile("[\u2012-\u2014]");
    private static final double INCH_MM = 25.4;

    private static final double[] TENS = {1, 10, 100, 1_000};
    /** Below this, a product of doubles is off by far less than {@link #UNSURE}. */
    private static final double SURE = 1e6;
    /** As near to a half as this, all digits decide which way a number is rounded. */
    private static final double UNSURE = 1e-6;

    /** As far above a step of her ruler a length still counts as that step: the last bits of doubles, under a nanometre or two. */
    private static final double CUT_SLACK = 1e-6;

    private final Units first;
    private final Words words;

    /** Figures with these units first, written as the words' language writes them. */
    public Figures(Units first, Words words) {
        this.first = first;
        this.words = words;
    }

    /** The same with the other units first. */
    public Figures swapped() {
        return new Figures(first == Units.IN ? Units.CM : Units.IN, words);
    }

    /** Width by height to cut, in the stitcher's units, none of it less than what is needed; inches to a sixteenth. */
    public String cut(double widthMm, double heightMm) {
        return first == Units.IN ? cutInches(widthMm, heightMm) + unit("in") : cutCentimetres(widthMm, heightMm) + unit("cm");
    }

    /** A length to cut or to buy, in the stitcher's units, never less than what is needed; inches to a sixteenth. */
    public String cutLength(double mm) {
        return length(first == Units.IN ? sixteenthsUp(mm) : millimetresUp(mm));
    }

    /** Width by height of cloth that lies there, in the stitcher's units: to the nearest sixteenth of an inch, or millimetre. */
    public String measured(double widthMm, double heightMm) {
        return first == Units.IN ? inches(widthMm, 16) + TIMES + inches(heightMm, 16) + unit("in") : sizeCentimetres(widthMm, heightMm);
    }

    /** Width by height to cut in inches to a sixteenth, without the unit. */
    static String cutInches(double widthMm, double heightMm) {
        return inches(sixteenthsUp(widthMm), 16) + TIMES + inches(sixteenthsUp(heightMm), 16);
    }

    /** Width by height to cut in centimetres to the millimetre, without the unit. */
    String cutCentimetres(double widthMm, double heightMm) {
        return centimetres(millimetresUp(widthMm)) + TIMES + centimetres(millimetresUp(heightMm));
    }

    private static double sixteenthsUp(double mm) {
        return Math.ceil(mm / INCH_MM * 16 - CUT_SLACK) / 16 * INCH_MM;
    }

    private static double millimetresUp(double mm) {
        return Math.ceil(mm - CUT_SLACK);
    }

    /** A length in inches to the nearest fraction, without the unit: {@code 14 1⁄4}. */
    static String inches(double mm, int denominator) {
        long parts = Math.round(mm / INCH_MM * denominator);
        long whole = parts / denominator;
        long rest = parts % denominator;
        if (rest == 0) {
            return Long.toString(whole);
        }
        int below = denominator;
        while (rest % 2 == 0) {
            rest /= 2;
            below /= 2;
        }
        String fraction = rest + String.valueOf(FRACTION_SLASH) + below;
        return whole == 0 ? fraction : whole + String.valueOf(NO_BREAK) + fraction;
    }

    /** A length in centimetres to the nearest millimetre, without the unit: {@code 36.2}. */
    String centimetres(double mm) {
        return decimal(mm / 10, 1);
    }

    /** A number to so many places, without trailing noughts. */
    public String decimal(double value, int places) {
        double parts = Math.abs(value) * TENS[Math.min(places, TENS.length - 1)];
        double rest = parts - Math.floor(parts);
        if (places < TENS.length && parts < SURE && Math.abs(rest - 0.5) > UNSURE) {
            return decimal(value < 0, Math.round(parts), places);
        }
        BigDecimal rounded = new BigDecimal(value).setScale(places, RoundingMode.HALF_UP).stripTrailingZeros();
        return written(rounded.scale() < 0 ? rounded.setScale(0) : rounded);
    }

    /** So many tenths, hundredths or thousandths, without trailing noughts. */
    private String decimal(boolean negative, long parts, int places) {
        long kept = parts;
        int left = places;
        while (left > 0 && kept % 10 == 0) {
            kept /= 10;
            left--;
        }
        String digits = Long.toString(kept);
        if (left > 0) {
            digits = "0".repeat(Math.max(0, left + 1 - digits.length())) + digits;
            digits = digits.substring(0, digits.length() - left) + words.say("number.decimal") + digits.substring(digits.length() - left);
        }
        return negative && parts > 0 ? "-" + digits : digits;
    }

    /** A number to so many places, noughts and all. */
    public String fixed(double value, int places) {
        return written(new BigDecimal(value).setScale(places, RoundingMode.HALF_UP));
    }

    private String written(BigDecimal number) {
        return number.toPlainString().replace(".", words.say("number.decimal"));
    }

    /** A whole number with its thousands apart. */
    public String grouped(long number) {
        return String.format(Locale.ROOT, "%,d", number).replace(",", words.say("number.group"));
    }

    /** A part of a hundred, such as {@code 5 %}. */
    public String percent(String number) {
        return number + NO_BREAK + "%";
    }

    /** An amount with its currency: its code, as no sign is known to every reader. */
    public String money(Price price) {
        return words.say("number.price", written(price.amount()), price.currency()).replace(' ', NO_BREAK);
    }

    /** An amount where its currency stands above. */
    public String amount(Price price) {
        return written(price.amount());
    }

    /** Several things, one after the other, the last one joined with "and" where the language's lists do that; or {@link #parted}. */
    public String list(Collection<String> things) {
        List<String> all = List.copyOf(things);
        int last = all.size() - 1;
        return last < 1 || all.stream().anyMatch(it -> it.indexOf(',') >= 0) ? parted(all)
                : words.say("list.last", String.join(words.say("list.comma"), all.subList(0, last)), all.get(last));
    }

    /** A day with its month written out. */
    public String day(LocalDate day) {
        return day(day, "date.long");
    }

    /** A day with a short month, and its year where that is not the given one. */
    public String shortDay(LocalDate day, int year) {
        return day(day, day.getYear() == year ? "date.short" : "date.short-year");
    }

    /** A day by a pattern of {@link DateTimeFormatter} among the words; it stands in one line. */
    public String day(LocalDate day, String pattern) {
        return DateTimeFormatter.ofPattern(words.say(pattern), words.language()).format(day).replace(' ', NO_BREAK);
    }

    /** Several things of a list that may go on, parted by semicolons where one of them holds a comma. */
    public String parted(Collection<String> things) {
        return String.join(words.say(things.stream().anyMatch(it -> it.indexOf(',') >= 0) ? "list.semicolon" : "list.comma"), things);
    }

    /** The word for a unit, with the space that stands before it. */
    public String unit(String unit) {
        return NO_BREAK + words.say("unit." + unit);
    }

    /** One length in the stitcher's units, with the unit; inches to a sixteenth. */
    public String length(double mm) {
        return first == Units.IN ? inches(mm, 16) + unit("in") : centimetres(mm) + unit("cm");
    }

    /** One length in the stitcher's units, as short as it can be written, for drawings. */
    public String brief(double mm) {
        return first == Units.IN ? inches(mm, 16) + words.say("unit.in-brief") : length(mm);
    }

    /** One length in the other units, with the unit. */
    public String other(double mm) {
        return first == Units.IN ? centimetres(mm) + unit("cm") : inches(mm, 16) + unit("in");
    }

    /** Width by height in the stitcher's units; inches to an eighth. */
    public String size(double widthMm, double heightMm) {
        return first == Units.IN ? sizeInches(widthMm, heightMm) : sizeCentimetres(widthMm, heightMm);
    }

    /** Width by height in the other units. */
    public String otherSize(double widthMm, double heightMm) {
        return first == Units.IN ? sizeCentimetres(widthMm, heightMm) : sizeInches(widthMm, heightMm);
    }

    /** Width by height in inches to an eighth, with the unit. */
    String sizeInches(double widthMm, double heightMm) {
        return inches(widthMm, 8) + TIMES + inches(heightMm, 8) + unit("in");
    }

    /** Width by height in centimetres, with the unit. */
    String sizeCentimetres(double widthMm, double heightMm) {
        return centimetres(widthMm) + TIMES + centimetres(heightMm) + unit("cm");
    }

    /** A code of hers, unbroken, and not set as words are: the press leaves these signs straight. */
    public static String asTyped(String code) {
        return code(code).replace(' ', NO_BREAK);
    }

    /** The same where a line may end at its blanks, though at no hyphen or dash; a long dash is held by the joiner behind it. */
    public static String code(String code) {
        return LONG_DASH.matcher(straight(code).replace('-', '\u2011').replace('\u2010', '\u2011')).replaceAll("$0\u2060");
    }

    /** Not set as words are, where a line may end in it. */
    public static String straight(String code) {
        return code.replace('\'', '\uFDD5').replace('"', '\uFDD6');
    }

    /** Names of cuts, of which a size may be part: {@code 50 x 70 cm cut}. */
    public static String unbroken(String name) {
        return name.replaceAll(" (?=[x×] )|(?<= [x×]) ", String.valueOf(NO_BREAK));
    }

    /** A text in plain signs: those a terminal or a code may not have are written with those it has. */
    public static String plain(String text) {
        return text.replace(NO_BREAK, ' ').replace(FRACTION_SLASH, '/').replace('×', 'x');
    }
}
