package kitleaf.basket.schema;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;

/** What each key says, in a sentence, and what is still wanting for the keys that readers take. */
final class KeyTexts {

    private final String file;
    private final Properties texts;
    private final Set<String> unused;
    private final List<String> wanting = new ArrayList<>();

    private KeyTexts(String file, Properties texts) {
        this.file = file;
        this.texts = texts;
        this.unused = new TreeSet<>(texts.stringPropertyNames());
    }

    /** The sentences in a language; regions of a language share them, and a language without any has the English ones. */
    static KeyTexts shipped(Locale language) {
        String own = "keys_" + language.getLanguage() + ".properties";
        String file = KeyTexts.class.getResource(own) == null ? "keys.properties" : own;
        try (Reader in = new InputStreamReader(KeyTexts.class.getResourceAsStream(file), StandardCharsets.UTF_8)) {
            return read(file, in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Other sentences, with the name of the file they are to be put right in. */
    static KeyTexts read(String file, Reader in) throws IOException {
        Properties texts = new Properties();
        texts.load(in);
        return new KeyTexts(file, texts);
    }

    /** The sentence for a key of a group; nothing, and something wanting, if there is none. */
    Optional<String> of(String group, String key) {
        String name = group + "." + key;
        unused.remove(name);
        Optional<String> text = Optional.ofNullable(texts.getProperty(name)).filter(t -> !t.isBlank());
        if (text.isEmpty()) {
            wanting.add("the key " + key + " of " + group + " has no text; write " + name + " = ... into " + file);
        }
        return text;
    }

    /**
     * Ends the use of these texts.
     *
     * @throws IllegalStateException if anything is wanting, naming all of it, or a text was of no use
     */
    void complete() {
        unused.forEach(name -> wanting.add("no reader takes the key of " + name + "; take it out of " + file));
        if (!wanting.isEmpty()) {
            throw new IllegalStateException("the schema cannot be written:\n" + String.join("\n", wanting));
        }
    }
}
