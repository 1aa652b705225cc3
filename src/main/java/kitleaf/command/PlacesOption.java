package kitleaf.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.OptionSpec;

/** Reads a number of labels or pages. */
final class PlacesOption implements ITypeConverter<Integer> {

    /** An option of this name that takes such a number. */
    static OptionSpec.Builder number(String name) {
        return OptionSpec.builder(name).paramLabel("N").type(int.class).converters(new PlacesOption());
    }

    @Override
    public Integer convert(String value) {
        try {
            return Integer.valueOf(value);
        } catch (NumberFormatException e) {
            throw new Unreadable("value.places", value);
        }
    }
}
