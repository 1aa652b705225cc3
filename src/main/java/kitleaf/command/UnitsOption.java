package kitleaf.command;

import kitleaf.basket.Units;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads {@code --units}. */
final class UnitsOption implements ITypeConverter<Units> {

    @Override
    public Units convert(String value) {
        return switch (value) {
            case "in" -> Units.IN;
            case "cm" -> Units.CM;
            default -> throw new TypeConversionException("'" + value + "' is not a unit; write in or cm");
        };
    }
}
