package kitleaf.basket.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.Colour;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the trade calls things, common practice, no source, is understood as what it means. */
class TradeNamesTests {

    @TempDir
    private Path folder;

    private Cloth cloth(String written) {
        return new Written(folder).piece("piece: Knot\nstitches: 20 x 30\ncloth: {" + written + "}\n").cloth();
    }

    @ParameterizedTest
    @CsvSource({"aida, BLOCK", "Aida cloth, BLOCK", "block-cloth, BLOCK", "Blockgewebe, BLOCK", "BLOCK  WEAVE, BLOCK"})
    void block_cloth_is_known_by_its_common_names(String name, Cloth.Kind kind) {
        assertEquals(kind, cloth("kind: " + name + ", count: 14").kind());
    }

    @ParameterizedTest
    @CsvSource({"even-weave, EVENWEAVE", "Zählstoff, EVENWEAVE", "Leinen, LINEN", "linen cloth, LINEN"})
    void linen_and_evenweave_are_known_by_theirs(String name, Cloth.Kind kind) {
        assertEquals(kind, cloth("kind: " + name + ", count: 28, over: 2").kind());
    }

    @ParameterizedTest
    @ValueSource(strings = {"14", "14 ct", "14 count", "14 Count", "14count"})
    void a_count_may_be_called_one(String count) {
        assertEquals(new Count(14, 14), cloth("kind: block, count: " + count).count());
    }

    @Test
    void a_colour_and_stitches_may_be_spelt_and_called_otherwise() {
        CalledThread thread = new Written(folder).piece("""
                piece: Knot
                stitches: 20 x 30
                cloth: {kind: block, count: 14}
                threads:
                  - {code: K12, color: "#6b7f8c", strands: {French knots: 1, full cross: 2, backstitch: 1},
                     stitches: {Cross-stitch: 90, french knot: 14, backstitch: 7}}
                """).threads().get(0);
        assertEquals(Optional.of(new Colour("#6b7f8c")), thread.colour());
        assertEquals(List.of(StitchCount.of(StitchKind.CROSS, 90), StitchCount.of(StitchKind.KNOT, 14), StitchCount.of(StitchKind.BACK, 7)),
                thread.stitches());
        assertEquals(1, thread.strands().in(StitchKind.KNOT));
        assertEquals(2, thread.strands().in(StitchKind.CROSS));
    }

    /** By hand: 42 characters stand before the second name. */
    @Test
    void two_names_of_one_kind_are_told_as_one_kind_twice() {
        List<String> problems = new Written(folder).problems("""
                piece: Knot
                stitches: 20 x 30
                cloth: {kind: block, count: 14}
                threads: [{code: K12, stitches: {knot: 3, french knot: 14}}]
                """);
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(problems.get(0).startsWith("4:43: ") && problems.get(0).contains("knot"), problems.toString());
    }
}
