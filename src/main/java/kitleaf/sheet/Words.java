package kitleaf.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The words on the sheets, from {@code words.properties}, and over them those of a language, from
 * {@code words_de.properties} and the like. Slots are written {@code {0}}, {@code {1}}...; nothing else in a phrase is
 * special, apostrophes least of all.
 */
final class Words {

    /** Read once a process, since every sheet asks. */
    private static final Map<Locale, Properties> READ = new ConcurrentHashMap<>();

    private final Properties phrases;

    Words(Locale locale) {
        phrases = READ.computeIfAbsent(locale, Words::read);
    }

    /**
     * A phrase with its slots filled.
     *
     * @throws MissingResourceException when there is no such phrase: a fault in a template or in Kitleaf
     */
    String say(String key, Object... slots) {
        String phrase = phrases.getProperty(key);
        if (phrase == null) {
            throw new MissingResourceException("no phrase " + key, Words.class.getName(), key);
        }
        for (int i = 0; i < slots.length; i++) {
            phrase = phrase.replace("{" + i + "}", String.valueOf(slots[i]));
        }
        return phrase;
    }

    /** The files are read here and not as a resource bundle: that falls back to the machine's own language, and to forbid it in a module is not allowed. */
    private static Properties read(Locale locale) {
        Properties all = new Properties();
        for (String name : List.of("words.properties", "words_" + locale.getLanguage() + ".properties")) {
            try (InputStream in = Words.class.getResourceAsStream(name)) {
                if (in != null) {
                    all.load(new InputStreamReader(in, StandardCharsets.UTF_8));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return all;
    }
}
