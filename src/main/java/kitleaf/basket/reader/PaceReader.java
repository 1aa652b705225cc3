package kitleaf.basket.reader;

import java.util.Optional;
import java.util.OptionalDouble;
import kitleaf.basket.Pace;
import kitleaf.basket.form.NumberText;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;

/** Reads what she says of her own pace. */
final class PaceReader {

    static final Keys KEYS = Keys.under("pace", "{stitches-per-hour: 110, hours-per-week: 9}");
    private static final Key<Double> STITCHES = KEYS.may("stitches-per-hour", new NumberText(0, true, 2000, "pace.stitches", "110"));
    private static final Key<Double> HOURS = KEYS.may("hours-per-week", new NumberText(0, true, Pace.MOST_HOURS, "pace.hours", "9"));

    private PaceReader() {
    }

    /** The basket's pace; nothing said where it is silent. */
    static Pace read(Fields basket) {
        return basket.group(SettingsReader.PACE, KEYS)
                .map(fields -> new Pace(decimal(fields.value(STITCHES)), decimal(fields.value(HOURS)))).orElse(Pace.UNSAID);
    }

    private static OptionalDouble decimal(Optional<Double> number) {
        return number.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
