package kitleaf.sizing.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import kitleaf.basket.Amount;
import kitleaf.basket.Goal;
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.reader.BasketReader;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.PutUp;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import kitleaf.basket.thread.Strands;
import kitleaf.basket.thread.Used;
import kitleaf.sizing.Pieces;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThreadNeedTests {

    private static final double EXACT = 1e-9;

    private static PieceThreads reckoned(Piece piece) {
        return ThreadReckoning.of(Skeins.basket(List.of(piece))).pieces().get(0);
    }

    private static ThreadTotal only(CalledThread... threads) {
        List<ThreadTotal> totals = reckoned(Skeins.piece("p", threads)).threads();
        assertEquals(1, totals.size());
        return totals.get(0);
    }

    /**
     * Worked by hand (and again in 15 places with a desk calculator), two ways round, for 2000 crosses in rows with two strands on 28 over two, from skeins of 8 m and six plies.
     * Cell: 25.4 x 2 / 28 = 1.8142857 mm square. Diagonal: 1.8142857 x 1.4142136 = 2.5657875.
     * Path of one: 2 x 2.5657875 + 2 x 1.8142857 = 8.7601464 mm; of 2000: 17520.293 mm.
     * Likely: x 1.1 x 45/37 x 1.1 = x 1.4716216 -> 25783.242 mm; two strands: 51566.483 mm; / 48000 = 1.0743017 skeins.
     * Low: x 1.05 x 45/37 = x 1.2770270 -> 22373.887; two: 44747.775; / 48000 = 0.9322453.
     * High: x 1.15 x 35/27 x 1.2 = x 1.7888889 -> 31341.857; two: 62683.714; / 48000 = 1.3059107.
     * The other way round: a skein's 48 m are 24 m of two strands, 24000 / 1.4716216 = 16308.54 mm of path, which is
     * 1861.67 crosses; 2000 / 1861.67 = 1.07430.
     */
    @Test
    void a_whole_thread_comes_out_as_worked_by_hand() {
        ThreadTotal thread = only(Skeins.crosses("K1", "cotton", 2, 2000));
        Estimate mm = thread.plyLengthMm().orElseThrow();
        Estimate skeins = thread.skeins().orElseThrow();
        assertEquals(17520.293, ((ThreadNeed.Known) thread.needs().get(0)).pathMm().orElseThrow(), 1e-3);
        assertEquals(44747.775, mm.low(), 0.001);
        assertEquals(51566.483, mm.likely(), 0.001);
        assertEquals(62683.714, mm.high(), 0.001);
        assertEquals(0.9322453, skeins.low(), 1e-7);
        assertEquals(1.0743017, skeins.likely(), 1e-7);
        assertEquals(1.3059107, skeins.high(), 1e-7);
        assertEquals(2, thread.buy().orElseThrow());
        assertEquals(Edge.JUST_OVER, thread.edge());
    }

    /**
     * Worked by hand (and again in 20 places with a desk calculator) for 2310 crosses in rows with two strands and 120 back stitches with
     * one, on 28 over two, from skeins of 8 m and six plies. Cell: 25.4 x 2 / 28 = 1.8142857 mm square, diagonal d = 2.5657875.
     * Paths: a cross 2d + 2b = 8.7601464, a back stitch 3e = 5.4428571; so 20235.938 mm and 653.143 mm, together 20889.081.
     * Plies: 2 x 20235.938 + 653.143 = 41125.019. Low: x 1.05 x 45/37 = 52517.761; likely: x 1.1 x 45/37 x 1.1 = 60520.467; high:
     * x 1.15 x 35/27 x 1.2 = 73568.090. In skeins of 48000: 1.0941200, 1.2608431, 1.5326685.
     */
    @Test
    void each_kind_of_stitch_is_reckoned_with_its_own_strands() {
        ThreadTotal thread = only(byKind(new Strands(2, Map.of(StitchKind.BACK, 1)),
                StitchCount.of(StitchKind.CROSS, 2310), StitchCount.of(StitchKind.BACK, 120)));
        Estimate mm = thread.plyLengthMm().orElseThrow();
        Estimate skeins = thread.skeins().orElseThrow();
        assertEquals(20889.081, ((ThreadNeed.Known) thread.needs().get(0)).pathMm().orElseThrow(), 1e-3);
        assertEquals(52517.761, mm.low(), 0.001);
        assertEquals(60520.467, mm.likely(), 0.001);
        assertEquals(73568.090, mm.high(), 0.001);
        assertEquals(1.0941200, skeins.low(), 1e-7);
        assertEquals(1.2608431, skeins.likely(), 1e-7);
        assertEquals(1.5326685, skeins.high(), 1e-7);
    }

    /**
     * By hand, on the same cell, where the thread is 0.9071429 mm from the next: a knot is 2 pi x 1.5 + 0.9071429 + 1.8142857 = 12.1462066,
     * 14 of them with one strand 170.0468919; twelve others of 30 mm with three strands 1080. Together 1250.0468919, x 1.4716216.
     */
    @Test
    void knots_and_others_have_strands_of_their_own_too() {
        ThreadTotal thread = only(byKind(new Strands(1, Map.of(StitchKind.OTHER, 3)), StitchCount.of(StitchKind.KNOT, 14),
                new StitchCount(StitchKind.OTHER, 12, Optional.empty(), OptionalInt.empty(), OptionalDouble.of(30))));
        assertEquals(1839.596, thread.plyLengthMm().orElseThrow().likely(), 0.001);
    }

    /** By the table of needles, 14 stitches to the inch: 24 for one to three strands, one size larger from four on. */
    @Test
    void each_kind_of_stitch_has_the_needle_of_its_strands() {
        ThreadNeed need = only(byKind(new Strands(4, Map.of(StitchKind.BACK, 2)),
                StitchCount.of(StitchKind.CROSS, 900), StitchCount.of(StitchKind.BACK, 120))).needs().get(0);
        assertEquals(22, need.needle());
        assertEquals(22, need.needle(StitchKind.CROSS));
        assertEquals(24, need.needle(StitchKind.BACK));
        assertEquals(List.of(22, 24), need.needles().sorted().boxed().toList());
    }

    private static CalledThread byKind(Strands strands, StitchCount... stitches) {
        return new CalledThread("K1", Optional.empty(), Optional.empty(), Optional.empty(), "cotton", strands, List.of(stitches),
                OptionalDouble.empty(), Optional.empty(), OptionalInt.empty(), Optional.empty(), false);
    }

    /** 1 yd = 914.4 mm and 1 in = 2.54 cm exactly (International Yard and Pound Agreement, 1959): 10 yd are 9.144 m. */
    @Test
    void the_units_she_writes_in_do_not_matter(@TempDir Path folder) throws IOException {
        Estimate[] each = new Estimate[2];
        String[][] written = {{"10 yd", "28 in 1 in", "1 in"}, {"9.144 m", "28 in 2.54 cm", "2.54 cm"}};
        for (int i = 0; i < 2; i++) {
            Path basket = Files.createDirectories(folder.resolve("basket" + i));
            Files.createDirectories(basket.resolve("pieces"));
            Files.writeString(basket.resolve("basket.yaml"), "skeins: {ball: {length: " + written[i][0] + ", plies: 4}}\n");
            Files.writeString(basket.resolve("pieces/lamp.yaml"), "piece: Lamp\nstitches: 40 x 40\ncloth: {kind: linen, over: 2, count: {warp: "
                    + written[i][1] + ", weft: " + written[i][1] + "}}\nmargin: 2 in\nthreads:\n  - {code: L1, skein: ball, stitches: {cross: 900, "
                    + "other: {count: 20, each: " + written[i][2] + "}}}\n");
            each[i] = ThreadReckoning.of(BasketReader.read(basket).basket().orElseThrow()).pieces().get(0).threads().get(0).skeins().orElseThrow();
        }
        // By hand: 900 x 8.7601464 + 20 x 25.4 = 8392.13 mm of path; x 54.45/37 x 2 / (9144 x 4) = 0.6753 skeins.
        assertEquals(0.6753, each[0].likely(), 5e-5);
        assertEquals(each[0].likely(), each[1].likely(), EXACT);
        assertEquals(each[0].low(), each[1].low(), EXACT);
        assertEquals(each[0].high(), each[1].high(), EXACT);
    }

    /** Common practice, from memory: two strands of an 8 m skein make about 1,600 to 2,000 crosses on 14 to the inch. */
    @Test
    void a_skein_of_cotton_makes_about_as_many_crosses_as_the_rule_of_thumb_says() {
        double eachSkein = 1000 / only(Skeins.crosses("K1", "cotton", 2, 1000)).skeins().orElseThrow().likely();
        assertTrue(eachSkein >= 1600 && eachSkein <= 2000, eachSkein + " crosses");
    }

    /** By hand: 1.1 x 45/37 x 1.1 = 54.45 / 37. */
    @Test
    void allowances_multiply() {
        assertEquals(54.45 / 37, Allowances.LIKELY.factor(), EXACT);
        assertEquals(1, new Allowances(0, 450, 0, 0).factor(), EXACT);
        assertThrows(IllegalArgumentException.class, () -> new Allowances(0.1, 80, 80, 0.1));
        assertThrows(IllegalArgumentException.class, () -> new Allowances(-0.1, 450, 80, 0.1));
    }

    /** By hand: 1.5 skeins for 3000 stitches are 0.0005 each; 1800 take 0.9, or 0.81 to 0.99; of 48 m that is 43.2 m. */
    @Test
    void what_was_used_replaces_the_geometry() {
        ThreadTotal thread = only(Skeins.thread("K1", "cotton", 6, List.of(StitchCount.of(StitchKind.CROSS, 1800)),
                OptionalDouble.empty(), Optional.of(new Used(1.5, 3000)), Optional.empty()));
        assertEquals(0.81, thread.skeins().orElseThrow().low(), EXACT);
        assertEquals(0.9, thread.skeins().orElseThrow().likely(), EXACT);
        assertEquals(0.99, thread.skeins().orElseThrow().high(), EXACT);
        assertEquals(43200, thread.plyLengthMm().orElseThrow().likely(), 1e-6);
        assertTrue(((ThreadNeed.Known) thread.needs().get(0)).pathMm().isEmpty());
    }

    /** By hand: a quarter of 4000 given stitches, or of half the chart's 100 x 80 cells, is 1000 crosses either way. */
    @Test
    void a_share_is_that_part_of_the_coverage_in_crosses_worked_in_rows() {
        Estimate counted = only(Skeins.crosses("K1", "cotton", 2, 1000)).skeins().orElseThrow();
        for (Amount coverage : List.of(new Amount.Stitches(4000), new Amount.Share(0.5))) {
            ThreadTotal shared = reckoned(Skeins.piece("p", List.of(Skeins.sharing("K1", 0.25)), List.of(), Optional.of(coverage),
                    Progress.NONE, Goal.NONE)).threads().get(0);
            assertEquals(1000, ((ThreadNeed.Known) shared.needs().get(0)).stitches(), EXACT);
            assertEquals(counted.likely(), shared.skeins().orElseThrow().likely(), EXACT);
        }
    }

    @Test
    void a_share_of_nothing_known_is_unknown_and_not_nothing() {
        ThreadTotal shared = only(Skeins.sharing("K1", 0.25));
        assertTrue(shared.skeins().isEmpty());
        assertTrue(shared.plyLengthMm().isEmpty());
        assertTrue(shared.buy().isEmpty());
        assertEquals(ThreadNeed.Why.NO_COVERAGE, ((ThreadNeed.Unknown) shared.needs().get(0)).why());
        ThreadTotal bare = only(Skeins.thread("K1", "cotton", 2, List.of(), OptionalDouble.empty(), Optional.empty(), Optional.empty()));
        assertEquals(ThreadNeed.Why.NO_STITCHES, ((ThreadNeed.Unknown) bare.needs().get(0)).why());
    }

    /** By hand: 0.3 + 0.8 skeins are bought as 2 together, though each alone would take one; another put-up stands apart. */
    @Test
    void one_code_in_piece_and_part_is_one_need_with_its_components_kept() {
        Part verse = new Part("Verse", 1, Optional.empty(), List.of(Skeins.eating("K1", "cotton", 800)));
        List<ThreadTotal> totals = reckoned(Skeins.piece("p", List.of(Skeins.eating("K1", "cotton", 300), Skeins.eating("K2", "dyed", 500)),
                List.of(verse), Optional.empty(), Progress.NONE, Goal.NONE)).threads();
        assertEquals(List.of("K1", "K2"), totals.stream().map(ThreadTotal::code).toList());
        assertEquals(1.1, totals.get(0).skeins().orElseThrow().likely(), EXACT);
        assertEquals(2, totals.get(0).buy().orElseThrow());
        assertEquals(2, totals.get(0).needs().size());
        assertEquals(Optional.of(verse), totals.get(0).needs().get(1).part());
    }

    @Test
    void one_unknown_part_makes_the_whole_unknown() {
        Part verse = new Part("Verse", 1, Optional.empty(), List.of(Skeins.sharing("K1", 0.1)));
        ThreadTotal total = reckoned(Skeins.piece("p", List.of(Skeins.eating("K1", "cotton", 300)), List.of(verse), Optional.empty(),
                Progress.NONE, Goal.NONE)).threads().get(0);
        assertTrue(total.skeins().isEmpty());
    }

    /** On 28 threads: over two 14 to the inch, over one 28, over four 7. The thread's own over comes first, then its part's. */
    @Test
    void over_comes_from_the_thread_then_its_part_then_the_cloth() {
        CalledThread plain = Skeins.crosses("K1", "cotton", 1, 100);
        CalledThread over4 = new CalledThread("K2", Optional.empty(), Optional.empty(), Optional.empty(), "cotton", Strands.of(1),
                plain.stitches(), OptionalDouble.empty(), Optional.empty(), OptionalInt.of(4), Optional.empty(), false);
        Part verse = new Part("Verse", 1, Optional.empty(), List.of(plain, over4));
        PieceThreads threads = reckoned(Skeins.piece("p", List.of(plain, over4), List.of(verse), Optional.empty(), Progress.NONE, Goal.NONE));
        List<ThreadNeed> k1 = threads.threads().get(0).needs();
        List<ThreadNeed> k2 = threads.threads().get(1).needs();
        assertEquals(14, k1.get(0).cell().stitchesPerInch(), EXACT);
        assertEquals(28, k1.get(1).cell().stitchesPerInch(), EXACT);
        assertEquals(7, k2.get(0).cell().stitchesPerInch(), EXACT);
        assertEquals(7, k2.get(1).cell().stitchesPerInch(), EXACT);
        assertEquals(28, k1.get(1).needle());
    }

    /** By hand: 0.95 likely is one skein; where the lot matters, the high 1.045 counts and is two. */
    @Test
    void the_high_figure_is_bought_where_the_lot_matters_and_the_likely_one_otherwise() {
        assertEquals(1, only(Skeins.eating("K1", "cotton", 950)).buy().orElseThrow());
        assertEquals(2, only(Skeins.eating("K1", "dyed", 950)).buy().orElseThrow());
        assertEquals(Edge.JUST_ENOUGH, only(Skeins.eating("K1", "cotton", 950)).edge());
        assertEquals(Edge.JUST_OVER, only(Skeins.eating("K1", "dyed", 950)).edge());
    }

    @Test
    void the_last_bits_of_arithmetic_buy_no_skein() {
        assertEquals(2, Edge.roundUp(2));
        assertEquals(2, Edge.roundUp(2.0000000001));
        assertEquals(3, Edge.roundUp(2.000001));
        assertEquals(2, Edge.roundUp(1.9999999));
        assertEquals(0, Edge.roundUp(0));
        assertEquals(1, Edge.roundUp(0.01));
    }

    /** A tenth of a skein either side of 2; below the first skein there is no whole one to be just over. */
    @Test
    void a_knifes_edge_is_a_tenth_of_a_skein_either_side_of_a_whole_one() {
        assertEquals(Edge.CLEAR, Edge.of(1.89));
        assertEquals(Edge.JUST_ENOUGH, Edge.of(1.9));
        assertEquals(Edge.JUST_ENOUGH, Edge.of(2));
        assertEquals(Edge.JUST_OVER, Edge.of(2.01));
        assertEquals(Edge.JUST_OVER, Edge.of(2.1));
        assertEquals(Edge.CLEAR, Edge.of(2.11));
        assertEquals(Edge.CLEAR, Edge.of(0.05));
        assertEquals(Edge.CLEAR, Edge.of(0));
        assertEquals(Edge.JUST_ENOUGH, Edge.of(0.95));
    }

    @Test
    void a_put_up_the_basket_does_not_have_is_refused_and_the_built_in_one_never_missing() {
        Piece silk = Skeins.piece("p", Skeins.crosses("K1", "silk", 1, 10));
        assertThrows(IllegalArgumentException.class, () -> reckoned(silk));
        assertEquals(PutUp.COTTON, PieceThreads.of(Skeins.piece("p", Skeins.crosses("K1", "cotton", 1, 10)), Map.of(), OptionalDouble.empty())
                .threads().get(0).putUp());
    }

    /** By hand: 25 of 100 stitches are done, so three quarters are left; finished is nothing left; a first day tells nothing. */
    @Test
    void what_is_left_follows_progress_only_where_progress_is_known() {
        CalledThread hundred = Skeins.crosses("K1", "cotton", 2, 100);
        LocalDate day = LocalDate.parse("2026-01-06");
        Progress quarter = new Progress(Optional.of(day), Optional.empty(), Optional.of(new Amount.Stitches(25)), List.of());
        Progress begun = new Progress(Optional.of(day), Optional.empty(), Optional.empty(), List.of());
        Progress over = new Progress(Optional.of(day), Optional.of(day), Optional.empty(), List.of());
        assertEquals(0.75, reckoned(Skeins.piece("p", List.of(hundred), List.of(), Optional.empty(), quarter, Goal.NONE)).left(), EXACT);
        assertEquals(1, reckoned(Skeins.piece("p", List.of(hundred), List.of(), Optional.empty(), begun, Goal.NONE)).left(), EXACT);
        assertEquals(0, reckoned(Skeins.piece("p", List.of(hundred), List.of(), Optional.empty(), over, Goal.NONE)).left(), EXACT);
    }

    /** Finer cloth never gets a bigger needle, which has a smaller number; more strands never a finer one. */
    @Test
    void needles_follow_the_cloth_and_the_thread() {
        for (int strands = 1; strands <= 12; strands++) {
            for (double perInch = 3; perInch < 60; perInch += 0.25) {
                assertTrue(Needle.size(perInch + 0.25, strands) >= Needle.size(perInch, strands));
                assertTrue(Needle.size(perInch, strands + 1) <= Needle.size(perInch, strands));
                assertTrue(Needle.size(perInch, strands) <= Needle.FINEST);
            }
        }
        // Common practice, no source: 24 on 14 to the inch, 26 on 18.
        assertEquals(24, Needle.size(14, 2));
        assertEquals(26, Needle.size(18, 2));
    }

    /**
     * By hand: 22 over four is 5.5 stitches to the inch, which alone would ask for an 18; its 22 holes to the inch are the room
     * of 22 / 2 = 11 stitches over two, a 22. 36 over three is 12 stitches, and 36 / 2 = 18 decide. Over two both are 18, over
     * one the 36 stitches decide, and on block cloth 14 blocks are more than 14 / 2. The sizes are the table's.
     */
    @ParameterizedTest
    @CsvSource({"22, 4, 22", "22, 2, 22", "36, 3, 26", "36, 2, 26", "36, 1, 28"})
    void a_long_stitch_takes_the_needle_its_holes_hold(double count, int over, int size) {
        assertEquals(size, Needle.size(Cell.of(Pieces.linen(count, over), over), 2));
        assertEquals(size - 2, Needle.size(Cell.of(Pieces.linen(count, over), over), 4));
    }

    @Test
    void on_block_cloth_there_is_a_hole_a_stitch() {
        double blockMm = 25.4 / 14;
        assertEquals(24, Needle.size(new Cell(blockMm, blockMm, blockMm), 2));
    }

    @Test
    void no_needle_is_given_for_no_stitches_or_no_thread() {
        assertThrows(IllegalArgumentException.class, () -> Needle.size(0, 1));
        assertThrows(IllegalArgumentException.class, () -> Needle.size(14, 0));
    }

    /** The table, common practice, no source: each count is the last of its size, and a hundredth more is one size finer. */
    @ParameterizedTest
    @CsvSource({"6.5, 18", "8.5, 20", "11.5, 22", "14.5, 24", "20, 26"})
    void a_needle_serves_up_to_the_count_of_the_table(double stitchesPerInch, int size) {
        assertEquals(size, Needle.size(stitchesPerInch, 3));
        assertEquals(size + 2, Needle.size(stitchesPerInch + 0.01, 3));
        assertEquals(size - 2, Needle.size(stitchesPerInch, 4));
        assertEquals(size - 2, Needle.size(stitchesPerInch, 6));
        assertEquals(size - 4, Needle.size(stitchesPerInch, 7));
    }
}
