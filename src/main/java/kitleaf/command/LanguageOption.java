package kitleaf.command;

import java.util.Locale;
import kitleaf.basket.LanguageText;
import picocli.CommandLine.ITypeConverter;

/** Reads {@code --language}. */
final class LanguageOption implements ITypeConverter<Locale> {

    @Override
    public Locale convert(String value) {
        return LanguageText.named(value).orElseThrow(() -> new Unreadable("value.language", value));
    }
}
