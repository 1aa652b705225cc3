package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import kitleaf.basket.schema.Schemas;
import kitleaf.command.files.NewFiles;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** New files name the schemas that stand beside them, in the eyes of whoever follows the comment as an editor does. */
class NewSchemaTests {

    private static final String COMMENT = "# yaml-language-server: $schema=";

    @TempDir
    private Path folder;
    private Path basket;
    private Path pieces;
    private Path schemas;

    @BeforeEach
    void names() {
        basket = folder.resolve("basket");
        pieces = basket.resolve("pieces");
        schemas = basket.resolve("schema");
    }

    /** What a file's own schema, found from the file's folder by its first line, has against it. */
    private static List<String> bySchema(Path file, String text) throws IOException {
        String first = Files.readAllLines(file).get(0);
        assertTrue(first.startsWith(COMMENT), first);
        JsonNode schema = new ObjectMapper().readTree(file.resolveSibling(first.substring(COMMENT.length())).toFile());
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schema).validate(new YAMLMapper().readTree(text)).stream()
                .map(Object::toString).toList();
    }

    private static void taken(Path file) throws IOException {
        String text = Files.readString(file);
        // A file of remarks alone is an empty mapping to an editor, and nothing to this parser.
        assertEquals(List.of(), bySchema(file, new YAMLMapper().readTree(text).isMissingNode() ? "{}" : text));
        assertFalse(bySchema(file, text + "\nstiches: 9 x 9\n").isEmpty(), "the schema of " + file + " takes anything");
    }

    @Test
    void a_new_basket_and_its_pieces_are_taken_by_the_schemas_they_name() throws IOException {
        Ran ran = Ran.answering("Fog bell\n80 x 90\nlinen\n71 in 2 in\n2\nK12\nEbb grey\n2310\n\n", "new", basket);
        assertEquals(0, ran.code(), ran.err());
        Ran second = Ran.kitleaf("new", "--piece", "Tide table", basket);
        assertEquals(0, second.code(), second.err());
        assertEquals("wrote " + pieces.resolve("tide-table.yaml") + "\n", second.out());
        assertEquals(Schemas.files(Locale.ENGLISH).keySet(), Set.copyOf(Ran.files(schemas)));
        for (String name : Ran.files(schemas)) {
            assertEquals(Schemas.files(Locale.ENGLISH).get(name), Files.readString(schemas.resolve(name)));
        }
        taken(basket.resolve("basket.yaml"));
        taken(pieces.resolve("fog-bell.yaml"));
        taken(pieces.resolve("tide-table.yaml"));
        Ran check = Ran.kitleaf("check", basket);
        assertEquals(0, check.code(), check.err());
    }

    @Test
    void a_piece_brings_its_schema_to_a_basket_that_has_none() throws IOException {
        Files.createDirectories(pieces);
        Ran ran = Ran.kitleaf("new", "--piece", "Fog bell", basket);
        assertEquals(0, ran.code(), ran.err());
        assertEquals("wrote " + schemas.resolve("piece.schema.json") + ", by which editors check as you type\nwrote " + pieces.resolve("fog-bell.yaml")
                + "\n", ran.out());
        assertEquals(List.of("piece.schema.json"), Ran.files(schemas));
        taken(pieces.resolve("fog-bell.yaml"));
    }

    @Test
    void schemas_that_are_there_stay_as_they_are() throws IOException {
        Files.createDirectories(schemas);
        Path mine = Files.writeString(schemas.resolve("piece.schema.json"), "{}");
        assertEquals(0, Ran.kitleaf("new", basket).code());
        assertEquals(0, Ran.kitleaf("new", "--piece", "Tide table", basket).code());
        assertEquals("{}", Files.readString(mine));
        assertEquals(List.of("basket.schema.json", "piece.schema.json"), Ran.files(schemas));
    }

    @Test
    void where_the_schemas_have_no_room_nothing_is_left_behind() throws IOException {
        Files.createDirectories(basket);
        Files.writeString(schemas, "mine");
        Ran ran = Ran.kitleaf("new", basket);
        assertEquals(3, ran.code());
        assertEquals("could not write to " + schemas + ": there is a file in the way; make room for the schemas there\n", ran.err());
        assertEquals("", ran.out());
        assertEquals(List.of("schema"), Ran.files(basket));
        assertEquals("mine", Files.readString(schemas));

        Files.createDirectories(pieces);
        assertEquals(3, Ran.kitleaf("new", "--piece", "Fog bell", basket).code());
        assertEquals(List.of(), Ran.files(pieces));
    }

    @Test
    void what_was_made_before_a_failure_goes_and_what_was_there_stays() throws IOException {
        Path old = Files.createDirectory(folder.resolve("old"));
        Files.writeString(old.resolve("mine"), "mine");
        try (NewFiles made = new NewFiles()) {
            made.folder(old.resolve("a/b"));
            made.file(old.resolve("a/b/c"), "c");
            assertThrows(IOException.class, () -> made.file(old.resolve("mine"), "yours"));
        }
        assertEquals(List.of("mine"), Ran.files(old));
        assertEquals("mine", Files.readString(old.resolve("mine")));
        try (NewFiles made = new NewFiles()) {
            made.folder(old.resolve("x/../a"));
            made.file(old.resolve("a/c"), "c");
            made.keep();
        }
        assertEquals("c", Files.readString(old.resolve("a/c")));
    }
}
