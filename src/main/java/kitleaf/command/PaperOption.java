package kitleaf.command;

import java.util.Iterator;
import java.util.List;
import kitleaf.basket.Paper;
import kitleaf.basket.Papers;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads {@code --paper}. */
final class PaperOption implements ITypeConverter<Paper> {

    @Override
    public Paper convert(String value) {
        return Papers.named(value).orElseThrow(() -> new TypeConversionException("'" + value
                + "' is no paper Kitleaf knows; write A5, A4, A3, A2, A1, letter, legal or tabloid, with landscape after it to turn it, "
                + "or a size such as \"210 mm x 320 mm\""));
    }

    /** What a shell completes. */
    static final class Words implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return List.of("A5", "A4", "A3", "A2", "A1", "letter", "legal", "tabloid").iterator();
        }
    }
}
