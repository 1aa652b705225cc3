package kitleaf.basket.edit;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Source;
import kitleaf.basket.place.SourceReader;
import kitleaf.basket.yaml.Node;
import kitleaf.basket.yaml.YamlTree;

/**
 * A document of a YAML file whose keys can be given other values. Each edit gives a new one and leaves every other byte of the file
 * as it is: remarks, blank lines, line ends, byte order mark. It is proposed by the parser's marks, read again by the reader of
 * baskets, and taken only if what was asked for is all that differs; nothing is written to disk here.
 *
 * <p>A path is the keys from the outermost in; a number steps into a list, from 0. A value is a text, or a map or list of values.
 */
public final class KeyEdit {

    /** Problems of a text in memory are not told, so it needs no name. */
    private static final Path UNNAMED = Path.of("");

    private final byte[] bytes;
    private final int document;

    private KeyEdit(byte[] bytes, int document) {
        this.bytes = bytes;
        this.document = document;
    }

    /**
     * A document of a file.
     *
     * @param bytes of the whole file; not copied
     * @param document which one, from 1
     */
    public static KeyEdit of(byte[] bytes, int document) {
        return new KeyEdit(bytes, document);
    }

    /** The whole file as it is by now; not copied. */
    public byte[] bytes() {
        return bytes;
    }

    /** What stands at a path, as text, map or list; nothing where nothing does, or the text cannot be read as YAML. */
    public Optional<Object> value(String... path) {
        Object held = source().flatMap(KeyEdit::trees).filter(trees -> document <= trees.size()).map(trees -> trees.get(document - 1))
                .orElse(null);
        for (String step : path) {
            int index = held instanceof List<?> list ? KeyPlace.index(step, list.size()) : -1;
            held = held instanceof Map<?, ?> map ? map.get(step) : index < 0 ? null : ((List<?>) held).get(index);
        }
        return Optional.ofNullable(held);
    }

    /**
     * Gives a key a value, in the place of its old one; a key that is not there is written, with the groups it lies in.
     *
     * @throws ByHand where the old value goes over several lines or has a remark in it, or the text cannot be read as YAML
     */
    public KeyEdit set(Object value, String... path) throws ByHand {
        List<String> keys = List.of(path);
        String last = keys.get(keys.size() - 1);
        return changed(new ByHand(ByHand.Deed.WRITE, keys.subList(0, keys.size() - 1), last + ": " + YamlWords.flow(value)),
                place -> place.set(keys, value), tree -> with(tree, keys, old -> plain(value)));
    }

    /**
     * Adds an item to the end of a list; a list that is not there is written.
     *
     * @throws ByHand where no list stands at the path but something else, or the text cannot be read as YAML
     */
    public KeyEdit append(Object item, String... path) throws ByHand {
        List<String> keys = List.of(path);
        return changed(new ByHand(ByHand.Deed.ADD, keys, "- " + YamlWords.flow(item)), place -> place.append(keys, item),
                tree -> with(tree, keys, old -> {
                    List<Object> list = new ArrayList<>(old instanceof List<?> items ? items : List.of());
                    list.add(plain(item));
                    return list;
                }));
    }

    /**
     * Takes out a key with its value, or an item of a list, with the lines they stand on.
     *
     * @throws ByHand where it is not there, is the only one of a group of lines, has a remark on its lines, or the text cannot be
     *         read as YAML
     */
    public KeyEdit remove(String... path) throws ByHand {
        List<String> keys = List.of(path);
        return changed(new ByHand(ByHand.Deed.TAKE_OUT, keys, ""), place -> place.remove(keys), tree -> with(tree, keys, old -> null));
    }

    /**
     * Takes out the last item of a list, as {@link #remove} does.
     *
     * @throws ByHand as that does, and where there is no such item
     */
    public KeyEdit removeLast(String... path) throws ByHand {
        List<String> keys = new ArrayList<>(List.of(path));
        keys.add(Integer.toString(value(path).filter(List.class::isInstance).map(items -> ((List<?>) items).size() - 1).orElse(0)));
        return remove(keys.toArray(String[]::new));
    }

