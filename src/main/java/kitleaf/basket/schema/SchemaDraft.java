package kitleaf.basket.schema;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.JsonShape;
import kitleaf.basket.place.BasketWords;
import kitleaf.basket.place.Place;
import kitleaf.basket.schema.Testimony.Group;
import kitleaf.basket.yaml.Node;
import kitleaf.basket.yaml.Plain;
import kitleaf.words.Said;
import kitleaf.words.Words;

/** Drafts a JSON Schema (draft 2020-12) of one kind of file from what readers asked of a specimen. */
final class SchemaDraft {

    private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";
    private static final int MOST_EXAMPLES = 4;

    private final Testimony asked;
    private final KeyTexts texts;
    private final Words words;
    private final Map<String, Object> definitions = new TreeMap<>();
    private final Set<String> begun = new LinkedHashSet<>();

    SchemaDraft(Testimony asked, KeyTexts texts, Locale language) {
        this.asked = asked;
        this.texts = texts;
        this.words = BasketWords.in(language);
    }

    /** The schema of files that hold such documents. */
    Map<String, Object> of(Said title, List<Node> documents) {
        Group group = asked.group((Node.Mapping) documents.get(0)).orElseThrow();
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", DIALECT);
        schema.put("title", words.say(title));
        schema.putAll(keys(group));
        schema.put("$defs", definitions);
        return schema;
    }

    private Map<String, Object> keys(Group group) {
        Map<String, Object> properties = new LinkedHashMap<>();
        for (String key : group.known()) {
            List<Node> values = group.met().stream().flatMap(mapping -> Stream.ofNullable(mapping.entries().get(key)))
                    .map(Node.Entry::value).toList();
            if (values.isEmpty()) {
                texts.notShown(group.name(), key);
            } else {
                properties.put(key, property(group, key, values));
            }
        }
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("properties", properties);
        List<String> needed = asked.needed(group);
        if (!needed.isEmpty()) {
            schema.put("required", needed);
        }
        schema.put("additionalProperties", false);
        return schema;
    }

    private Map<String, Object> property(Group group, String key, List<Node> values) {
        Map<String, Object> property = new LinkedHashMap<>();
        Set<String> notes = new LinkedHashSet<>();
        texts.of(group.name(), key).ifPresent(notes::add);
        Map<String, Object> schema = schema(values, notes);
        property.put("description", String.join(" ", notes));
        property.putAll(schema);
        if (schema.containsKey("enum")) {
            return property;
        }
        property.put("examples", values.stream().map(Plain::of).distinct().limit(MOST_EXAMPLES).toList());
        return property;
    }

    /** The schema that takes any of these values and all that are written in the same forms; the forms' notes are added to what is told. */
    private Map<String, Object> schema(List<Node> values, Set<String> notes) {
        Set<Map<String, Object>> alternatives = new LinkedHashSet<>();
        Set<Form<?>> forms = new LinkedHashSet<>();
        List<Node> items = new ArrayList<>();
        List<Node.Mapping> named = new ArrayList<>();
        boolean list = false;
        for (Node value : values) {
            if (value instanceof Node.Mapping mapping) {
                asked.group(mapping).ifPresentOrElse(group -> alternatives.add(reference(group)), () -> named.add(mapping));
            } else if (value instanceof Node.Sequence sequence) {
                list = true;
                items.addAll(sequence.items());
            } else {
                forms.addAll(forms(value.place()));
            }
        }
        for (JsonShape shape : forms.stream().map(Form::shape).toList()) {
            alternatives.addAll(shape.alternatives());
            shape.notes().forEach(note -> notes.add(sentence(note)));
        }
        if (!named.isEmpty()) {
            alternatives.add(names(named, notes));
        }
        if (list) {
            Map<String, Object> array = new LinkedHashMap<>();
            array.put("type", "array");
            if (!items.isEmpty()) {
                array.put("items", schema(items, new LinkedHashSet<>()));
            }
            alternatives.add(array);
        }
        return alternatives.size() == 1 ? alternatives.iterator().next() : Map.of("anyOf", List.copyOf(alternatives));
    }

    /** A note such as {@code write 1 to 5} as a sentence of its own. */
    private String sentence(Said note) {
        String text = words.say(note);
        return Character.toUpperCase(text.charAt(0)) + text.substring(1) + ".";
    }

    private Map<String, Object> reference(Group group) {
        if (begun.add(group.name())) {
            definitions.put(group.name(), keys(group));
        }
        return Map.of("$ref", "#/$defs/" + group.name());
    }

    /** Mappings whose keys are names of her own. */
    private Map<String, Object> names(List<Node.Mapping> mappings, Set<String> notes) {
        List<Node.Entry> entries = mappings.stream().flatMap(mapping -> mapping.entries().values().stream()).toList();
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("additionalProperties", schema(entries.stream().map(Node.Entry::value).toList(), notes));
        return schema;
    }

    private Set<Form<?>> forms(Place value) {
        Set<Form<?>> forms = asked.forms(value);
        if (forms.isEmpty()) {
            throw new IllegalStateException("no reader asked for the value in the specimen, line " + value.line() + ", column "
                    + value.column());
        }
        return forms;
    }
}
