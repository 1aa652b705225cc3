package kitleaf.basket.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.SchemaId;
import com.networknt.schema.SchemaLocation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The schemas say what the readers do, in the eyes of a validator that knows nothing of Kitleaf. */
class SchemasTests {

    private static final Path HARBOUR = Path.of("examples/harbour");
    private static final Judge BASKET = Judge.of("basket.schema.json");
    private static final Judge PIECE = Judge.of("piece.schema.json");

    @ParameterizedTest
    @ValueSource(strings = {"basket.schema.json", "piece.schema.json"})
    void theShippedSchemaIsTheOneTheReadersGive(String name) throws IOException {
        assertEquals(Schemas.files(Locale.ENGLISH).get(name), Files.readString(HARBOUR.resolve("schema").resolve(name)),
                "the shipped schema is out of step; write it anew with: java -jar target/kitleaf.jar schema --language en examples/harbour");
    }

    @ParameterizedTest
    @ValueSource(strings = {"basket.schema.json", "piece.schema.json"})
    void theSchemaIsOneByItsOwnStandard(String name) throws IOException {
        JsonSchema standard = Judge.VALIDATORS.getSchema(SchemaLocation.of(SchemaId.V202012));
        JsonNode schema = new ObjectMapper().readTree(Schemas.files(Locale.ENGLISH).get(name));
        assertEquals(List.of(), List.copyOf(standard.validate(schema)));
        // The standard can refuse: a type must be one of seven words.
        assertEquals(1, standard.validate(((ObjectNode) schema.deepCopy()).put("type", "thing")).stream()
                .map(message -> message.getInstanceLocation().toString()).distinct().count());
    }

    static List<Path> pieceFiles() throws IOException {
        try (Stream<Path> files = Files.list(HARBOUR.resolve("pieces"))) {
            List<Path> yaml = files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
            assertTrue(yaml.size() >= 12, yaml.toString());
            return yaml;
        }
    }

    @ParameterizedTest
    @MethodSource("pieceFiles")
    void everyExamplePieceIsTakenAndNamesItsSchema(Path file) throws IOException {
        String text = Files.readString(file);
        assertEquals(List.of(), PIECE.bySchema(text));
        for (String document : text.split("(?m)^---\n")) {
            assertTrue(document.startsWith(Schemas.PIECE_COMMENT + "\n"), "write " + Schemas.PIECE_COMMENT + " above:\n" + document);
        }
        assertSameFile("piece.schema.json", file, Schemas.PIECE_COMMENT);
    }

    @Test
    void theExampleBasketIsTakenAndNamesItsSchema() throws IOException {
        Path file = HARBOUR.resolve("basket.yaml");
        String text = Files.readString(file);
        assertEquals(List.of(), BASKET.bySchema(text));
        assertTrue(text.startsWith(Schemas.BASKET_COMMENT + "\n"), text);
        assertSameFile("basket.schema.json", file, Schemas.BASKET_COMMENT);
    }

