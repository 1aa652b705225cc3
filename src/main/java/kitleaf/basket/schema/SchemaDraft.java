package kitleaf.basket.schema;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import kitleaf.basket.form.JsonShape;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.key.Value;
import kitleaf.basket.place.BasketWords;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Source;
import kitleaf.basket.yaml.Plain;
import kitleaf.basket.yaml.YamlTree;
import kitleaf.words.Said;
import kitleaf.words.Words;

/** Drafts a JSON Schema (draft 2020-12) of one kind of file from the keys that are declared. */
final class SchemaDraft implements Value.Draft {

    private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";

    private final KeyTexts texts;
    private final Words words;
    private final Map<String, Object> definitions = new TreeMap<>();
    private final Map<String, Keys> declared = new TreeMap<>();

    SchemaDraft(KeyTexts texts, Locale language) {
        this.texts = texts;
        this.words = BasketWords.in(language);
    }

    /** The schema of files that hold such things. */
    Map<String, Object> of(Said title, Keys keys) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", DIALECT);
        schema.put("title", words.say(title));
        schema.putAll(described(keys));
        schema.put("$defs", definitions);
        return schema;
    }

    @Override
    public JsonShape reference(Keys keys) {
        if (!definitions.containsKey(keys.name())) {
            definitions.put(keys.name(), Map.of());
            declared.put(keys.name(), keys);
            definitions.put(keys.name(), described(keys));
        }
        return new JsonShape(List.of(Map.of("$ref", "#/$defs/" + keys.name())), List.of());
    }

    /** What was met on the way, by its name; the thing itself has none. */
    Map<String, Keys> declared(Keys root) {
        declared.put("", root);
        return declared;
    }

    private Map<String, Object> described(Keys keys) {
        Map<String, Object> properties = new LinkedHashMap<>();
        keys.all().forEach(key -> properties.put(key.name(), property(keys.name(), key)));
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("properties", properties);
        // Understood wherever they stand, and offered nowhere.
        Map<String, Object> others = new TreeMap<>();
        keys.others().forEach((other, key) -> others.put(JsonShape.anyCaseKey(other),
                Map.of("$ref", "#/$defs/" + keys.name() + "/properties/" + key)));
        if (!others.isEmpty()) {
            schema.put("patternProperties", others);
        }
        List<String> needed = keys.all().stream().filter(Key::needed).map(Key::name).toList();
        if (!needed.isEmpty()) {
            schema.put("required", needed);
        }
        schema.put("additionalProperties", false);
        return schema;
    }

    private Map<String, Object> property(String thing, Key<?> key) {
        Set<String> sentences = new LinkedHashSet<>();
        texts.of(thing, key.name()).ifPresent(sentences::add);
        JsonShape shape = key.value().shape(this);
        shape.notes().forEach(note -> sentences.add(sentence(note)));
        Map<String, Object> property = new LinkedHashMap<>();
        property.put("description", String.join(" ", sentences));
        property.putAll(shape.schema());
        if (!property.containsKey("enum")) {
            List<Object> examples = new ArrayList<>();
            key.shown().forEach(yaml -> examples.add(example(yaml)));
            property.put("examples", examples);
        }
        return property;
    }

    private static Object example(String yaml) {
        return Plain.of(YamlTree.read(new Source(Path.of("example"), yaml), new Problems()).documents().get(0));
    }

    /** A note such as {@code write 1 to 5} as a sentence of its own. */
    private String sentence(Said note) {
        String text = words.say(note);
        return Character.toUpperCase(text.charAt(0)) + text.substring(1) + ".";
    }
}
