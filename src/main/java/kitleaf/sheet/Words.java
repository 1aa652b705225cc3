package kitleaf.sheet;

import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The words on the sheets, from {@code words.properties}. Slots are written {@code {0}}, {@code {1}}...;
 * nothing else in a phrase is special, apostrophes least of all.
 */
final class Words {

    private final ResourceBundle bundle;

    Words(Locale locale) {
        bundle = ResourceBundle.getBundle("kitleaf.sheet.words", locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /**
     * A phrase with its slots filled.
     *
     * @throws java.util.MissingResourceException when there is no such phrase: a fault in a template or in Kitleaf
     */
    String say(String key, Object... slots) {
        String phrase = bundle.getString(key);
        for (int i = 0; i < slots.length; i++) {
            phrase = phrase.replace("{" + i + "}", String.valueOf(slots[i]));
        }
        return phrase;
    }
}
