package kitleaf.basket.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every key that readers take stands in README.md with an example, and what README.md shows is right. */
class ReadmeKeysTests {

    private static final String PIECE = "piece: Fog bell\nstitches: 80 x 80\ncloth: {kind: linen, count: 28, over: 2}\n";

    private final JsonNode basket;
    private final JsonNode piece;
    private final Set<String> shown = new TreeSet<>();

    ReadmeKeysTests() throws IOException {
        basket = new ObjectMapper().readTree(Schemas.files(Locale.ENGLISH).get("basket.schema.json"));
        piece = new ObjectMapper().readTree(Schemas.files(Locale.ENGLISH).get("piece.schema.json"));
    }

    @Test
    void everyKeyStandsThereWithAnExample() throws IOException {
        ReadmeExamples readme = ReadmeExamples.read();
        table(readme, "### Keys of a piece", piece, "");
        table(readme, "### Keys of the cloth", piece, "cloth");
        table(readme, "### Keys of a thread", piece, "thread");
        table(readme, "### Keys of basket.yaml", basket, "");
        for (String block : readme.blocks()) {
            JsonNode example = Judge.documents(block).get(0);
            JsonNode root = isOf(basket, example) ? basket : piece;
            assertTrue(isOf(root, example), "README.md shows a key nobody knows: " + block);
            show(root, "", example);
        }
        Set<String> missing = new TreeSet<>();
        for (JsonNode root : List.of(basket, piece)) {
            missing.addAll(keys(root, ""));
            root.get("$defs").fieldNames().forEachRemaining(group -> missing.addAll(keys(root, group)));
        }
        assertTrue(missing.size() > 90, "only " + missing);
        missing.removeAll(shown);
        assertEquals(Set.of(), missing, "these keys have no example in README.md");
    }

    /** The readers see more than a schema; what stands alone in a table they take in an otherwise usual file. */
    @Test
    void theReadersTakeTheExamplesOfWholeFiles() throws IOException {
        ReadmeExamples readme = ReadmeExamples.read();
        for (String example : readme.table("### Keys of basket.yaml")) {
            // Prices and put-ups are held against other keys of the basket.
            String put = example.startsWith("prices:") ? "skeins: {silk: {length: 6 m, plies: 7}}\n" : "";
            assertEquals(List.of(), new Judge(null, false).byReader(put + example + "\n"), example);
        }
        for (String example : readme.table("### Keys of a piece")) {
            String key = example.substring(0, example.indexOf(':') + 1);
            String others = PIECE.lines().filter(line -> !line.startsWith(key)).map(line -> line + "\n").reduce("", String::concat);
            // Tables are not there to be read here.
            List<String> problems = new Judge(null, true).byReader(others + example + "\n");
            assertEquals(List.of(), problems, example);
        }
    }

    private void table(ReadmeExamples readme, String heading, JsonNode root, String group) {
        List<String> examples = readme.table(heading);
        assertTrue(examples.size() > 5, heading + " has only " + examples);
        examples.forEach(example -> show(root, group, Judge.documents(example).get(0)));
    }

    private static JsonNode group(JsonNode root, String name) {
        return name.isEmpty() ? root : root.get("$defs").get(name);
    }

    private static boolean isOf(JsonNode root, JsonNode example) {
        return example.isObject() && root.get("properties").has(example.fieldNames().next());
    }

    private static String named(JsonNode root, String group, String key) {
        return root.get("title").asText() + ": " + (group.isEmpty() ? "" : group + ".") + key;
    }

    private static List<String> keys(JsonNode root, String group) {
        List<String> keys = new ArrayList<>();
        group(root, group).get("properties").fieldNames().forEachRemaining(key -> keys.add(named(root, group, key)));
        return keys;
    }

    /** Notes what a mapping of a group shows; each of its values must be one that the schema takes. */
    private void show(JsonNode root, String group, JsonNode example) {
        for (Map.Entry<String, JsonNode> entry : example.properties()) {
            JsonNode property = group(root, group).get("properties").get(entry.getKey());
            assertTrue(property != null, () -> "README.md shows a key nobody knows: " + named(root, group, entry.getKey()));
            assertTrue(takes(root, property, entry.getValue()), () -> "README.md shows what is not taken: " + entry);
            shown.add(named(root, group, entry.getKey()));
            within(root, property, entry.getValue());
        }
    }

    private void within(JsonNode root, JsonNode schema, JsonNode value) {
        if (!takes(root, schema, value)) {
            return;
        }
        schema.path("anyOf").forEach(way -> within(root, way, value));
        if (value.isArray() && schema.has("items")) {
            value.forEach(item -> within(root, schema.get("items"), item));
        }
        if (value.isObject() && schema.has("$ref")) {
            show(root, schema.get("$ref").asText().substring("#/$defs/".length()), value);
        }
        if (value.isObject() && schema.path("additionalProperties").isObject()) {
            value.forEach(one -> within(root, schema.get("additionalProperties"), one));
        }
    }

    private static boolean takes(JsonNode root, JsonNode schema, JsonNode value) {
        ObjectNode alone = ((ObjectNode) schema).deepCopy();
        alone.set("$defs", root.get("$defs"));
        return Judge.VALIDATORS.getSchema(alone).validate(value).isEmpty();
    }
}
