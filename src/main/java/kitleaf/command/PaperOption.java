package kitleaf.command;

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
}
