package kitleaf.basket.key;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.JsonShape;
import kitleaf.words.Said;

/** The keys of a thing, in the order editors show them. What is not declared here may not stand there, and what is has its schema. */
public final class Keys implements Value {

    private final String name;
    private final Said what;
    private final String example;
    private final Map<String, Key<?>> all = new LinkedHashMap<>();
    private final Map<String, String> others = new LinkedHashMap<>();

    private Keys(String name, Said what, String example) {
        this.name = name;
        this.what = what;
        this.example = example;
    }

    /** Those of what stands under a key of this name. */
    public static Keys under(String key, String example) {
        return new Keys(key, Fields.key(key), example);
    }

    /** Those of a thing that has a phrase, {@code thing.} and its name. */
    public static Keys of(String phrase, String example) {
        return new Keys(phrase.substring(phrase.indexOf('.') + 1), Said.of(phrase), example);
    }

    /** A key that must stand there. */
    public <T> Key<T> must(String key, Form<T> form, String... shown) {
        return add(new Key<>(key, form, form.example(), Value.of(form), true, shown(form.example(), shown)));
    }

    /** A key that may be left out. */
    public <T> Key<T> may(String key, Form<T> form, String... shown) {
        return add(new Key<>(key, form, form.example(), Value.of(form), false, shown(form.example(), shown)));
    }

    /** A key that may be left out, with more in it than a single value. */
    public Key<Void> may(String key, String sample, Value value, String... shown) {
        return add(new Key<>(key, null, sample, value, false, shown(sample, shown)));
    }

    /** A key that may be left out, with keys below it. */
    public Key<Void> may(String key, Keys below, String... shown) {
        return may(key, below.example, below, shown);
    }

    /** A key that must stand there, with keys below it. */
    public Key<Void> must(String key, Keys below, String... shown) {
        return add(new Key<>(key, null, below.example, below, true, shown(below.example, shown)));
    }

    /** A key that may be left out, with a list of such things. */
    public Key<Void> list(String key, Keys entry, String... shown) {
        return may(key, entry.example, Value.list(entry), shown);
    }

    /** A key that may be left out, with a single value for the whole or keys for its parts. */
    public <T> Key<T> may(String key, Form<T> form, Keys parts, String... shown) {
        return add(new Key<>(key, form, form.example(), Value.either(parts, Value.of(form)), false, shown(form.example(), shown)));
    }

    /** The same for a key that must stand there. */
    public <T> Key<T> must(String key, Form<T> form, Keys parts, String... shown) {
        return add(new Key<>(key, form, form.example(), Value.either(parts, Value.of(form)), true, shown(form.example(), shown)));
    }

    /** A key that was declared as another's is. */
    public <T> Key<T> add(Key<T> key) {
        all.put(key.name(), key);
        return key;
    }

    private static List<String> shown(String example, String... shown) {
        return shown.length == 0 ? List.of(example) : List.of(shown);
    }

    /** Other names for a key, understood and not shown, however their capitals, blanks and hyphens are written. */
    public Keys also(String key, String... names) {
        for (String name : names) {
            others.put(fold(name), key);
        }
        return this;
    }

    /** The key that is meant by a name: itself, or the one it is another name for. */
    public String meant(String name) {
        return all.containsKey(name) || others.isEmpty() ? name : others.getOrDefault(fold(name), name);
    }

    private static String fold(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", " ");
    }

    /** The other names, each with its key. */
    public Map<String, String> others() {
        return Map.copyOf(others);
    }

    /** What the thing is called in a schema. */
    public String name() {
        return name;
    }

    /** Whose keys they are, as it is told. */
    public Said what() {
        return what;
    }

    /** Such a thing, to show her. */
    public String example() {
        return example;
    }

    /** The names of the keys. */
    public Set<String> names() {
        return all.keySet();
    }

    /** The keys. */
    public List<Key<?>> all() {
        return List.copyOf(all.values());
    }

    @Override
    public JsonShape shape(Draft draft) {
        return draft.reference(this);
    }
}
