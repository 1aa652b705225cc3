package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
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

    /**
     * By hand: 6 of 8 stitches are 75 %; the bell's 4 of 16 count on 16 count cloth are 3/4 in wide. What is in hand stands before what
     * waits, and that before what is made up, whatever the titles.
     */
    @Test
    void a_basket_is_a_line_for_each_piece_by_how_it_stands() throws IOException {
        Path basket = Ran.basket(folder, "", """
                piece: Zinc pail
                stitches: 12 x 12
                cloth: {kind: block, count: 16}
                coverage: 8
                progress: {readings: [{on: 2026-03-04, done: 6}]}
                ---
                piece: A bell of a name so long that no line of eighty columns holds it beside its figures
                stitches: 12 x 24
                cloth: {kind: block, count: 16}
                ---
                piece: Mast
                stitches: 12 x 12
                cloth: {kind: block, count: 16}
                progress: {finished: 2026-02-01}
                """);
        Ran ran = Ran.kitleaf("reckon", basket);
        assertEquals(0, ran.code(), ran.err());
        List<String> lines = ran.out().lines().map(line -> line.strip().replaceAll(" +", " ")).toList();
        int begun = lines.indexOf("Begun: 1");
        assertEquals("piece Zinc pail 75 % 2 2026-03-04 3/4 x 3/4", lines.get(begun + 1), ran.out());
        assertEquals(List.of("", "Waiting: 1"), lines.subList(begun + 2, begun + 4), ran.out());
        assertTrue(lines.get(begun + 4).matches("piece-2 A bell of [a-z ]+\\.\\.\\. 0 % 288 3/4 x 1 1/2"), ran.out());
        assertEquals(List.of("", "Finished: 1", "piece-3 Mast 100 % 2026-02-01 3/4 x 3/4"), lines.subList(begun + 5, begun + 8), ran.out());
        assertFalse(ran.out().contains("to centre"), ran.out());
    }

    @Test
    void a_piece_behind_the_basket_is_told_in_full() {
        Ran all = Ran.kitleaf("reckon", HARBOUR, "fog-bell");
        assertEquals(0, all.code(), all.err());
        assertTrue(all.out().contains("\nFog bell  [fog-bell]\n"), all.out());
        assertEquals(Ran.kitleaf("reckon", HARBOUR, "--piece", "fog-bell"), all);
        Ran none = Ran.kitleaf("reckon", HARBOUR, "fog-bel");
        assertEquals(2, none.code());
        assertTrue(none.err().contains("fog-bel") && none.err().contains("breakwater"), none.err());
    }

    @Test
    void the_lines_read_well_at_80_columns_in_both_languages() {
        for (String language : List.of("en", "de")) {
            Ran ran = Ran.kitleaf("reckon", HARBOUR, "--language", language);
            assertEquals(0, ran.code());
            ran.out().lines().forEach(line -> assertTrue(line.length() <= 80, line.length() + ": " + line));
        }
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
