package kitleaf.command;

import picocli.CommandLine.ITypeConverter;

/** Reads a number of labels or pages. */
final class PlacesOption implements ITypeConverter<Integer> {

    @Override
    public Integer convert(String value) {
        try {
            return Integer.valueOf(value);
        } catch (NumberFormatException e) {
            throw new Unreadable("value.places", value);
        }
    }
}
