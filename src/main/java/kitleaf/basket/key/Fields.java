package kitleaf.basket.key;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.place.Advice;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.yaml.Node;
import kitleaf.words.NearMiss;
import kitleaf.words.Said;

/**
 * The keys of one mapping, asked for one by one. Keys that may not stand there are told at once; a value that is
 * missing or cannot be read is told once and is then simply not there.
 */
public final class Fields {

    /** No value but words is longer, and words are told to be too long by their form. */
    private static final int LONGEST_VALUE = 1000;

    /** A value in quotes that are none to YAML. */
    private static final Pattern CURLY = Pattern.compile("[“”„‟«»‘’‚‛](.+)[“”„‟«»‘’‚‛]");

    /** What stands under each known key. It is there for every value and told of hardly any. */
    private static final Map<String, Said> SAID = new ConcurrentHashMap<>();

    private final Node.Mapping mapping;
    private final Said what;
    private final Problems problems;
    /** Known keys that were probably meant by unknown ones: telling that they are missing too would be noise. */
    private final Set<String> misspelt = new HashSet<>(2);

    private Fields(Node.Mapping mapping, Said what, Problems problems) {
        this.mapping = mapping;
        this.what = what;
        this.problems = problems;
    }

    /** The keys of a node, or nothing and a problem if it has none. */
    public static Optional<Fields> of(Node node, Keys keys, Problems problems) {
        return of(named(node, keys, problems), keys.what(), keys.example(), keys.names(), problems);
    }

    /** The same with keys by our names, where any stands there by another one. */
    private static Node named(Node node, Keys keys, Problems problems) {
        if (!(node instanceof Node.Mapping mapping) || mapping.entries().keySet().stream().allMatch(key -> keys.meant(key).equals(key))) {
            return node;
        }
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        mapping.entries().forEach((key, entry) -> {
            if (entries.putIfAbsent(keys.meant(key), entry) != null) {
                problems.add(entry.key(), Fault.of("fields.twice", Quote.bare(keys.meant(key))));
            }
        });
        return new Node.Mapping(mapping.place(), entries);
    }

    /**
     * The same where the keys are not all ours.
     *
     * @param what whose keys they are: {@link #key} or another phrase that begins with {@code thing}
     * @param example such a mapping, to show her
     * @param known the keys that may stand there
     */
    public static Optional<Fields> of(Node node, Said what, String example, Collection<String> known, Problems problems) {
        if (node instanceof Node.Refused) {
            return Optional.empty();
        }
        if (!(node instanceof Node.Mapping mapping)) {
            problems.add(node.place(), Fault.of("fields.no-keys", what, example));
            return Optional.empty();
        }
        Fields fields = new Fields(mapping, what, problems);
        for (Map.Entry<String, Node.Entry> entry : mapping.entries().entrySet()) {
            if (!known.contains(entry.getKey())) {
                fields.unknown(entry.getKey(), entry.getValue(), known);
            }
        }
        return Optional.of(fields);
    }

    private void unknown(String key, Node.Entry entry, Collection<String> known) {
        int colon = key.indexOf(':');
        if (colon > 0 && known.contains(key.substring(0, colon))) {
            misspelt.add(key.substring(0, colon));
            problems.add(entry.key(), Fault.of("fields.no-space", Quote.bare(key), key.substring(0, colon + 1)));
        } else {
            NearMiss.of(key, known).ifPresent(misspelt::add);
            problems.add(entry.key(), Fault.of(Said.of("fields.unknown", Quote.bare(key), what), Advice.on(key, known)));
        }
    }

    /** What stands under a key, as it is told; only for keys that the readers know. */
    public static Said key(String key) {
        Said said = SAID.get(key);
        if (said == null) {
            said = Said.of("thing.key", key);
            SAID.put(key, said);
        }
        return said;
    }

    public Place place() {
        return mapping.place();
    }

    public boolean has(String key) {
        return mapping.entries().containsKey(key);
    }

    /** Whether the key is there or was probably meant by a misspelt one. */
    public boolean meant(String key) {
        return has(key) || misspelt.contains(key);
    }

    /** Where the value of a key stands, or the mapping if the key is not there. */
    public Place placeOf(String key) {
        return has(key) ? mapping.entries().get(key).value().place() : place();
    }

    /** The node under a key, if there is one with something in it. */
    public Optional<Node> node(String key, String example) {
        Node.Entry entry = mapping.entries().get(key);
        if (entry == null || entry.value() instanceof Node.Refused) {
            return Optional.empty();
        }
        if (entry.value() instanceof Node.Scalar scalar && scalar.missing()) {
            noValue(key, entry, example);
            return Optional.empty();
        }
        return Optional.of(entry.value());
    }

    /** The node under a key, if there is one with something in it; that one is missing which must stand there is told. */
    public Optional<Node> node(Key<?> key) {
        if (key.needed()) {
            require(key);
        }
        return node(key.name(), key.example());
    }

    /** The value under a key, if it is there; that one is missing which must stand there is told. */
    public <T> Optional<T> value(Key<T> key) {
        return value(key, key.form());
    }

    /** The same, read by what is known of values in this basket. */
    public <T> Optional<T> value(Key<T> key, Form<T> form) {
        Optional<Node> node = node(key);
        return node.isEmpty() ? Optional.empty() : scalar(node.get(), key(key.name()), form);
    }