    /**
     * Writes another key and its value where a key stands, as {@code pieces: [a, b]} for {@code choose: 2}.
     *
     * @param path the old key
     * @throws ByHand where {@link #set} could not give the old key the value, or the new key stands there already
     */
    public KeyEdit replace(String key, Object value, String... path) throws ByHand {
        List<String> keys = List.of(path);
        List<String> group = keys.subList(0, keys.size() - 1);
        return changed(new ByHand(ByHand.Deed.WRITE_INSTEAD, keys, key + ": " + YamlWords.flow(value)),
                place -> place.replace(keys, key, value), tree -> with(with(tree, keys, old -> null), group, old -> {
                    Map<Object, Object> map = new LinkedHashMap<>((Map<?, ?>) old);
                    map.put(key, plain(value));
                    return map;
                }));
    }

    private KeyEdit changed(ByHand otherwise, Function<KeyPlace, List<KeyPlace.Change>> places, UnaryOperator<Object> wanted)
            throws ByHand {
        Optional<Source> source = source();
        List<Object> trees = new ArrayList<>(source.flatMap(KeyEdit::trees).orElseThrow(() -> otherwise));
        List<KeyPlace.Change> changes = KeyPlace.in(source.get().text(), document).map(places).orElse(List.of());
        // A file of remarks has no document yet.
        if (changes.isEmpty() || document > Math.max(1, trees.size())) {
            throw otherwise;
        }
        String text = KeyPlace.changed(source.get(), changes);
        Object edited = wanted.apply(trees.isEmpty() ? null : trees.remove(document - 1));
        trees.add(document - 1, edited);
        if (!trees(new Source(UNNAMED, text)).filter(trees::equals).isPresent()) {
            throw otherwise;
        }
        byte[] body = text.getBytes(StandardCharsets.UTF_8);
        int mark = bytes.length - source.get().text().getBytes(StandardCharsets.UTF_8).length;
        byte[] after = Arrays.copyOf(bytes, mark + body.length);
        System.arraycopy(body, 0, after, mark, body.length);
        return new KeyEdit(after, document);
    }

    private Optional<Source> source() {
        return SourceReader.decode(bytes, UNNAMED, new Problems());
    }

    /** All documents of a text as maps, lists and texts; nothing if there is a fault in its YAML. */
    private static Optional<List<Object>> trees(Source source) {
        Problems problems = new Problems();
        List<Node> documents = YamlTree.read(source, problems).documents();
        return problems.none() ? Optional.of(documents.stream().map(KeyEdit::plain).toList()) : Optional.empty();
    }

    private static Object plain(Node node) {
        if (node instanceof Node.Mapping mapping) {
            Map<Object, Object> map = new LinkedHashMap<>();
            mapping.entries().forEach((key, entry) -> map.put(key, plain(entry.value())));
            return map;
        }
        if (node instanceof Node.Sequence list) {
            return list.items().stream().map(KeyEdit::plain).toList();
        }
        // Words on lines of their own end in a line break as soon as anything follows them; no reader takes that for a part of them.
        return node instanceof Node.Scalar scalar && !scalar.missing() ? scalar.text().stripTrailing() : null;
    }

    private static Object plain(Object value) {
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> copy = new LinkedHashMap<>();
            map.forEach((key, one) -> copy.put(key.toString(), plain(one)));
            return copy;
        }
        return value instanceof List<?> list ? list.stream().map(KeyEdit::plain).toList() : value.toString();
    }

    /** A tree with what stands at a path changed; nothing in its place takes it out, and what is missing on the way is made. */
    private static Object with(Object tree, List<String> path, UnaryOperator<Object> change) {
        if (path.isEmpty()) {
            return change.apply(tree);
        }
        String key = path.get(0);
        List<String> rest = path.subList(1, path.size());
        if (tree instanceof List<?> list) {
            List<Object> copy = new ArrayList<>(list);
            int index = KeyPlace.index(key, list.size());
            Object value = index < 0 ? null : with(copy.remove(index), rest, change);
            if (value != null) {
                copy.add(index, value);
            }
            return copy;
        }
        Map<Object, Object> copy = new LinkedHashMap<>(tree instanceof Map<?, ?> map ? map : Map.of());
        Object value = with(copy.get(key), rest, change);
        if (value == null) {
            copy.remove(key);
        } else {
            copy.put(key, value);
        }
        return copy;
    }
}
