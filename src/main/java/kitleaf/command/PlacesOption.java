package kitleaf.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads {@code --skip}. */
final class PlacesOption implements ITypeConverter<Integer> {

    @Override
    public Integer convert(String value) {
        try {
            return Integer.valueOf(value);
        } catch (NumberFormatException e) {
            throw new TypeConversionException("'" + value + "' is not a number of labels; write a whole number such as 12");
        }
    }
}
