package kitleaf.basket;

import java.text.Normalizer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitleaf.words.NearMiss;

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
 * @param outside what is wrong with others, after the value
 * @param range what to write instead
 * @param example one to show her
 */
record LengthText(double leastMm, double mostMm, String outside, String range, String example) implements Form<Double> {

    private static final Map<String, Double> UNITS = units();
    /** What near misses are offered from: the marks cannot be misspelt. */
    private static final List<String> UNIT_WORDS = List.of("in", "inch", "inches", "cm", "mm", "m", "yd", "yard", "yards");

    private static final String VULGAR = "¼½¾⅐-⅞↉";
    private static final Pattern PARTS = Pattern.compile("([0-9." + VULGAR + "][0-9.,/⁄" + VULGAR + " ]*)(.*)", Pattern.DOTALL);
    private static final Pattern DECIMAL = Pattern.compile("[0-9]+(\\.[0-9]+)?|\\.[0-9]+");
    private static final Pattern FRACTION = Pattern.compile("(?:([0-9]+) +)?([0-9]+) ?/ ?([0-9]+)");
    private static final String EXAMPLES = "3 in or 7.5 cm";

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
            throw new Fault(Quote.of(text) + " " + outside, range);
        }
        return mm;
    }

    /** A length of any size, in millimetres. */
    static double plain(String text) throws Fault {
        String stripped = text.strip().replaceAll("[\\s\u00a0\u2009\u202f]+", " ");
        if (stripped.matches("[-−–] ?[0-9." + VULGAR + "].*")) {
            throw new Fault(Quote.of(text) + " is less than nothing", "write a length of 0 or more, such as " + EXAMPLES);
        }
        if (stripped.matches("(?i)[-−+]? ?\\.?(∞|inf|nan)\\b.*|∞.*|(?i)[-−+]? ?infinity.*")) {
            throw new Fault(Quote.of(text) + " is not a length a tape can show", "write one such as " + EXAMPLES);
        }
        Matcher parts = PARTS.matcher(stripped);
        if (!parts.matches()) {
            throw new Fault(Quote.of(text) + " is not a length", "write a number and its unit, such as " + EXAMPLES);
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
                throw new Fault(Quote.of(text) + " is not a length a tape can show", "write one such as " + EXAMPLES);
            }
            return value;
        }
        // ½ falls apart into 1, a fraction slash and 2 (Unicode NFKD); the space keeps 2½ from becoming 21/2.
        String spread = Normalizer.normalize(number.replaceAll("[" + VULGAR + "]", " $0"), Normalizer.Form.NFKD)
                .replace('⁄', '/').replaceAll(" +", " ").strip();
        Matcher fraction = FRACTION.matcher(spread);
        if (!fraction.matches()) {
            throw new Fault(Quote.of(text) + " does not start with a number Kitleaf can read",
                    "write it like 3 in, 2.5 in or 2 1/2 in");
        }
        double below = Double.parseDouble(fraction.group(3));
        if (below == 0) {
            throw new Fault(Quote.of(text) + " divides by 0", "write a fraction such as 1/2 in");
        }
        double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
        double value = whole + Double.parseDouble(fraction.group(2)) / below;
        if (!Double.isFinite(value)) {
            throw new Fault(Quote.of(text) + " is not a length a tape can show", "write one such as " + EXAMPLES);
        }
        return value;
    }

    private static double unit(String unit, String text) throws Fault {
        if (unit.isEmpty()) {
            throw new Fault(Quote.of(text) + " is a bare number", "write it with its unit, such as " + EXAMPLES);
        }
        Double mm = UNITS.get(unit.toLowerCase(Locale.ROOT));
        if (mm == null) {
            String advice = NearMiss.of(unit, UNIT_WORDS).map(near -> "did you mean " + near + "?")
                    .orElse("write in, cm, mm, m or yd");
            throw new Fault(Quote.of(text) + " has the unit " + Quote.of(unit) + ", which is not known here", advice);
        }
        return mm;
    }

    @Override
    public JsonShape shape() {
        return JsonShape.pattern(PATTERN, JsonShape.sentence(range));
    }
}
