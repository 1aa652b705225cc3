package kitleaf.basket.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** No key is taken by a reader and unknown to the schemas. */
class KeyTextsTests {

    @Test
    void everyKeyHasItsTextInBothLanguages() {
        for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            assertEquals(Set.of("basket.schema.json", "piece.schema.json"), Schemas.files(language).keySet());
        }
    }

    @Test
    void aGermanSchemaIsTheEnglishOneWithOtherSentences() {
        for (String name : Schemas.files(Locale.ENGLISH).keySet()) {
            List<String> english = Schemas.files(Locale.ENGLISH).get(name).lines().toList();
            List<String> german = Schemas.files(Locale.GERMAN).get(name).lines().toList();
            assertEquals(english.size(), german.size());
            int sentences = 0;
            for (int i = 0; i < english.size(); i++) {
                if (english.get(i).matches(" *\"(title|description)\" : \".*")) {
                    Set<String> shared = new TreeSet<>(sentences(english.get(i)));
                    shared.retainAll(sentences(german.get(i)));
                    assertEquals(Set.of(), shared);
                    assertFalse(german.get(i).matches(".*\\b(the|of|if|is|how|what|write|such as|or)\\b.*"), german.get(i));
                    sentences++;
                } else {
                    assertEquals(english.get(i), german.get(i));
                }
            }
            assertTrue(sentences > 40, name + " has only " + sentences);
        }
    }

    private static List<String> sentences(String line) {
        return List.of(line.replaceAll("^.*\" : \"|\",?$", "").split("(?<=[.;]) "));
    }

    @Test
    void aKeyWithoutAGermanTextIsToldWithWhereToWriteIt() throws IOException {
        String texts = Files.readString(Path.of("src/main/resources/kitleaf/basket/schema/keys_de.properties")).replaceFirst("(?m)^goals\\.seed .*$", "");
        assertEquals("the schema cannot be written:\nthe key seed of goals has no text; write goals.seed = ... into keys_de.properties",
                assertThrows(IllegalStateException.class, () -> Schemas.files(KeyTexts.read("keys_de.properties", new StringReader(texts)),
                        Locale.GERMAN)).getMessage());
    }

    @Test
    void aKeyWithoutATextIsToldWithWhatToWrite() throws IOException {
        String texts = String.join("\n", Files.readAllLines(Path.of("src/main/resources/kitleaf/basket/schema/keys.properties")).stream()
                .filter(line -> !line.startsWith("goals.seed ") && !line.startsWith("basket.title ")).toList());
        IllegalStateException told = assertThrows(IllegalStateException.class,
                () -> Schemas.files(KeyTexts.read("keys.properties", new StringReader(texts)), Locale.ENGLISH));
        assertEquals("the schema cannot be written:\n"
                + "the key title of basket has no text; write basket.title = ... into keys.properties\n"
                + "the key seed of goals has no text; write goals.seed = ... into keys.properties", told.getMessage());
    }

    @Test
    void aKeyThatNoReaderTakesIsTold() throws IOException {
        String texts = Files.readString(Path.of("src/main/resources/kitleaf/basket/schema/keys.properties")) + "\ngoals.luck = Draws a lot.\n";
        assertEquals("the schema cannot be written:\nno reader takes the key of goals.luck; take it out of keys.properties",
                assertThrows(IllegalStateException.class, () -> Schemas.files(KeyTexts.read("keys.properties", new StringReader(texts)), Locale.ENGLISH)).getMessage());
    }
}
