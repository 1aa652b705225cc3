package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReckonCommandTests {

    private static final Path HARBOUR = Path.of("examples/harbour");

    @TempDir
    private Path folder;

    private static JsonNode json(Object... arguments) throws IOException {
        Ran ran = Ran.kitleaf(arguments);
        assertEquals(0, ran.code(), ran.err());
        return new ObjectMapper().readTree(ran.out());
    }

    /** By hand, for 140 x 210 on 36 over two with 3 in: 7 7/9 x 11 2/3 in, cut 14 x 17 3/4 in. */
    @Test
    void json_carries_the_promised_keys_in_millimetres() throws IOException {
        Path basket = Ran.basket(folder, "", """
                piece: Groyne
                stitches: 140 x 210
                cloth: {kind: linen, count: 36, over: 2}
                margin: 3 in
                threads:
                  - {code: K1, stitches: {cross: 1000, back: 50}}
                progress: 300
                """);
        JsonNode root = json("reckon", basket, "--json");
        assertEquals(1, root.get("version").asInt());
        JsonNode piece = root.get("pieces").get(0);
        assertEquals("piece", piece.get("id").asText());
        assertEquals("Groyne", piece.get("title").asText());
        assertEquals((7 + 7.0 / 9) * 25.4, piece.get("finished-width-mm").asDouble(), 1e-9);
        assertEquals((11 + 2.0 / 3) * 25.4, piece.get("finished-height-mm").asDouble(), 1e-9);
        assertEquals(14 * 25.4, piece.get("cut-width-mm").asDouble(), 1e-9);
        assertEquals(17.75 * 25.4, piece.get("cut-height-mm").asDouble(), 1e-9);
        assertEquals(Math.hypot(14, 17.75) * 25.4, piece.get("cut-diagonal-mm").asDouble(), 1e-9);
        assertEquals(1050, piece.get("stitches-total").asInt());
        assertEquals(750, piece.get("stitches-left").asInt());
    }

    @Test
    void json_is_the_same_under_decimal_commas() throws IOException {
        Locale locale = Locale.getDefault();
        try {
            String english = Ran.kitleaf("reckon", HARBOUR, "--json").out();
            Locale.setDefault(Locale.GERMANY);
            assertEquals(english, Ran.kitleaf("reckon", HARBOUR, "--json").out());
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertEquals(english, Ran.kitleaf("reckon", HARBOUR, "--json").out());
        } finally {
            Locale.setDefault(locale);
        }
    }

    @Test
    void stitches_come_from_the_threads_else_the_coverage_else_the_cells() throws IOException {
        JsonNode pieces = json("reckon", HARBOUR, "--json").get("pieces");
        for (JsonNode piece : pieces) {
            switch (piece.get("id").asText()) {
                // 2310+120 + 3120 + 4480+96 + 2750 + 3440+410, and 260+340+210+450+380+330 done.
                case "breakwater" -> check(piece, 16726, 16726 - 1970, "threads");
                // Coverage 4100, nothing done.
                case "fog-bell" -> check(piece, 4100, 4100, "coverage");
                // 70 % of 166 x 120, 5 % of it done.
                case "cormorant-row" -> check(piece, 13944, 13944 - 697, "coverage");
                // Finished.
                case "weather-signals-2" -> check(piece, 620, 0, "threads");
                default -> { }
            }
        }
        assertEquals(15, pieces.size());
    }

    private static void check(JsonNode piece, int total, int left, String from) {
        assertEquals(total, piece.get("stitches-total").asInt());
        assertEquals(left, piece.get("stitches-left").asInt());
        assertEquals(from, piece.get("stitches-from").asText());
    }

    @Test
    void the_table_reads_well_at_80_columns() {
        Ran ran = Ran.kitleaf("reckon", HARBOUR);
        assertEquals(0, ran.code());
        ran.out().lines().forEach(line -> assertTrue(line.length() <= 80, line.length() + ": " + line));
        assertTrue(ran.out().startsWith("Saltmarsh evening table: 15 pieces\n\nHarbour-master's almanac  [almanac]\n"), ran.out());
    }

    @Test
    void one_piece_alone_brings_the_what_if_table() {
        Ran ran = Ran.kitleaf("reckon", HARBOUR, "--piece", "bosuns-knot");
        String out = ran.out().replaceAll(" +", " ");
        assertTrue(out.contains("\n> evenweave 25 over one 25 2 x 1 7/8 5 x 5\n"), ran.out());
        // 50 x 48 on 28 over two: 3 4/7 x 3 3/7 in, with 3 in of margins 6 4/7 x 6 3/7, up to 6 3/4 x 6 1/2.
        assertTrue(out.contains("\n linen 28 over two 14 3 5/8 x 3 3/8 6 3/4 x 6 1/2\n"), ran.out());
    }

    @Test
    void check_says_that_all_is_well_and_what_is_odd() {
        Ran ran = Ran.kitleaf("check", HARBOUR);
        assertEquals(0, ran.code());
        assertTrue(ran.out().startsWith("Saltmarsh evening table: 15 pieces, no problems\n\nwhat the sheets will warn of:\n"), ran.out());
        // Chalk on hand has 32 threads to the inch, and the knot is written for 25.
        assertTrue(ran.out().contains("\n  bosuns-knot: its cloth is evenweave 25, and Chalk on hand is evenweave 32\n"), ran.out());
    }
}