    /** The value under a key that must be there in this case. */
    public <T> Optional<T> required(Key<T> key) {
        require(key);
        return value(key);
    }

    /** The same; if it is not there, that is told with how to find it. */
    public <T> Optional<T> required(Key<T> key, Form<T> form, Said how) {
        if (!meant(key.name())) {
            missing(key.name(), form.example(), how);
        }
        return value(key.name(), form);
    }

    /** The value under a key, if it is there. */
    public <T> Optional<T> value(String key, Form<T> form) {
        Optional<Node> node = node(key, form.example());
        return node.isEmpty() ? Optional.empty() : scalar(node.get(), key(key), form);
    }

    /** One value, read from a node. */
    public <T> Optional<T> scalar(Node node, Said what, Form<T> form) {
        return scalar(node, what, form, problems);
    }

    public static <T> Optional<T> scalar(Node node, Said what, Form<T> form, Problems problems) {
        if (node instanceof Node.Refused) {
            return Optional.empty();
        }
        if (!(node instanceof Node.Scalar scalar) || scalar.missing()) {
            problems.add(node.place(), Fault.of("fields.no-scalar", what, form.example()));
            return Optional.empty();
        }
        try {
            if (scalar.text().length() > LONGEST_VALUE) {
                throw Fault.of("text.long", Quote.bare(scalar.text()), scalar.text().length(), TextForm.LONGEST);
            }
            return Optional.of(form.read(scalar.text()));
        } catch (Fault fault) {
            problems.add(node.place(), curly(scalar.text(), form).orElse(fault));
            return Optional.empty();
        }
    }

    /** What is wrong with a value that would be right without the quotes of a program for letters. */
    private static Optional<Fault> curly(String text, Form<?> form) {
        Matcher quoted = CURLY.matcher(text.strip());
        if (!quoted.matches()) {
            return Optional.empty();
        }
        try {
            form.read(quoted.group(1));
            return Optional.of(Fault.of("text.curly", Quote.bare(text.strip()), quoted.group(1)));
        } catch (Fault alsoWrong) {
            return Optional.empty();
        }
    }

    /** One value for a whole, or two by key; both must be there. */
    public <T, P> Optional<P> oneOrTwo(Key<T> key, Pair<T> parts, Function<T, P> one, Pairing<T, P> two) {
        Optional<Node> node = node(key);
        if (node.isEmpty() || !(node.get() instanceof Node.Mapping)) {
            return node.flatMap(n -> scalar(n, key(key.name()), key.form())).map(one);
        }
        return of(node.get(), parts.keys(), problems).flatMap(pair -> {
            Optional<T> a = pair.value(parts.first());
            Optional<T> b = pair.value(parts.second());
            return a.flatMap(x -> b.map(y -> two.of(x, y)));
        });
    }

    /** Two keys that must both be there. */
    public record Pair<T>(Keys keys, Key<T> first, Key<T> second) {
    }

    /** Makes one thing of two. */
    public interface Pairing<T, P> {
        P of(T first, T second);
    }

    /** The keys of the mapping under a key, if it is there. */
    public Optional<Fields> group(Key<?> key, Keys keys) {
        return node(key).flatMap(node -> of(node, keys, problems));
    }

    /** The entries of the list under a key; none if there is no such key. */
    public List<Node> list(Key<?> key) {
        return node(key).map(node -> items(node, key)).orElseGet(List::of);
    }

    /** The entries of a list; none and a problem if it is no list. */
    public List<Node> items(Node node, Key<?> key) {
        return items(node, Fault.of("fields.no-list", key.name(), key.example()));
    }

    /** The entries of a list, or of what may stand in a table of its own; none and a problem if it is neither. */
    public List<Node> itemsOrTable(Node node, Key<?> key) {
        return items(node, Fault.of("fields.no-list-or-table", key.name(), key.example()));
    }

    private List<Node> items(Node node, Fault fault) {
        if (node instanceof Node.Sequence sequence) {
            return sequence.items();
        }
        problems.add(node.place(), fault);
        return List.of();
    }

    /** The mapping's entries, in the order they were written. */
    public Map<String, Node.Entry> entries() {
        return mapping.entries();
    }

    public void wrong(String key, Fault fault) {
        problems.add(placeOf(key), fault);
    }

    /** Tells that a key is missing, if it is. */
    public void require(Key<?> key) {
        if (!meant(key.name())) {
            missing(key.name(), key.example(), Said.of("fields.missing.write", what, key.name(), key.example()));
        }
    }

    private void missing(String key, String example, Said how) {
        problems.add(place(), Fault.of(Said.of("fields.missing.wrong", what, key, example), how));
    }

    private void noValue(String key, Node.Entry entry, String example) {
        Place at = entry.value().place();
        String rest = at.source().line(at.line()).map(line -> line.substring(
                line.offsetByCodePoints(0, Math.min(at.column() - 1, line.codePointCount(0, line.length()))))).orElse("");
        String remark = rest.strip();
        if (remark.startsWith("#") && !remark.startsWith("# ") && remark.length() <= 30) {
            int column = at.column() + rest.length() - rest.stripLeading().length();
            problems.add(new Place(at.source(), at.line(), column, remark.length()),
                    Fault.of("fields.remark", key, remark));
        } else {
            problems.add(entry.key(), Fault.of("fields.no-value", key, example));
        }
    }
}
