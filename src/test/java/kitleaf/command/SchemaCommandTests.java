package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import kitleaf.basket.schema.Schemas;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SchemaCommandTests {

    @TempDir
    private Path folder;

    @Test
    void both_schemas_are_written_beside_the_basket_and_the_lines_to_write_are_said() throws IOException {
        Ran ran = Ran.kitleaf("schema", folder);
        assertEquals(0, ran.code(), ran.err());
        assertEquals(List.of("basket.schema.json", "piece.schema.json"), Ran.files(folder.resolve("schema")));
        for (String name : Ran.files(folder.resolve("schema"))) {
            assertEquals(Schemas.files(Locale.ENGLISH).get(name), Files.readString(folder.resolve("schema").resolve(name)));
            assertTrue(ran.out().contains(folder.resolve("schema").resolve(name).toString()), ran.out());
        }
        assertTrue(ran.out().contains("  # yaml-language-server: $schema=schema/basket.schema.json\n"), ran.out());
        assertTrue(ran.out().contains("  # yaml-language-server: $schema=../schema/piece.schema.json\n"), ran.out());
    }

    private String language(Ran ran) throws IOException {
        assertEquals(0, ran.code(), ran.err());
        String schema = Files.readString(folder.resolve("schema").resolve("piece.schema.json"));
        for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            if (schema.equals(Schemas.files(language).get("piece.schema.json"))) {
                return language + (ran.out().contains("schreiben Sie diese Zeile") ? " said in de" : " said in en");
            }
        }
        return schema;
    }

    @Test
    void the_option_decides_the_language_else_the_basket_else_the_surroundings() throws IOException {
        Map<String, String> germany = Map.of("LANG", "de_DE.UTF-8");
        assertEquals("en said in en", language(Ran.kitleaf("schema", folder)));
        assertEquals("de said in de", language(Ran.in(germany, "schema", folder)));
        assertEquals("en said in en", language(Ran.in(germany, "schema", "--language", "en", folder)));
        Files.writeString(folder.resolve("basket.yaml"), "language: de\n");
        assertEquals("de said in de", language(Ran.kitleaf("schema", folder)));
        assertEquals("en said in en", language(Ran.kitleaf("schema", "--language", "en-GB", folder)));
        Files.writeString(folder.resolve("basket.yaml"), "cloth: [\nlanguage: de\n");
        assertEquals("de said in de", language(Ran.kitleaf("schema", folder)), "broken elsewhere");
        Files.writeString(folder.resolve("basket.yaml"), "language: en-US\n");
        assertEquals("en said in en", language(Ran.in(germany, "schema", folder)));
    }

    @Test
    void a_folder_that_is_not_there_is_not_made() {
        Ran ran = Ran.kitleaf("schema", folder.resolve("nowhere"));
        assertEquals(2, ran.code());
        assertEquals("there is no folder " + folder.resolve("nowhere") + "\n", ran.err());
        assertTrue(Files.notExists(folder.resolve("nowhere")));
    }

    @Test
    void a_file_in_the_way_is_a_sentence() throws IOException {
        Files.writeString(folder.resolve("schema"), "mine");
        Ran ran = Ran.kitleaf("schema", folder);
        assertEquals(3, ran.code());
        assertEquals("could not write to " + folder.resolve("schema") + ": there is a file in the way; make room for the schemas there\n", ran.err());
        assertEquals("mine", Files.readString(folder.resolve("schema")));
    }
}
