package kitleaf.basket.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.representer.Representer;

/**
 * Every key of every file of the example and of the forms for new ones, as they stand and written in braces throughout: what an
 * edit is accepted for is all that differs, by another reader than Kitleaf's.
 */
class KeyEditPropertyTests {

    /** A value no file has. */
    private static final String NEW = "zz9";

    private int accepted;
    private int refused;

    private interface Edit {
        KeyEdit on(KeyEdit file) throws ByHand;
    }

    @Test
    void any_accepted_edit_changes_that_key_alone() throws IOException {
        for (String text : texts()) {
            for (int document = 1; document <= trees(text).size(); document++) {
                List<List<String>> values = new ArrayList<>();
                List<List<String>> groups = new ArrayList<>();
                List<List<String>> lists = new ArrayList<>();
                walk(trees(text).get(document - 1), new ArrayList<>(), values, groups, lists);
                for (List<String> path : values) {
                    check(text, document, path, old -> NEW, file -> file.set(NEW, path.toArray(String[]::new)));
                    check(text, document, path, old -> null, file -> file.remove(path.toArray(String[]::new)));
                    List<String> group = path.subList(0, path.size() - 1);
                    check(text, document, group, old -> renamed(old, path.get(path.size() - 1)),
                            file -> file.replace(NEW, List.of(NEW), path.toArray(String[]::new)));
                }
                for (List<String> path : groups) {
                    List<String> below = Stream.concat(path.stream(), Stream.of(NEW, "zz8")).toList();
                    check(text, document, below, old -> NEW, file -> file.set(NEW, below.toArray(String[]::new)));
                }
                for (List<String> path : lists) {
                    check(text, document, path, old -> Stream.concat(((List<?>) old).stream(), Stream.of(Map.of(NEW, "1"))).toList(),
                            file -> file.append(Map.of(NEW, "1"), path.toArray(String[]::new)));
                    check(text, document, path, old -> ((List<?>) old).subList(0, ((List<?>) old).size() - 1),
                            file -> file.removeLast(path.toArray(String[]::new)));
                }
            }
        }
        // As counted: what is refused stands over several lines, beside a remark, or alone.
        assertTrue(accepted > 4000 && refused < accepted / 20, accepted + " accepted, " + refused + " refused");
    }

    private void check(String text, int document, List<String> path, UnaryOperator<Object> wanted, Edit edit) {
        String after;
        try {
            after = new String(edit.on(KeyEdit.of(text.getBytes(StandardCharsets.UTF_8), document)).bytes(), StandardCharsets.UTF_8);
        } catch (ByHand none) {
            refused++;
            return;
        }
        accepted++;
        List<Object> trees = new ArrayList<>(trees(text));
        trees.set(document - 1, with(trees.get(document - 1), path, wanted));
        assertEquals(trees, trees(after), () -> path + " of\n" + text + "\nin\n" + after);
        assertEquals(remarks(text), remarks(after), () -> path + " of\n" + text + "\nin\n" + after);
    }

    private static List<String> texts() throws IOException {
        List<String> texts = new ArrayList<>();
        for (String folder : List.of("examples/harbour", "src/main/resources/kitleaf/command")) {
            try (Stream<Path> all = Files.walk(Path.of(folder))) {
                for (Path file : all.filter(one -> one.toString().endsWith(".yaml")).sorted().toList()) {
                    texts.add(Files.readString(file).replace("{piece}", "A").replace("{stitches}", "8 x 8")
                            .replace("{cloth}", "{kind: linen, count: 28, over: 2}").replace("{threads}", "threads:\n  - {code: K1}"));
                }
            }
        }
        DumperOptions braces = new DumperOptions();
        braces.setDefaultFlowStyle(DumperOptions.FlowStyle.FLOW);
        braces.setWidth(60);
        Yaml yaml = new Yaml(new Representer(braces), braces);
        List<String> all = new ArrayList<>(texts);
        texts.stream().map(text -> yaml.dumpAll(trees(text).iterator())).forEach(all::add);
        return all;
    }

    private static List<String> remarks(String text) {
        return text.lines().filter(line -> line.matches("#.*|.*\\s#.*")).map(line -> line.substring(line.indexOf('#'))).toList();
    }

    private static void walk(Object tree, List<String> path, List<List<String>> values, List<List<String>> groups,
                             List<List<String>> lists) {
        if (tree instanceof Map<?, ?> map) {
            groups.add(List.copyOf(path));
            map.forEach((key, value) -> walk(value, longer(path, key.toString()), values, groups, lists));
        } else if (tree instanceof List<?> list) {
            lists.add(List.copyOf(path));
            for (int i = 0; i < list.size(); i++) {
                walk(list.get(i), longer(path, Integer.toString(i)), values, groups, lists);
            }
        } else {
            values.add(List.copyOf(path));
        }
    }

    private static List<String> longer(List<String> path, String step) {
        return Stream.concat(path.stream(), Stream.of(step)).toList();
    }

    private static Object renamed(Object group, String key) {
        Map<Object, Object> copy = new LinkedHashMap<>((Map<?, ?>) group);
        copy.remove(key);
        copy.put(NEW, List.of(NEW));
        return copy;
    }

    private static Object with(Object tree, List<String> path, UnaryOperator<Object> change) {
        if (path.isEmpty()) {
            return change.apply(tree);
        }
        List<String> rest = path.subList(1, path.size());
        if (tree instanceof List<?> list) {
            List<Object> copy = new ArrayList<>(list);
            int index = Integer.parseInt(path.get(0));
            Object value = with(copy.get(index), rest, change);
            if (value == null) {
                copy.remove(index);
            } else {
                copy.set(index, value);
            }
            return copy;
        }
        Map<Object, Object> copy = new LinkedHashMap<>(tree == null ? Map.of() : (Map<?, ?>) tree);
        Object value = with(copy.get(path.get(0)), rest, change);
        if (value == null) {
            copy.remove(path.get(0));
        } else {
            copy.put(path.get(0), value);
        }
        return copy;
    }

    /** All documents of a text as SnakeYAML alone reads them; every value is a text. */
    private static List<Object> trees(String text) {
        List<Object> trees = new ArrayList<>();
        new Yaml(new LoaderOptions()).composeAll(new StringReader(text)).forEach(node -> trees.add(plain(node)));
        return trees;
    }

    private static Object plain(Node node) {
        if (node instanceof MappingNode mapping) {
            Map<Object, Object> map = new LinkedHashMap<>();
            for (NodeTuple pair : mapping.getValue()) {
                map.put(plain(pair.getKeyNode()), plain(pair.getValueNode()));
            }
            return map;
        }
        return node instanceof SequenceNode list ? list.getValue().stream().map(KeyEditPropertyTests::plain).toList()
                : ((ScalarNode) node).getValue();
    }
}
