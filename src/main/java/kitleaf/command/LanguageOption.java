package kitleaf.command;

import java.util.Locale;
import kitleaf.basket.form.LanguageText;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.OptionSpec;

/** Reads {@code --language}. */
final class LanguageOption implements ITypeConverter<Locale> {

    /** The option. */
    static OptionSpec.Builder language() {
        return OptionSpec.builder("--language").paramLabel("LANGUAGE").type(Locale.class).converters(new LanguageOption());
    }

    @Override
    public Locale convert(String value) {
        return LanguageText.named(value).orElseThrow(() -> new Unreadable("value.language", value));
    }
}
