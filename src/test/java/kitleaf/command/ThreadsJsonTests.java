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
import kitleaf.basket.reader.BasketReader;
import kitleaf.command.json.ReckonJson;
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

    /** By hand, on cells of 1.8142857 mm: 1310 crosses of 8.7601464 with four strands, 120 back stitches of 5.4428571 with one, x 54.45 / 37. */
    @Test
    void strands_by_kind_stand_beside_the_usual_ones() throws IOException {
        JsonNode thread = written("  - {code: L1, lot: 12, mix-lots: yes, strands: {cross: 4, back: 1}, stitches: {cross: 1310, back: 120}}\n"
                + "  - {code: L2, stitches: {cross: 9}}\n").get("pieces").get(0).get("threads").get(0);
        JsonNode use = thread.get("uses").get(0);
        assertEquals(4, use.get("strands").asInt());
        assertEquals("{\"cross\":4,\"back\":1}", use.get("strands-by-kind").toString());
        assertEquals(22, use.get("needle").asInt());
        assertEquals("{\"cross\":22,\"back\":24}", use.get("needle-by-kind").toString());
        assertEquals("12", use.get("lot").asText());
        assertTrue(use.get("mix-lots").asBoolean());
        assertEquals((4 * 1310 * 8.76014635 + 120 * 5.44285714) * 54.45 / 37, thread.get("ply-length-mm").asDouble(), 0.01);
        JsonNode plain = written("  - {code: L2, stitches: {cross: 9}}\n").get("pieces").get(0).get("threads").get(0).get("uses").get(0);
        assertEquals(2, plain.get("strands").asInt());
        assertFalse(plain.has("strands-by-kind") || plain.has("needle-by-kind") || plain.has("lot") || plain.has("mix-lots"), plain.toString());
    }

    /** By hand: 1.1 wanted of lot 12 and 0.4 in the stash leave 0.7, a skein; lot 9 stays. */
    @Test
    void a_lot_to_ask_for_is_named() throws IOException {
        Files.createDirectories(folder.resolve("b/pieces"));
        Files.writeString(folder.resolve("b/basket.yaml"), "skeins: {dyed: {length: 5 m, plies: 6, lot-matters: yes}}\n"
                + "stash: [{code: L1, skein: dyed, skeins: 0.4, lot: 12}, {code: L1, skein: dyed, skeins: 4, lot: 9}]\n");
        Files.writeString(folder.resolve("b/pieces/lamp.yaml"), "piece: Lamp\nstitches: 40 x 40\ncloth: {kind: linen, count: 28, over: 2}\n"
                + "threads: [{code: L1, skein: dyed, lot: 12, stitches: {cross: 1000}, used: {skeins: 1, stitches: 1000}}]\n");
        JsonNode list = new ObjectMapper().readTree(Ran.kitleaf("reckon", folder.resolve("b"), "--json").out()).get("buy-list");
        JsonNode line = list.get("lines").get(0);
        for (JsonNode lots : List.of(line.get("ask-for-lots"), line.get("pieces").get(0).get("ask-for-lots"))) {
            assertEquals(1, lots.size());
            assertEquals("12", lots.get(0).get("lot").asText());
            assertEquals(0.7, lots.get(0).get("missing").asDouble(), 1e-9);
            assertEquals(1, lots.get(0).get("buy").asInt());
        }
        assertEquals("[\"ask-for-lot\",\"other-lots\"]", list.get("warnings").findValuesAsText("kind").stream()
                .map(kind -> '"' + kind + '"').toList().toString().replace(" ", ""));
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
