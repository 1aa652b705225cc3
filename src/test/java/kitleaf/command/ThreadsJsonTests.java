package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import kitleaf.basket.BasketReader;
import kitleaf.sizing.Reckoning;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ThreadsJsonTests {

    @TempDir
    private Path folder;

    private JsonNode written(String threads) throws IOException {
        Files.writeString(folder.resolve("lamp.yaml"), "piece: Lamp\nstitches: 40 x 40\ncloth: {kind: linen, count: 28, over: 2}\n"
                + "margin: 2 in\nthreads:\n" + threads);
        StringWriter text = new StringWriter();
        ReckonJson.write(Reckoning.of(BasketReader.read(folder.resolve("lamp.yaml")).basket().orElseThrow()), Optional.empty(),
                new PrintWriter(text));
        return new ObjectMapper().readTree(text.toString());
    }

    /** By hand: 1 skein for 1000 stitches; 1500 take 1.5, 1.35 to 1.65, and 1.5 x 8000 mm x 6 plies = 72000 mm. */
    @Test
    void a_thread_has_the_keys_that_were_promised() throws IOException {
        JsonNode json = written("  - {code: L1, stitches: {cross: 1500}, used: {skeins: 1, stitches: 1000}}\n");
        JsonNode thread = json.get("pieces").get(0).get("threads").get(0);
        assertEquals("L1", thread.get("code").asText());
        assertTrue(thread.get("known").asBoolean());
        assertEquals(72000, thread.get("ply-length-mm").asDouble(), 1e-6);
        assertEquals(1.35, thread.get("skeins-low").asDouble(), 1e-9);
        assertEquals(1.5, thread.get("skeins-likely").asDouble(), 1e-9);
        assertEquals(1.65, thread.get("skeins-high").asDouble(), 1e-9);
        assertTrue(thread.get("buy").isInt());
        assertEquals(2, thread.get("buy").asInt());
        assertEquals("used", thread.get("uses").get(0).get("from").asText());
        JsonNode line = json.get("buy-list").get("lines").get(0);
        assertEquals(2, line.get("buy").asInt());
        assertEquals("lamp", line.get("pieces").get(0).get("piece").asText());
    }

    @Test
    void an_unknown_need_has_no_figures() throws IOException {
        JsonNode json = written("  - {code: L1, share: 20%}\n");
        JsonNode thread = json.get("pieces").get(0).get("threads").get(0);
        assertEquals("L1", thread.get("code").asText());
        assertTrue(thread.has("known"));
        assertFalse(thread.get("known").asBoolean());
        for (String key : List.of("ply-length-mm", "ply-length-low-mm", "ply-length-high-mm", "skeins-low", "skeins-likely", "skeins-high", "buy")) {
            assertFalse(thread.has(key), key);
        }
        assertEquals("no-coverage", thread.get("uses").get(0).get("missing").asText());
        JsonNode list = json.get("buy-list");
        assertEquals("lamp", list.get("lines").get(0).get("unknown").get(0).asText());
        assertEquals("need-unknown", list.get("warnings").get(0).get("kind").asText());
    }
}
