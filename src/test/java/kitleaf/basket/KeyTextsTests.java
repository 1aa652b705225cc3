package kitleaf.basket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** No key is taken by a reader and unknown to the schemas. */
class KeyTextsTests {

    @Test
    void everyKeyThatAReaderTakesStandsInTheSpecimenAndHasItsText() {
        assertEquals(Set.of("basket.schema.json", "piece.schema.json"), Schemas.files().keySet());
    }

    @Test
    void aKeyWithoutATextIsToldWithWhatToWrite() throws IOException {
        String texts = String.join("\n", Files.readAllLines(Path.of("src/main/resources/kitleaf/basket/keys.properties")).stream()
                .filter(line -> !line.startsWith("goals.seed ") && !line.startsWith("basket.title ")).toList());
        IllegalStateException told = assertThrows(IllegalStateException.class,
                () -> Schemas.files(Specimen.read(), KeyTexts.read(new StringReader(texts))));
        assertEquals("the schema cannot be written:\n"
                + "the key title of basket has no text; write basket.title = ... into keys.properties\n"
                + "the key seed of goals has no text; write goals.seed = ... into keys.properties", told.getMessage());
    }

    @Test
    void aKeyThatNoReaderTakesIsTold() throws IOException {
        String texts = Files.readString(Path.of("src/main/resources/kitleaf/basket/keys.properties")) + "\ngoals.luck = Draws a lot.\n";
        assertEquals("the schema cannot be written:\nno reader takes the key of goals.luck; take it out of keys.properties",
                assertThrows(IllegalStateException.class, () -> Schemas.files(Specimen.read(), KeyTexts.read(new StringReader(texts)))).getMessage());
    }

    @Test
    void aKeyThatStandsNowhereInTheSpecimenIsTold() {
        Source basket = Specimen.source("basket.yaml");
        Specimen specimen = Specimen.read(new Source(basket.name(), basket.text().replace(", seed: 7", "")), Specimen.source("piece.yaml"));
        assertEquals("the schema cannot be written:\nthe key seed of goals stands nowhere in the specimen; write it there, in every form it takes",
                assertThrows(IllegalStateException.class, () -> Schemas.files(specimen, KeyTexts.shipped())).getMessage());
    }

    @Test
    void aSpecimenTheReadersRefuseIsTold() {
        Source basket = Specimen.source("basket.yaml");
        String message = assertThrows(IllegalStateException.class, () -> Specimen.read(
                new Source(basket.name(), basket.text().replace("seed: 7", "seed: x")), Specimen.source("piece.yaml"))).getMessage();
        assertTrue(message.contains("\"x\" is not a whole number"), message);
    }
}