    /** An editor looks for the schema from the folder of the file that names it. */
    private static void assertSameFile(String name, Path from, String comment) throws IOException {
        Path named = from.resolveSibling(comment.substring(comment.indexOf('=') + 1));
        assertTrue(Files.isSameFile(HARBOUR.resolve("schema").resolve(name), named), named.toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "an unknown key               | stiches: 140 x 210",
        "a bare length                | margin: 3",
        "a bare length in quotes      | margin: \"3\"",
        "a length in another unit     | margin: 3 ells",
        "a decimal comma              | margin: \"7,5 cm\"",
        "a wrong choice               | finish: framd",
        "a choice in capitals         | finish: Framed",
        "a chart of one side          | stitches: 140",
        "a chart of words             | stitches: wide x high",
        "no cloth kind of that name   | cloth: {kind: linnen, count: 36, over: 2}",
        "a count of no cloth          | cloth: {kind: linen, count: 200, over: 2}",
        "a count without its unit     | cloth: {kind: linen, count: 71 in 2, over: 2}",
        "half a count                 | cloth: {kind: linen, count: {warp: 36}, over: 2}",
        "over no threads              | cloth: {kind: linen, count: 36, over: 0}",
        "a share without its sign     | cloth: {kind: linen, count: 36, over: 2, shrink: 2}",
        "a key of something else      | cloth: {kind: linen, count: 36, over: 2, strands: 2}",
        "neither yes nor no           | cloth: {kind: linen, count: 36, over: 2, over-dyed: maybe}",
        "a list where keys belong     | cloth: [linen, 36]",
        "a word where a list belongs  | threads: K12",
        "a thread without a code      | threads: [{name: Ebb grey}]",
        "a colour without its sign    | threads: [{code: K12, colour: 6b7f8c}]",
        "a colour that is a remark    | threads: [{code: K12, colour: }]",
        "a symbol of four signs       | threads: [{code: K12, symbol: abcd}]",
        "half a strand                | threads: [{code: K12, strands: 1.5}]",
        "a stitch nobody knows        | threads: [{code: K12, stitches: {crossed: 12}}]",
        "a number of words            | threads: [{code: K12, stitches: {cross: many}}]",
        "other stitches without each  | threads: [{code: K12, stitches: {other: {count: 12}}}]",
        "a part without over          | parts: [{part: Verse}]",
        "a day the other way round    | progress: {started: 14.02.2026}",
        "a month there is not         | progress: {started: 2026-13-01}",
        "a log entry without hours    | progress: {log: [{on: 2026-03-01, stitches: 260}]}",
        "a day of 25 hours            | progress: {log: [{on: 2026-03-01, hours: 25, stitches: 260}]}",
        "a goal of no weight          | goal: {weight: 0}",
        "nothing after a key          | designer:"})
    void whatASchemaCanSeeIsRefusedInAPieceByBoth(String what, String line) {
        String key = line.substring(0, line.indexOf(':'));
        String good = "piece: Fog bell\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\n";
        String text = good.lines().filter(l -> !l.startsWith(key + ":")).map(l -> l + "\n").reduce("", String::concat) + line + "\n";
        assertEquals(List.of(), PIECE.bySchema(good));
        assertEquals(List.of(), PIECE.byReader(good));
        assertFalse(PIECE.bySchema(text).isEmpty(), "the schema takes " + what);
        assertFalse(PIECE.byReader(text).isEmpty(), "the reader takes " + what);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "an unknown key               | titel: Harbour",
        "a paper nobody knows         | paper: A9",
        "a unit nobody knows          | units: inch",
        "a bare length                | cut-step: 0.25",
        "a key of something else      | printer: {measured: 99.3 mm}",
        "a skein without plies        | skeins: {silk: {length: 6 m}}",
        "a price without currency     | prices: {cotton: 1.20}",
        "a stash without skeins       | stash: [{code: K12}]",
        "no skeins at all             | stash: [{code: K12, skeins: 0}]",
        "a label of one length by none | label-stock: {columns: 3, rows: 10, label: 40, first: 5 mm x 5 mm}",
        "a shape nobody knows         | label-stock: {columns: 3, rows: 10, label: 40 mm, first: 5 mm x 5 mm, shape: oval}",
        "a tag of no size             | tags: {size: third}",
        "a cloth without its size     | cloth-on-hand: [{name: Oyster, kind: linen, count: 40}]",
        "a flaw without its width     | cloth-on-hand: [{name: Oyster, kind: linen, count: 40, size: 70 cm x 90 cm, flaws: [{from-left: 2 cm}]}]",
        "a cut without a name         | cloth-cuts: [{size: 27 in x 18 in}]",
        "a bare fray                  | cutting: {fray: 3}",
        "no hours a week              | pace: {hours-per-week: 0}",
        "time off from no day         | time-off: [{to: 2027-07-18}]",
        "goals of no year             | goals: {choose: 9}",
        "a year in which nobody stitches | goals: {year: 27}",
        "a share without its sign     | goals: {year: 2027, main-share: 0.7}",
        "a grid of eleven             | goals: {year: 2027, cards: 11 x 3}"})
    void whatASchemaCanSeeIsRefusedInABasketByBoth(String what, String line) {
        assertFalse(BASKET.bySchema(line).isEmpty(), "the schema takes " + what);
        assertFalse(BASKET.byReader(line).isEmpty(), "the reader takes " + what);
    }

    @ParameterizedTest
    @ValueSource(strings = {"basket.schema.json", "piece.schema.json"})
    void whatEditorsOfferIsTaken(String name) throws IOException {
        JsonNode root = new ObjectMapper().readTree(Schemas.files(Locale.ENGLISH).get(name));
        List<JsonNode> groups = new ArrayList<>(List.of(root));
        root.get("$defs").forEach(groups::add);
        int offered = 0;
        for (JsonNode group : groups) {
            assertFalse(group.get("additionalProperties").asBoolean(true), group.toString());
            for (Map.Entry<String, JsonNode> property : group.get("properties").properties()) {
                assertTrue(property.getValue().get("description").asText().matches("(?s)\\p{L}.*\\."), property.toString());
                ObjectNode alone = ((ObjectNode) property.getValue()).deepCopy();
                alone.set("$defs", root.get("$defs"));
                for (JsonNode example : property.getValue().path("examples")) {
                    assertEquals(List.of(), List.copyOf(Judge.VALIDATORS.getSchema(alone).validate(example)), property.getKey());
                    offered++;
                }
            }
        }
        assertTrue(offered > 50, "only " + offered + " examples");
    }
}
