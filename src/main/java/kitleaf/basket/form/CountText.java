package kitleaf.basket.form;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.words.Said;

/**
 * Threads to the inch along one thread system: a number, or as measured, {@code 71 in 2 in} or
 * {@code 145 in 10 cm}, which is 71 / (50.8 / 25.4) and 145 / (100 / 25.4) threads to the inch.
 */
public record CountText() implements Form<Double> {

    private static final Pattern MEASURED = Pattern.compile("([-0-9.,]+)\\s+in\\s+(.+)");

    /** What charts and shops write behind a count. */
    private static final Pattern CALLED = Pattern.compile("([-0-9.,]+)\\s*(?:ct\\.?|count)", Pattern.CASE_INSENSITIVE);

    /** What dividing doubles may add: a count measured as just 3 must not come out a hair below it and be refused. */
    private static final double ROUNDING = 1e-9;

    @Override
    public Double read(String text) throws Fault {
        String stripped = text.strip();
        Matcher measured = MEASURED.matcher(stripped);
        double perInch = measured.matches()
                ? NumberText.plain(measured.group(1), "71") / (LengthText.plain(measured.group(2)) / 25.4)
                : number(stripped);
        if (!(perInch >= Count.LEAST - ROUNDING && perInch <= Count.MOST + ROUNDING)) {
            throw Fault.of("count.range", Quote.bare(stripped));
        }
        return Math.max(Count.LEAST, Math.min(Count.MOST, perInch));
    }

    private static double number(String written) throws Fault {
        Matcher called = CALLED.matcher(written);
        String text = called.matches() ? called.group(1) : written;
        if (!text.matches("[-0-9.,]+")) {
            throw Fault.of("count.none", Quote.bare(text));
        }
        return NumberText.plain(text, "36");
    }

    @Override
    public String example() {
        return "36";
    }

    @Override
    public JsonShape shape() {
        JsonShape measured = JsonShape.pattern("[0-9.]+\\s+in\\s+" + LengthText.PATTERN);
        JsonShape called = JsonShape.pattern("[0-9.]+\\s*([cC][tT]\\.?|" + JsonShape.anyCase("count") + ")");
        return JsonShape.number(Count.LEAST, false, Count.MOST, Said.of("note.count", (int) Count.LEAST, (int) Count.MOST, "71 in 2 in"))
                .or(measured).or(called);
    }
}
