package kitleaf.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a number of labels or pages. */
final class PlacesOption implements ITypeConverter<Integer> {

    @Override
    public Integer convert(String value) {
        try {
            return Integer.valueOf(value);
        } catch (NumberFormatException e) {
            throw new TypeConversionException("'" + value + "' is not a whole number; write a whole number such as 12");
        }
    }
}
