package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TonightCommandTests {

    private static final String PIECE = "piece: %s\nstitches: 40 x 50\ncloth: {kind: linen, count: 28, over: 2}\nprogress: {%s}\n";

    @TempDir
    private Path folder;

    /**
     * 2,000 stitches are 20 boxes of 100. Sittings of 1, 2 and 3 hours: the middle one is 2 h, 100 stitches an hour make 200 an evening. Fog
     * bell has 640 done, which are 6 boxes; 840 are 8. At 50 an hour an evening is 100: from 640 to 740, 7 boxes; at 20 an hour 40 stitches,
     * and 60 to the seventh box take two evenings.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            100 | An evening of 2 h is some 200 stitches: 2 more boxes on the wall.
            50  | An evening of 2 h is some 100 stitches: one more box on the wall.
            20  | An evening of 2 h is some 40 stitches; evenings to the next box on the wall: 2.
            800 | An evening of 2 h is more than the 1360 stitches left: the last one tonight.
            """)
    void an_evening_is_told_by_what_it_does_on_the_wall(int pace, String told) throws IOException {
        Path basket = Ran.basket(folder, "pace: {stitches-per-hour: " + pace + "}\n", String.format(PIECE, "Fog bell",
                "log: [{on: 2026-03-01, hours: 1, stitches: 200}, {on: 2026-03-05, hours: 2, stitches: 340, note: Second page}, "
                + "{on: 2026-03-03, hours: 3, stitches: 100}]"));
        Ran ran = Ran.kitleaf("tonight", basket, "--as-of", "2026-04-01");
        assertEquals(0, ran.code(), ran.err());
        String id = Ran.files(basket.resolve("pieces")).get(0).replace(".yaml", "");
        assertEquals("In focus: Fog bell  [" + id + "]", ran.out().lines().findFirst().orElseThrow());
        assertEquals("  You stopped on 2026-03-05: Second page", ran.out().lines().skip(2).findFirst().orElseThrow());
        assertEquals("  " + told, ran.out().lines().reduce((first, last) -> last).orElseThrow(), ran.out());
    }

    @Test
    void two_begun_pieces_lie_ready_the_last_touched_first_and_none_that_rests() throws IOException {
        Path basket = Ran.basket(folder, "", String.join("---\n", String.format(PIECE, "Cockle", "started: 2026-01-01"),
                String.format(PIECE, "Herring", "started: 2026-02-01, states: [{on: 2026-03-01, is: resting}]"), String.format(PIECE, "Rope", "started: 2026-01-05"),
                String.format(PIECE, "Tar", "started: 2025-01-05")));
        assertEquals("In focus: Rope\n  0 % done, 2000 stitches left\nBeside it: Cockle\n  0 % done, 2000 stitches left\n",
                Ran.kitleaf("tonight", basket, "--as-of", "2026-04-01").out().replaceAll("  \\[.*\\]", ""));
    }

    @Test
    void nothing_lies_ready_where_nothing_is_begun() throws IOException {
        Path basket = Ran.basket(folder, "", PIECE.replace("progress: {%s}\n", "").formatted("Cockle"));
        assertEquals("Nothing lies ready: no piece is begun, and none is chosen.\n", Ran.kitleaf("tonight", basket).out());
    }
}
