package kitleaf.command;

import java.util.Iterator;
import java.util.List;
import kitleaf.basket.Units;
import picocli.CommandLine.ITypeConverter;

/** Reads {@code --units}. */
final class UnitsOption implements ITypeConverter<Units> {

    @Override
    public Units convert(String value) {
        return switch (value) {
            case "in" -> Units.IN;
            case "cm" -> Units.CM;
            default -> throw new Unreadable("value.units", value);
        };
    }

    /** What a shell completes. */
    static final class Words implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return List.of("in", "cm").iterator();
        }
    }
}
