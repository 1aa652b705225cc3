package kitleaf.basket.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every key that readers take stands in README.md or a page it leads to with an example, and what they show is right. */
class ReadmeKeysTests {

    private static final String PIECE = "piece: Fog bell\nstitches: 80 x 80\ncloth: {kind: linen, count: 28, over: 2}\n";

    private static final String OF_CLOTH_ON_HAND = "cloth: {name: Sea-mist, over: 2}";

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
        table(readme, "## each file in pieces", piece, "");
        table(readme, "## cloth", piece, "cloth");
        table(readme, "## parts.threads, threads", piece, "thread");
        table(readme, "## basket.yaml", basket, "");
        for (String block : readme.blocks()) {
            JsonNode example = Judge.documents(block).get(0);
            JsonNode root = isOf(basket, example) ? basket : piece;
            assertTrue(isOf(root, example), "README.md or a page of it shows a key nobody knows: " + block);
            show(root, "", example);
        }
        Set<String> missing = new TreeSet<>();
        for (JsonNode root : List.of(basket, piece)) {
            missing.addAll(keys(root, ""));
            root.get("$defs").fieldNames().forEachRemaining(group -> missing.addAll(keys(root, group)));
        }
        assertTrue(missing.size() > 90, "only " + missing);
        missing.removeAll(shown);
        assertEquals(Set.of(), missing, "these keys have no example in README.md and its pages");
    }

    @Test
    void readmeIsShortAndLeadsToEveryPageAndHeadingItNames() throws IOException {
        assertTrue(Files.readAllLines(Path.of("README.md")).size() <= 250);
        Set<String> pages = new TreeSet<>(ReadmeExamples.pages());
        try (Stream<Path> files = Files.walk(Path.of("examples"))) {
            Set<String> there = files.map(Path::toString).filter(file -> file.endsWith(".md")).collect(Collectors.toSet());
            assertEquals(there, pages);
        }
        pages.add("README.md");
        for (String page : pages) {
            Matcher link = Pattern.compile("\\]\\(([^)#]*)(?:#([^)]*))?\\)").matcher(Files.readString(Path.of(page)));
            while (link.find()) {
                Path to = link.group(1).isEmpty() ? Path.of(page) : Path.of(page).resolveSibling(link.group(1)).normalize();
                assertTrue(Files.exists(to), page + " leads to " + to);
                String heading = link.group(2);
                assertTrue(heading == null || Files.readAllLines(to).stream().filter(line -> line.startsWith("#"))
                        .map(line -> line.replaceFirst("#+ ", "").toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9 -]", "").replace(' ', '-'))
                        .anyMatch(heading::equals), page + " leads to " + link.group());
            }
        }
    }

    /** The readers see more than a schema; what stands alone in a table they take in an otherwise usual file. */
    @Test
    void theReadersTakeTheExamplesOfWholeFiles() throws IOException {
        ReadmeExamples readme = ReadmeExamples.read();
        for (String example : readme.table("## basket.yaml")) {
            // Prices and put-ups are held against other keys of the basket.
            String put = example.startsWith("prices:") ? "skeins: {silk: {length: 6 m, plies: 7}}\n" : "";
            assertEquals(List.of(), new Judge(null, false).byReader(put + example + "\n"), example);
        }
        for (String example : readme.table("## each file in pieces")) {
            String key = example.substring(0, example.indexOf(':') + 1);
            String others = PIECE.lines().filter(line -> !line.startsWith(key)).map(line -> line + "\n").reduce("", String::concat);
            // Tables are not there to be read here.
            List<String> problems = new ArrayList<>(new Judge(null, true).byReader(others + example + "\n"));
            if (example.equals(OF_CLOTH_ON_HAND)) {
                // No basket with such a cloth is there to take these from.
                assertTrue(problems.removeIf(problem -> problem.contains("cloth has no kind;")), problems::toString);
                assertTrue(problems.removeIf(problem -> problem.contains("cloth has no count;")), problems::toString);
            }
            if (example.contains("skein: hand-dyed")) {
                String other = "\"hand-dyed\" is not a skein of this basket;";
                assertTrue(problems.removeIf(problem -> problem.contains(other)), problems::toString);
            }
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
            assertTrue(property != null, () -> "README.md or a page of it shows a key nobody knows: " + named(root, group, entry.getKey()));
            assertTrue(takes(root, property, entry.getValue()), () -> "README.md or a page of it shows what is not taken: " + entry);
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
