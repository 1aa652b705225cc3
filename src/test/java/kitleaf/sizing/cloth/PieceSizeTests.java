package kitleaf.sizing.cloth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import javax.measure.MetricPrefix;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Finish;
import kitleaf.basket.Margins;
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Shrink;
import kitleaf.sizing.Pieces;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import systems.uom.common.USCustomary;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class PieceSizeTests {

    private static final double EXACT = 1e-9;
    private static final double STEP = 6.35;

    private static PieceSize size(int wide, int high, Cloth cloth, double marginMm) {
        return PieceSize.of(new ChartSize(wide, high), cloth, Margins.all(marginMm), STEP);
    }

    /** Common practice, no source: what every stitcher says of these cloths. */
    @ParameterizedTest
    @CsvSource({"36, 2, 18", "25, 1, 25", "40, 2, 20", "28, 2, 14", "32, 2, 16"})
    void so_many_stitches_make_an_inch(double count, int over, int stitches) {
        assertEquals(25.4, size(stitches, stitches, Pieces.linen(count, over), 0).across().finishedMm(), EXACT);
    }

    /**
     * N k / count inches: 100 over 1 on 14 to the inch is 181.4286 mm, and 100 over 2 on 28 is the same (recomputed by hand: 100 / 14 x
     * 25.4).
     */
    @Test
    void over_two_on_twice_the_count_is_the_same_size() {
        double over1 = size(100, 100, Pieces.linen(14, 1), 0).across().finishedMm();
        double over2 = size(100, 100, Pieces.linen(28, 2), 0).across().finishedMm();
        assertEquals(181.4286, over1, 5e-5);
        assertEquals(over1, over2, EXACT);
    }

    /** The inch of a JSR 385 units library, not ours. */
    @Test
    void an_inch_is_what_the_units_library_says() {
        double inchMm = Quantities.getQuantity(1, USCustomary.INCH).to(MetricPrefix.MILLI(Units.METRE)).getValue().doubleValue();
        assertEquals(inchMm, Weave.INCH_MM, 1e-12);
    }

    /** 28 threads to the inch are 11.0236 to the centimetre (n / 2.54, recomputed by hand): 11.0236 stitches over one are 10 mm. */
    @Test
    void threads_to_the_inch_agree_with_threads_to_the_centimetre() {
        double pitchMm = size(1, 1, Pieces.linen(28, 1), 0).across().pitchMm();
        assertEquals(11.0236, 10 / pitchMm, 5e-5);
    }

    /**
     * ISO 5077: dimensional change is 100 (after - before) / before, so cloth that changes by -3 % has to be
     * 360.8247 mm before to be 350 mm after (350 / 0.97), not 360.5 (350 x 1.03).
     */
    @Test
    void the_cut_is_enlarged_so_that_the_shrunk_cloth_is_right() {
        // 350 mm of design: 350 stitches of exactly 1 mm on 25.4 threads to the inch.
        PieceSize size = PieceSize.of(new ChartSize(350, 350), Pieces.linen(25.4, 1, new Shrink(0.03, 0.03)), Margins.all(0), 0.01);
        assertEquals(360.8247, size.across().exactCutMm(), 5e-5);
        double change = 100 * (size.across().finishedMm() - size.across().exactCutMm()) / size.across().exactCutMm();
        assertEquals(-3, change, EXACT);
    }

    /** Warp threads get shorter along the warp: with the warp down, shrink.warp takes from the height. */
    @Test
    void warp_shrinkage_shortens_the_height_and_weft_shrinkage_the_width() {
        PieceSize size = size(100, 100, Pieces.linen(30, 2, new Shrink(0.05, 0)), 0);
        assertEquals(size.across().finishedMm(), size.across().exactCutMm(), EXACT);
        assertEquals(size.down().finishedMm() / 0.95, size.down().exactCutMm(), EXACT);
    }

    /** Width is reckoned from the warp count: its threads are the ones met when counting across. */
    @Test
    void uneven_linen_is_reckoned_apart() {
        Cloth cloth = Pieces.cloth(new Count(35.5, 36.83), 2, Shrink.NONE, Cloth.Counted.AFTER, Cloth.WarpRun.DOWN);
        PieceSize size = size(120, 180, cloth, 0);
        assertEquals(120 * 2 * 25.4 / 35.5, size.across().finishedMm(), EXACT);
        assertEquals(180 * 2 * 25.4 / 36.83, size.down().finishedMm(), EXACT);
    }

    @Test
    void with_the_warp_across_counts_and_shrinks_change_places() {
        Cloth cloth = Pieces.cloth(new Count(30, 40), 1, new Shrink(0.1, 0), Cloth.Counted.AFTER, Cloth.WarpRun.ACROSS);
        PieceSize size = size(40, 30, cloth, 0);
        assertEquals(25.4, size.across().finishedMm(), EXACT);
        assertEquals(25.4, size.down().finishedMm(), EXACT);
        assertEquals(25.4 / 0.9, size.across().exactCutMm(), EXACT);
        assertEquals(25.4, size.down().exactCutMm(), EXACT);
    }

    /**
     * By hand: 40 threads to the inch before, 20 % lost along the weft: 40 warp threads then lie in 0.8 in, 50 to the
     * inch. 100 stitches over one are 2 in; before shrinking they took up 2.5 in.
     */
    @Test
    void a_count_taken_before_shrinking_is_drawn_together_by_it() {
        Cloth cloth = Pieces.cloth(new Count(40, 40), 1, new Shrink(0, 0.2), Cloth.Counted.BEFORE, Cloth.WarpRun.DOWN);
        PieceSize size = size(100, 100, cloth, 0);
        assertEquals(2 * 25.4, size.across().finishedMm(), EXACT);
        assertEquals(2.5 * 25.4, size.across().designAtTableMm(), EXACT);
        assertEquals(25.4 / 40, size.across().tablePitchMm(), EXACT);
        assertEquals(2.5 * 25.4, size.down().finishedMm(), EXACT);
    }

    /**
     * By hand: 40 ends and 50 picks to the inch before, 10 % lost along the warp, 20 % along the weft. Picks follow each other along the
     * warp, which takes them to 0.9 of their distance; ends to 0.8: 100 picks are 2 x 0.9 in high, 100 ends 2.5 x 0.8 in wide.
     */
    @Test
    void each_direction_is_drawn_together_by_its_own_shrinking() {
        Cloth cloth = Pieces.cloth(new Count(40, 50), 1, new Shrink(0.1, 0.2), Cloth.Counted.BEFORE, Cloth.WarpRun.DOWN);
        PieceSize size = size(100, 100, cloth, 0);
        assertEquals(1.8 * 25.4, size.down().finishedMm(), EXACT);
        assertEquals(2 * 25.4, size.across().finishedMm(), EXACT);
    }

    /** By hand: 140 over 2 on 36 is 7.7778 in; with 3 in on both sides 13.7778; up to the next quarter, 14. */
    @Test
    void cuts_are_rounded_up_to_the_step_and_the_rest_is_shared() {
        Extent across = size(140, 210, Pieces.linen(36, 2), 3 * 25.4).across();
        assertEquals(14 * 25.4, across.cutMm(), EXACT);
        assertEquals((3 + (14 - 13 - 7.0 / 9) / 2) * 25.4, across.nearEdgeToDesignMm(), EXACT);
        assertEquals(across.nearEdgeToDesignMm(), across.farEdgeToDesignMm(), EXACT);
    }

    /** 140 over 2 on 28 is exactly 10 in; 10 + 3 + 3 is 16, though doubles make it 406.40000000000003 mm. */
    @Test
    void a_whole_cut_is_not_rounded_up_by_the_last_bit() {
        for (int inches = 1; inches <= 60; inches++) {
            Extent across = size(14 * inches, 14, Pieces.linen(28, 2), 3 * 25.4).across();
            assertEquals((inches + 6) * 25.4, across.cutMm(), EXACT, inches + " in");
        }
    }

    /** Pythagoras: 3-4-5. 3 in and 4 in of block cloth without margins have diagonals of 5 in. */
    @Test
    void diagonals_follow_pythagoras() {
        assertEquals(5 * 25.4, size(42, 56, Pieces.linen(14, 1), 0).cutDiagonalMm(), EXACT);
    }

    /** By hand: margin 3 in at 28 threads is 84 threads; the design's 10 in are 280; the centre is 84 + 140 in. */
    @Test
    void threads_are_counted_in_from_every_edge() {
        Extent across = size(140, 140, Pieces.linen(28, 2), 3 * 25.4).across();
        assertEquals(84, across.nearThreads());
        assertEquals(84, across.farThreads());
        assertEquals(280, across.designThreads());
        assertEquals(224, across.centreThreads());
    }

    /** Threads keep their number when cloth shrinks: as many to count in at the table as margin over pitch at the hoop. */
    @Test
    void shrinking_changes_no_thread_count() {
        Margins margins = Margins.all(4 * 25.4);
        Extent still = PieceSize.of(new ChartSize(140, 140), Pieces.linen(28, 2), margins, 0.001).across();
        Extent shrunk = PieceSize.of(new ChartSize(140, 140), Pieces.linen(28, 2, new Shrink(0.04, 0.04)), margins, 0.001).across();
        assertEquals(112, still.nearThreads());
        assertEquals(112, shrunk.nearThreads());
        assertTrue(shrunk.nearEdgeToDesignMm() > still.nearEdgeToDesignMm());
    }

    @Test
    void the_centre_of_an_even_chart_lies_between_stitches_and_of_an_odd_one_on_a_stitch() {
        Extent even = size(140, 141, Pieces.linen(28, 2), 0).across();
        Extent odd = size(140, 141, Pieces.linen(28, 2), 0).down();
        assertTrue(even.centreBetween());
        assertEquals(70, even.centreStitch());
        assertFalse(odd.centreBetween());
        assertEquals(71, odd.centreStitch());
        // 141 stitches over 2 are 282 threads; the middle of the 71st lies after 141 of them.
        assertEquals(odd.nearThreads() + 141, odd.centreThreads());
    }

    /** By hand: 60 x 28 over one on 28 threads is 60/28 x 1 in. */
    @Test
    void a_part_over_one_is_reckoned_on_the_same_cloth() {
        Part verse = new Part("Verse", 1, Optional.of(new ChartSize(60, 28)), List.of());
        ClothReckoning reckoning = ClothReckoning.of(
                Pieces.piece(new ChartSize(100, 100), Pieces.linen(28, 2), Margins.all(50), verse), STEP);
        assertEquals(60.0 / 28 * 25.4, reckoning.parts().get(0).widthMm(), EXACT);
        assertEquals(25.4, reckoning.parts().get(0).heightMm(), EXACT);
    }

    /**
     * By hand: at 25.4 threads to the inch each is a millimetre; both ends of a stretch are in it, and no tick stands at the edge
     * itself.
     */
    @Test
    void ticks_stand_at_every_tenth_thread_of_a_stretch() {
        Extent across = size(140, 140, Pieces.linen(25.4, 2), 50).across();
        assertEquals(List.of(new Extent.Tick(20, 20), new Extent.Tick(30, 30), new Extent.Tick(40, 40)), across.ticks(20, 40));
        assertEquals(List.of(new Extent.Tick(10, 10)), across.ticks(0, 19.9));
    }

    /** By hand: at 12.7 threads to the inch each is two millimetres, so the tenth stands at 20 mm, and the second tick at 40. */
    @Test
    void ticks_stand_as_far_as_their_threads_reach() {
        Extent across = size(140, 140, Pieces.linen(12.7, 2), 50).across();
        assertEquals(List.of(new Extent.Tick(10, 20), new Extent.Tick(20, 40)), across.ticks(20, 40));
    }

    /** By hand, over three and with 28 threads across to 14 down: 28 stitches are 84 of 28 threads, 3 in; 14 are 42 of 14, 3 in too. */
    @Test
    void a_part_over_three_spans_three_times_its_stitches() {
        Part band = new Part("Band", 3, Optional.of(new ChartSize(28, 14)), List.of());
        PartSize size = ClothReckoning.of(Pieces.piece(new ChartSize(100, 100),
                Pieces.cloth(new Count(28, 14), 2, Shrink.NONE, Cloth.Counted.AFTER, Cloth.WarpRun.DOWN), Margins.all(50), band), STEP).parts().get(0);
        assertEquals(76.2, size.widthMm(), EXACT);
        assertEquals(76.2, size.heightMm(), EXACT);
    }

    private static Piece hooped(Cloth cloth, Margins margins, boolean given) {
        Piece plain = Pieces.piece(new ChartSize(60, 80), cloth, margins);
        return new Piece(plain.id(), plain.title(), plain.designer(), plain.stitches(), cloth, Optional.of(Finish.HOOPED), margins, given,
                List.of(), List.of(), Optional.empty(), plain.progress(), plain.goal());
    }

    /**
     * By hand: 60 x 80 stitches at 20 to the inch are 3 x 4 in, 5 in from corner to corner. The circle leaves (5 - 3) / 2 = 1 in beside
     * and (5 - 4) / 2 = 1/2 in above and below; with 3 in round it the cloth is 11 x 11 in, and 4 in of 20 threads lie left of the
     * design, 3 1/2 in above it.
     */
    @Test
    void a_hooped_piece_without_margin_has_the_usual_one_round_its_circle() {
        Cloth cloth = Pieces.linen(20, 1);
        ClothReckoning reckoning = ClothReckoning.of(hooped(cloth, Finish.HOOPED.usualMargins(), false), STEP);
        PieceSize size = reckoning.size();
        assertEquals(5 * 25.4, size.diagonalMm(), EXACT);
        assertEquals(11 * 25.4, size.across().cutMm(), EXACT);
        assertEquals(11 * 25.4, size.down().cutMm(), EXACT);
        assertEquals(80, size.across().nearThreads());
        assertEquals(70, size.down().nearThreads());
        // On 28 over two 60 x 80 are 4.285714 x 5.714286 in, 7.142857 from corner to corner: 13.142857, so 13 1/4.
        OtherCloth coarse = reckoning.others().stream().filter(other -> other.count().warpPerInch() == 28).findFirst().orElseThrow();
        assertEquals(13.25 * 25.4, coarse.size().across().cutMm(), EXACT);
        assertEquals(13.25 * 25.4, coarse.size().down().cutMm(), EXACT);
    }

    /** By hand, on the same 3 x 4 in: 3 in round the design are 9 x 10 in. */
    @Test
    void a_margin_she_gave_is_kept_for_a_hoop_too() {
        PieceSize size = ClothReckoning.of(hooped(Pieces.linen(20, 1), Margins.all(76.2), true), STEP).size();
        assertEquals(9 * 25.4, size.across().cutMm(), EXACT);
        assertEquals(10 * 25.4, size.down().cutMm(), EXACT);
    }

    @Test
    void the_what_if_table_holds_the_own_cloth_once_and_runs_from_large_to_small() {
        ClothReckoning reckoning = ClothReckoning.of(Pieces.piece(new ChartSize(140, 210), Pieces.linen(36, 2), Margins.all(76.2)), STEP);
        List<OtherCloth> rows = reckoning.others();
        assertEquals(1, rows.stream().filter(OtherCloth::own).count());
        assertEquals(8, rows.size());
        for (int i = 1; i < rows.size(); i++) {
            assertTrue(rows.get(i - 1).size().across().finishedMm() >= rows.get(i).size().across().finishedMm());
        }
        OtherCloth own = rows.stream().filter(OtherCloth::own).findFirst().orElseThrow();
        assertEquals(reckoning.size(), own.size());
        assertEquals(18, own.stitchesPerInch(), EXACT);
    }

    @Test
    void a_cloth_that_is_not_common_gets_a_row_of_its_own() {
        ClothReckoning reckoning = ClothReckoning.of(Pieces.piece(new ChartSize(140, 210), Pieces.linen(35, 2), Margins.all(76.2)), STEP);
        assertEquals(9, reckoning.others().size());
    }
}
