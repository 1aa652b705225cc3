package kitleaf.command;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import kitleaf.words.Said;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.OptionSpec;

/** Reads {@code --as-of}. */
final class DayOption implements ITypeConverter<LocalDate> {

    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;

    /** The option. */
    static OptionSpec.Builder asOf() {
        return OptionSpec.builder("--as-of").paramLabel("DATE").type(LocalDate.class).converters(new DayOption());
    }

    @Override
    public LocalDate convert(String value) {
        try {
            LocalDate day = LocalDate.parse(value);
            if (day.getYear() >= FIRST_YEAR && day.getYear() <= LAST_YEAR) {
                return day;
            }
        } catch (DateTimeParseException notADay) {
            // Said below, with what to write instead.
        }
        throw new Unreadable("value.day", value, FIRST_YEAR, LAST_YEAR);
    }
}
