package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import kitleaf.basket.schema.Schemas;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** New files show every key that can stand in them, awake or asleep: whatever the schemas know. */
class NewKeysTests {

    /** A sleeping key with the lines that belong to it. */
    private static final Pattern SLEEPING = Pattern.compile("(?m)^#[a-z][a-z-]*:.*(\n#  .*)*");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"en, first-piece.yaml", "de, erste-stickerei.yaml"})
    void every_key_of_the_schemas_stands_in_the_new_files(String language, String first) throws IOException {
        assertEquals(0, Ran.kitleaf("new", "--language", language, folder).code());
        assertEquals(Set.of(), missing(Schemas.BASKET_FILE, folder.resolve("basket.yaml"), language));
        assertEquals(Set.of(), missing(Schemas.PIECE_FILE, folder.resolve("pieces").resolve(first), language));
    }

    private static Set<String> missing(String file, Path written, String language) throws IOException {
        JsonNode schema = new ObjectMapper().readTree(Schemas.files(Locale.forLanguageTag(language)).get(file));
        Set<String> known = new TreeSet<>();
        gather(schema, schema, "", known);
        assertTrue(known.size() > 60, known.toString());
        String text = Files.readString(written);
        Set<String> shown = new TreeSet<>();
        shown(new YAMLMapper().readTree(text), "", shown);
        for (String asleep : SLEEPING.matcher(text).results().map(MatchResult::group).toList()) {
            shown(new YAMLMapper().readTree(asleep.replaceAll("(?m)^#", "")), "", shown);
        }
        known.removeAll(shown);
        return known;
    }

    /** The paths of all keys; names of her own are written as *. A part's threads are threads like others. */
    private static void gather(JsonNode schema, JsonNode node, String path, Set<String> known) {
        if (node.has("$ref")) {
            gather(schema, schema.at(node.get("$ref").asText().substring(1)), path, known);
        }
        node.path("properties").properties().forEach(key -> {
            String own = (path + "/" + key.getKey()).replace("/parts[]/threads", "/threads");
            known.add(own);
            gather(schema, key.getValue(), own, known);
        });
        if (node.path("additionalProperties").isObject()) {
            gather(schema, node.get("additionalProperties"), path + "/*", known);
        }
        if (node.has("items")) {
            gather(schema, node.get("items"), path + "[]", known);
        }
        for (String either : List.of("anyOf", "oneOf", "allOf")) {
            node.path(either).forEach(one -> gather(schema, one, path, known));
        }
    }

    private static void shown(JsonNode node, String path, Set<String> shown) {
        node.properties().forEach(key -> {
            String own = path + "/" + (path.equals("/skeins") || path.equals("/prices") ? "*" : key.getKey());
            shown.add(own);
            shown(key.getValue(), own.replace("/parts[]/threads", "/threads"), shown);
        });
        if (node.isArray()) {
            node.forEach(item -> shown(item, path + "[]", shown));
        }
    }
}
