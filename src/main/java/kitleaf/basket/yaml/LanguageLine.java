package kitleaf.basket.yaml;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitleaf.basket.place.Source;

/** Finds the line of {@code basket.yaml} that names its language, in a file that may be broken elsewhere. */
public final class LanguageLine {

    private static final Pattern LINE = Pattern.compile("language:\\s+([\"']?)(en|en-GB|en-US|de)\\1\\s*(#.*)?");

    private LanguageLine() {
    }

    /** The language; nothing if no line names one that is known. */
    public static Optional<Locale> in(Source source) {
        for (int number = 1; number <= source.lineCount(); number++) {
            Matcher line = LINE.matcher(source.line(number).orElse(""));
            if (line.matches()) {
                return Optional.of(Locale.forLanguageTag(line.group(2)));
            }
        }
        return Optional.empty();
    }
}
