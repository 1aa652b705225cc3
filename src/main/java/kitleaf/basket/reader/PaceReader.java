package kitleaf.basket.reader;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitleaf.basket.Pace;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.NumberText;
import kitleaf.basket.key.Fields;

/** Reads what she says of her own pace. */
final class PaceReader {

    private static final List<String> KEYS = List.of("stitches-per-hour", "hours-per-week");
    private static final String EXAMPLE = "{stitches-per-hour: 110, hours-per-week: 9}";
    private static final Form<Double> STITCHES =
            new NumberText(0, true, 2000, "pace.stitches", "110");
    private static final Form<Double> HOURS =
            new NumberText(0, true, Pace.MOST_HOURS, "pace.hours", "9");

    private PaceReader() {
    }

    /** The basket's pace; nothing said where it is silent. */
    static Pace read(Fields basket) {
        return basket.group("pace", EXAMPLE, KEYS)
                .map(fields -> new Pace(decimal(fields.value("stitches-per-hour", STITCHES)),
                        decimal(fields.value("hours-per-week", HOURS))))
                .orElse(Pace.UNSAID);
    }

    private static OptionalDouble decimal(Optional<Double> number) {
        return number.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
