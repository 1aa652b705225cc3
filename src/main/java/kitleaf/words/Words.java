package kitleaf.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Properties;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The phrases of one bundle in one language. Slots are written {@code {0}} to {@code {9}}; nothing else in a
 * phrase is special, apostrophes least of all, and nothing in what fills a slot is. The machine's own language is
 * never looked at: what a language lacks is said in English.
 */
public final class Words {

    /** Read once a process, since every sheet asks. */
    private static final Map<String, Properties> READ = new ConcurrentHashMap<>();

    private final String bundle;
    private final Locale language;
    private final Properties phrases;
    private final boolean spoken;

    /**
     * The words of a bundle.
     *
     * @param bundle such as {@code kitleaf.sheet.words.words}: a file of that name ends in {@code .properties}, is
     *        written in UTF-8 and is English; beside it stands one for each other language, such as {@code words_de}
     * @param language regions of a language share its words
     * @throws java.util.MissingResourceException when there is no such bundle: a fault in Kitleaf
     */
    public Words(String bundle, Locale language) {
        this(bundle, language, false);
    }

    private Words(String bundle, Locale language, boolean spoken) {
        this.bundle = bundle;
        this.language = language;
        this.phrases = once(bundle, language);
        this.spoken = spoken;
    }

    /** The words of a bundle for a screen, where what fills a slot is {@link Shown} in one line. */
    public static Words spoken(String bundle, Locale language) {
        return new Words(bundle, language, true);
    }

    /** The language asked for, with its region. */
    public Locale language() {
        return language;
    }

    /** A bundle itself, for who fills no slots; read as these words are. */
    public static ResourceBundle bundle(String bundle, Locale language) {
        Properties phrases = once(bundle, language);
        return new ResourceBundle() {
            @Override
            protected Object handleGetObject(String key) {
                return phrases.getProperty(key);
            }

            @Override
            public Enumeration<String> getKeys() {
                return Collections.enumeration(phrases.stringPropertyNames());
            }
        };
    }

    /** The word for a constant, as keys, files and options have it: small letters, with hyphens between. */
    public static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Whether there is such a phrase. */
    public boolean knows(String key) {
        return phrases.containsKey(key);
    }

    /**
     * A phrase with its slots filled: a {@link Said} is spoken first, anything else is written as it writes itself.
     *
     * @throws java.util.MissingResourceException when there is no such phrase: a fault in a template or in Kitleaf
     */
    public String say(String key, Object... slots) {
        return fill(phrase(key), Arrays.asList(slots));
    }

    /**
     * A phrase spoken, and all that stands in its slots.
     *
     * @throws java.util.MissingResourceException when there is no such phrase: a fault in Kitleaf
     */
    public String say(Said said) {
        return fill(phrase(said.key()), said.slots());
    }

    private String phrase(String key) {
        String phrase = phrases.getProperty(key);
        if (phrase == null) {
            throw new MissingResourceException("no phrase " + key + " in " + bundle, bundle, key);
        }
        return phrase;
    }

    private static Properties once(String bundle, Locale language) {
        return READ.computeIfAbsent(bundle + " " + language.toLanguageTag(), name -> read(bundle, language));
    }

    /**
     * The files are read here and not as a resource bundle: that falls back to the machine's own language, and to forbid
     * it in a module is not allowed.
     */
    private static Properties read(String bundle, Locale locale) {
        Properties all = new Properties();
        boolean found = false;
        String path = "/" + bundle.replace('.', '/');
        String language = "_" + locale.getLanguage();
        for (String name : List.of(path, path + language, path + language + "_" + locale.getCountry())) {
            try (InputStream in = Words.class.getResourceAsStream(name + ".properties")) {
                if (in != null) {
                    all.load(new InputStreamReader(in, StandardCharsets.UTF_8));
                    found = true;
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        if (!found) {
            throw new MissingResourceException("no bundle " + bundle, bundle, "");
        }
        return all;
    }

    private String fill(String phrase, List<?> slots) {
        if (slots.isEmpty()) {
            return phrase;
        }
        StringBuilder text = new StringBuilder(phrase.length() + 32);
        int i = 0;
        while (i < phrase.length()) {
            int slot = slotAt(phrase, i);
            if (slot >= 0 && slot < slots.size()) {
                Object filling = slots.get(slot);
                text.append(filling instanceof Said said ? say(said) : spoken ? Shown.inOneLine(String.valueOf(filling)) : filling);
                i += "{0}".length();
            } else {
                text.append(phrase.charAt(i));
                i++;
            }
        }
        return text.toString();
    }

    /** The number of the slot that begins there, or -1. */
    private static int slotAt(String phrase, int i) {
        boolean slot = phrase.charAt(i) == '{' && i + 2 < phrase.length() && phrase.charAt(i + 2) == '}'
                && phrase.charAt(i + 1) >= '0' && phrase.charAt(i + 1) <= '9';
        return slot ? phrase.charAt(i + 1) - '0' : -1;
    }
}
