package kitleaf.basket.form;

import java.text.Normalizer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitleaf.basket.place.Advice;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.words.NearMiss;
import kitleaf.words.Said;

/**
 * A length with its unit, read as millimetres.
 *
 * <pre>
 * length   = number unit
 * number   = digits [ "." digits ] | [ digits ] fraction
 * fraction = digits "/" digits | ½ and its kin
 * unit     = in | inch | inches | " | ″ | cm | mm | m | yd | yard | yards
 * </pre>
 *
 * <p>An inch is 25.4 mm and a yard 914.4 mm exactly (International Yard and Pound Agreement, 1959).
 *
 * @param leastMm the least length taken
 * @param mostMm the greatest length taken
 * @param outside the name of the fault of others
 * @param example one to show her
 */
public record LengthText(double leastMm, double mostMm, String outside, String example) implements Form<Double> {

    private static final Map<String, Double> UNITS = units();
    /** What near misses are offered from: the marks cannot be misspelt. */
    private static final List<String> UNIT_WORDS = List.of("in", "inch", "inches", "cm", "mm", "m", "yd", "yard", "yards");

    private static final String VULGAR = "¼½¾⅐-⅞↉";
    private static final Pattern PARTS = Pattern.compile("([0-9." + VULGAR + "][0-9.,/⁄" + VULGAR + " ]*)(.*)", Pattern.DOTALL);
    private static final Pattern SPACES = Pattern.compile("[\\s\u00a0\u2009\u202f]+");
    private static final Pattern NEGATIVE = Pattern.compile("[-−–] ?[0-9." + VULGAR + "].*");
    private static final Pattern HYPHEN = Pattern.compile("[0-9]+ ?[-–] ?[0-9].*");
    private static final Pattern ENDLESS = Pattern.compile("(?i)[-−+]? ?\\.?(∞|inf|nan)\\b.*|∞.*|(?i)[-−+]? ?infinity.*");
    private static final Pattern DECIMAL = Pattern.compile("[0-9]+(\\.[0-9]+)?|\\.[0-9]+");
    private static final Pattern FRACTION = Pattern.compile("(?:([0-9]+) +)?([0-9]+) ?/ ?([0-9]+)");

    /** The same for an editor (ECMA-262); it cannot know the range. */
    static final String PATTERN = "([0-9]+(\\.[0-9]+)?|\\.[0-9]+|([0-9]+\\s+)?[0-9]+\\s?[/⁄]\\s?[0-9]+|([0-9]+\\s*)?[" + VULGAR + "])\\s*"
            + JsonShape.anyCase(UNITS.keySet());

    private static Map<String, Double> units() {
        Map<String, Double> units = new LinkedHashMap<>();
        for (String inch : List.of("in", "inch", "inches", "\"", "″")) {
            units.put(inch, 25.4);
        }
        units.put("cm", 10.0);
        units.put("mm", 1.0);
        units.put("m", 1000.0);
        for (String yard : List.of("yd", "yard", "yards")) {
            units.put(yard, 914.4);
        }
        return units;
    }

    @Override
    public Double read(String text) throws Fault {
        double mm = plain(text);
        if (!(mm >= leastMm && mm <= mostMm)) {
            throw Fault.of(outside, Quote.bare(text));
        }
        return mm;
    }

    /** A length of any size, in millimetres. */
    static double plain(String text) throws Fault {
        String stripped = SPACES.matcher(text.strip()).replaceAll(" ");
        if (NEGATIVE.matcher(stripped).matches()) {
            throw Fault.of("length.negative", Quote.bare(text));
        }
        if (ENDLESS.matcher(stripped).matches()) {
            throw Fault.of("length.endless", Quote.bare(text));
        }
        // 2-1/2 in, as it is often written, is no number less another.
        if (HYPHEN.matcher(stripped).matches()) {
            throw Fault.of("length.number", Quote.bare(text));
        }
        Matcher parts = PARTS.matcher(stripped);
        if (!parts.matches()) {
            throw Fault.of("length.none", Quote.bare(text));
        }
        String number = parts.group(1).strip();
        String unit = parts.group(2).strip();
        if (number.indexOf(',') >= 0) {
            throw NumberText.decimalComma(stripped);
        }
        double value = number(number, text);
        return value * unit(unit, text);
    }

    private static double number(String number, String text) throws Fault {
        if (DECIMAL.matcher(number).matches()) {
            double value = Double.parseDouble(number);
            if (Double.isInfinite(value)) {
                throw Fault.of("length.endless", Quote.bare(text));
            }
            return value;
        }
        // ½ falls apart into 1, a fraction slash and 2 (Unicode NFKD); the space keeps 2½ from becoming 21/2.
        String spread = Normalizer.normalize(number.replaceAll("[" + VULGAR + "]", " $0"), Normalizer.Form.NFKD)
                .replace('⁄', '/').replaceAll(" +", " ").strip();
        Matcher fraction = FRACTION.matcher(spread);
        if (!fraction.matches()) {
            throw Fault.of("length.number", Quote.bare(text));
        }
        double below = Double.parseDouble(fraction.group(3));
        if (below == 0) {
            throw Fault.of("length.by-nought", Quote.bare(text));
        }
        double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
        double value = whole + Double.parseDouble(fraction.group(2)) / below;
        if (!Double.isFinite(value)) {
            throw Fault.of("length.endless", Quote.bare(text));
        }
        return value;
    }

    private static double unit(String unit, String text) throws Fault {
        if (unit.isEmpty()) {
            throw Fault.of("length.bare", Quote.bare(text));
        }
        Double mm = UNITS.get(unit.toLowerCase(Locale.ROOT));
        if (mm == null) {
            Said advice = NearMiss.of(unit, UNIT_WORDS).map(Advice::meant).orElse(Said.of("length.units"));
            throw Fault.of(Said.of("length.unit", Quote.bare(text), Quote.bare(unit)), advice);
        }
        return mm;
    }

    @Override
    public JsonShape shape() {
        return JsonShape.pattern(PATTERN, Said.of(outside + ".write"));
    }
}
