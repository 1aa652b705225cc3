package kitleaf.basket.yaml;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;

/** Gives what a node holds as JSON would: maps, lists, strings, numbers and booleans, after the core schema of YAML 1.2. */
public final class Plain {

    private Plain() {
    }

    public static Object of(Node node) {
        if (node instanceof Node.Mapping mapping) {
            Map<String, Object> plain = new LinkedHashMap<>();
            mapping.entries().forEach((key, entry) -> plain.put(key, of(entry.value())));
            return plain;
        }
        if (node instanceof Node.Sequence sequence) {
            return sequence.items().stream().map(Plain::of).toList();
        }
        if (node instanceof Node.Scalar scalar) {
            return scalar.quoted() ? scalar.text() : word(scalar.text());
        }
        throw new IllegalArgumentException("nothing was read at line " + node.place().line());
    }

    private static Object word(String text) {
        if (text.equals("true") || text.equals("false")) {
            return text.equals("true");
        }
        return text.matches("[0-9]+(\\.[0-9]+)?") ? new BigDecimal(text) : text;
    }
}
