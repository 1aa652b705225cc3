package kitleaf.basket;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Threads to the inch along one thread system: a number, or as measured, {@code 71 in 2 in} or
 * {@code 145 in 10 cm}, which is 71 x 25.4 / 50.8 and 145 x 25.4 / 100 threads to the inch.
 */
record CountText() implements Form<Double> {

    private static final Pattern MEASURED = Pattern.compile("([-0-9.,]+)\\s+in\\s+(.+)");

    @Override
    public Double read(String text) throws Fault {
        String stripped = text.strip();
        Matcher measured = MEASURED.matcher(stripped);
        double perInch = measured.matches()
                ? NumberText.plain(measured.group(1), "71") * 25.4 / LengthText.plain(measured.group(2))
                : number(stripped);
        if (!(perInch >= Count.LEAST && perInch <= Count.MOST)) {
            throw new Fault(Quote.bare(stripped) + " is not a count any cloth has", "write threads to the inch, 3 to 120");
        }
        return perInch;
    }

    private static double number(String text) throws Fault {
        if (!text.matches("[-0-9.,]+")) {
            throw new Fault(Quote.of(text) + " is not a count",
                    "write threads to the inch, such as 36, or as measured, such as 71 in 2 in");
        }
        return NumberText.plain(text, "36");
    }

    @Override
    public String example() {
        return "36";
    }
}
