package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClothPlanJsonTests {

    private static final String BEACON = "piece: Beacon\nstitches: 100 x 60\ncloth: {name: Sea-mist, kind: linen, count: 28, over: 2}\nmargin: 2 in\n";
    private static final String STRIP = "cloth-on-hand: [{name: Sea-mist, kind: linen, count: 28, size: 20 in x 8 1/2 in, selvedge: left}]\n";

    @TempDir
    private Path folder;

    private JsonNode plan(String settings, String piece) throws IOException {
        Ran ran = Ran.kitleaf("reckon", Ran.basket(folder.resolve("b"), settings, piece), "--json");
        assertEquals(0, ran.code(), ran.err());
        return new ObjectMapper().readTree(ran.out()).get("cloth-plan");
    }

    /**
     * By hand: 7 1/7 x 4 2/7 in with 4 in of margins, up to 11 1/4 x 8 1/2 in, 285.75 x 215.9 mm. The cloth is 508 mm wide and as high as
     * the piece; the cut takes one thread of 28 to the inch and 3 mm, so that 508 - 285.75 - 25.4/28 - 3 = 218.342857 mm are left.
     */
    @Test
    void a_cloth_has_its_cuts_where_they_lie() throws IOException {
        JsonNode plan = plan(STRIP, BEACON);
        assertTrue(plan.get("optimal").asBoolean());
        assertFalse(plan.get("cut-short").asBoolean());
        JsonNode cloth = plan.get("cloths").get(0);
        assertEquals("Sea-mist", cloth.get("name").asText());
        assertEquals(508, cloth.get("width-mm").asDouble(), 1e-9);
        assertEquals(215.9, cloth.get("height-mm").asDouble(), 1e-9);
        assertTrue(cloth.get("optimal").asBoolean());
        assertFalse(cloth.get("bought").asBoolean());
        assertEquals("left", cloth.get("selvedge").asText());
        JsonNode cut = cloth.get("cuts").get(0);
        assertEquals("piece", cut.get("piece").asText(), "the ID is the file's name");
        assertEquals(0, cut.get("x-mm").asDouble(), 1e-9);
        assertEquals(0, cut.get("y-mm").asDouble(), 1e-9);
        assertEquals(285.75, cut.get("width-mm").asDouble(), 1e-9);
        assertEquals(215.9, cut.get("height-mm").asDouble(), 1e-9);
        assertFalse(cut.get("turned").asBoolean());
        JsonNode edge = cloth.get("edge-cuts").get(0);
        assertEquals(1, cloth.get("edge-cuts").size());
        assertEquals("down", edge.get("run").asText());
        assertEquals("whole", edge.get("part").asText());
        assertEquals(285.75, edge.get("from-mm").asDouble(), 1e-9);
        assertEquals(508, edge.get("part-width-mm").asDouble(), 1e-9);
        assertEquals("piece", edge.get("frees").get(0).asText());
        JsonNode left = cloth.get("remnants").get(0);
        assertEquals(508 - 285.75 - 25.4 / 28 - 3, left.get("width-mm").asDouble(), 1e-6);
        assertTrue(left.get("usable").asBoolean());
        JsonNode proof = cloth.get("proof");
        assertEquals(0, proof.get("cost-gap").asDouble());
        assertEquals(1, proof.get("cloths").asInt());
        assertEquals((508 - 285.75 - 25.4 / 28 - 3) * 215.9, proof.get("largest-remnant-mm2").asDouble(), 0.02);
        assertEquals(0, plan.get("buy").size());
        assertEquals(0, plan.get("unplaced").size());
        assertEquals(0, plan.get("untouched").size());
    }

    @Test
    void what_is_bought_has_its_price_and_what_fits_nowhere_its_id() throws IOException {
        JsonNode plan = plan("cloth-cuts: [{name: fat eighth, size: 13 in x 18 in, price: 7.60 GBP}]\n",
                BEACON + "---\n" + BEACON.replace("100 x 60", "600 x 600").replace("Beacon", "Giant"));
        JsonNode buy = plan.get("buy").get(0);
        assertEquals("fat eighth", buy.get("cut").asText());
        assertEquals(1, buy.get("number").asInt());
        assertEquals("Sea-mist", buy.get("cloth").asText());
        assertEquals("7.6", buy.get("cost").decimalValue().stripTrailingZeros().toPlainString());
        assertEquals("GBP", plan.get("currency").asText());
        assertEquals("piece-2", plan.get("unplaced").get(0).asText());
        assertTrue(plan.get("cloths").get(0).get("bought").asBoolean());
        assertEquals("fat eighth", plan.get("cloths").get(0).get("name").asText());
    }

    @Test
    void a_cloth_of_another_count_is_a_near_miss_and_stays_whole() throws IOException {
        JsonNode plan = plan(STRIP.replace("count: 28", "count: 30"), BEACON);
        assertEquals("Sea-mist", plan.get("untouched").get(0).get("name").asText());
        assertEquals("piece", plan.get("near-misses").get(0).get("piece").asText());
        assertEquals(30, plan.get("near-misses").get(0).get("warp-per-inch").asDouble());
    }

    @Test
    void it_is_there_without_cloth_too_planned_with_the_usual_cuts_but_the_plain_text_leaves_it_out() throws IOException {
        JsonNode plan = plan("", BEACON);
        assertEquals(1, plan.get("buy").size());
        // 11 1/4 x 8 1/2 in lie on a fat eighth of 13 x 18 in, the smallest of the usual ones.
        assertEquals("fat eighth", plan.get("buy").get(0).get("cut").asText());
        assertFalse(Ran.kitleaf("reckon", folder.resolve("b")).out().contains("cloth plan"));
        Ran.basket(folder.resolve("b"), STRIP, BEACON);
        assertTrue(Ran.kitleaf("reckon", folder.resolve("b")).out().contains("\ncloth plan\n"));
    }

    /** Thirteen pieces, no two alike, are more than can be tried through. */
    @Test
    void what_nobody_proves_is_null() throws IOException {
        String many = IntStream.range(0, 13).mapToObj(i -> BEACON.replace("100 x 60", 60 + 3 * i + " x " + (90 - 2 * i)).replace("Beacon", "Beacon " + i))
                .collect(Collectors.joining("---\n"));
        JsonNode plan = plan(STRIP, many);
        assertFalse(plan.get("optimal").asBoolean());
        JsonNode proof = plan.get("cloths").get(0).get("proof");
        for (String bound : List.of("least-cost", "cost-gap", "fewest-cloths", "largest-remnant-mm2", "remnant-gap")) {
            assertTrue(proof.get(bound).isNull(), bound + " is " + proof.get(bound));
        }
        assertTrue(proof.get("cost").asDouble() > 0);
    }

    @Test
    void how_long_to_search_is_no_option() throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), STRIP, BEACON);
        for (String command : List.of("reckon", "print")) {
            Ran ran = Ran.kitleaf(command, basket, "--plan-seconds=5");
            assertEquals(2, ran.code(), command);
            assertTrue(ran.err().contains("--plan-seconds"), ran.err());
        }
    }
}
