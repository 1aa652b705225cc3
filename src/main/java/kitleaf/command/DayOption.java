package kitleaf.command;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads {@code --as-of}. */
final class DayOption implements ITypeConverter<LocalDate> {

    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;

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
        throw new TypeConversionException("'" + value + "' is not a day from " + FIRST_YEAR + " to " + LAST_YEAR + "; write it like 2027-03-31");
    }
}
