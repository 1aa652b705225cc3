package kitleaf.sizing.cloth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kitleaf.basket.ChartSize;
import kitleaf.basket.Margins;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Shrink;
import kitleaf.sizing.Pieces;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What holds of every piece. Lengths are compared to a millionth of a millimetre, well above double arithmetic's own error. */
class PieceSizePropertyTests {

    private static final double SAME = 1e-6;

    /** A chart on a cloth with its margins and rounding step. */
    record Case(ChartSize chart, Cloth cloth, Margins margins, double stepMm) {
        PieceSize size() {
            return PieceSize.of(chart, cloth, margins, stepMm);
        }
    }

    @Provide
    Arbitrary<Case> cases() {
        Arbitrary<ChartSize> charts = Combinators.combine(Arbitraries.integers().between(1, 900), Arbitraries.integers().between(1, 900))
                .as(ChartSize::new);
        Arbitrary<Double> counts = Arbitraries.doubles().between(6, 70).ofScale(2);
        Arbitrary<Double> shrinks = Arbitraries.doubles().between(0, 0.12).ofScale(3);
        Arbitrary<Cloth> cloths = Combinators.combine(counts, counts, Arbitraries.integers().between(1, 4), shrinks, shrinks,
                Arbitraries.of(Cloth.Counted.class), Arbitraries.of(Cloth.WarpRun.class)).as((warp, weft, over, warpShrink, weftShrink, counted, run) ->
                        Pieces.cloth(new Count(warp, weft), over, new Shrink(warpShrink, weftShrink), counted, run));
        Arbitrary<Double> margins = Arbitraries.doubles().between(0, 400).ofScale(1);
        Arbitrary<Margins> allMargins = Combinators.combine(margins, margins, margins, margins).as(Margins::new);
        return Combinators.combine(charts, cloths, allMargins, Arbitraries.of(6.35, 5.0, 3.175, 25.4, 10.0)).as(Case::new);
    }

    @Property
    void the_shrunk_cut_is_never_smaller_than_design_and_margins_and_never_a_step_larger(@ForAll("cases") Case it) {
        PieceSize size = it.size();
        for (Extent extent : new Extent[] {size.across(), size.down()}) {
            double needed = extent.finishedMm() + extent.nearMarginMm() + extent.farMarginMm();
            assertTrue(extent.cutMm() * (1 - extent.shrink()) >= needed - SAME);
            assertTrue(extent.exactCutMm() > extent.cutMm() - it.stepMm() - SAME);
            double steps = extent.cutMm() / it.stepMm();
            assertEquals(Math.rint(steps), steps, SAME);
        }
    }

    @Property
    void edges_and_design_make_up_the_cut(@ForAll("cases") Case it) {
        Extent across = it.size().across();
        assertEquals(across.cutMm(), across.nearEdgeToDesignMm() + across.designAtTableMm() + across.farEdgeToDesignMm(), SAME);
    }

    @Property
    void every_cut_edge_leaves_at_least_its_margin_once_shrunk(@ForAll("cases") Case it) {
        PieceSize size = it.size();
        assertTrue(size.across().nearEdgeToDesignMm() * (1 - size.across().shrink()) >= it.margins().leftMm() - SAME);
        assertTrue(size.across().farEdgeToDesignMm() * (1 - size.across().shrink()) >= it.margins().rightMm() - SAME);
        assertTrue(size.down().nearEdgeToDesignMm() * (1 - size.down().shrink()) >= it.margins().topMm() - SAME);
        assertTrue(size.down().farEdgeToDesignMm() * (1 - size.down().shrink()) >= it.margins().bottomMm() - SAME);
    }

    /** The chart, its margins and the cloth all turned a quarter: the same cloth, seen from the side. */
    @Property
    void turning_a_piece_swaps_its_sizes(@ForAll("cases") Case it) {
        Cloth cloth = it.cloth();
        Margins margins = it.margins();
        Cloth turnedCloth = Pieces.cloth(cloth.count(), cloth.over(), cloth.shrink(), cloth.counted(),
                cloth.warp() == Cloth.WarpRun.DOWN ? Cloth.WarpRun.ACROSS : Cloth.WarpRun.DOWN);
        PieceSize turned = new Case(new ChartSize(it.chart().high(), it.chart().wide()), turnedCloth,
                new Margins(margins.leftMm(), margins.topMm(), margins.rightMm(), margins.bottomMm()), it.stepMm()).size();
        assertEquals(it.size().across().finishedMm(), turned.down().finishedMm(), SAME);
        assertEquals(it.size().across().cutMm(), turned.down().cutMm(), SAME);
        assertEquals(it.size().across().nearEdgeToDesignMm(), turned.down().nearEdgeToDesignMm(), SAME);
        assertEquals(it.size().down().finishedMm(), turned.across().finishedMm(), SAME);
        assertEquals(it.size().down().cutMm(), turned.across().cutMm(), SAME);
        assertEquals(it.size().cutDiagonalMm(), turned.cutDiagonalMm(), SAME);
    }

    /** Whatever the reader lets through, to its limits. */
    @Property
    void no_size_is_negative_or_no_number(@ForAll @IntRange(min = 1, max = ChartSize.MOST) int wide, @ForAll @IntRange(min = 1, max = ChartSize.MOST) int high,
            @ForAll @DoubleRange(min = Count.LEAST, max = Count.MOST) double warp, @ForAll @DoubleRange(min = Count.LEAST, max = Count.MOST) double weft,
            @ForAll @DoubleRange(max = Shrink.MOST) double shrink, @ForAll @IntRange(min = 1, max = Cloth.MOST_OVER) int over,
            @ForAll @DoubleRange(max = 1000) double marginMm, @ForAll Cloth.Counted counted, @ForAll Cloth.WarpRun run) {
        Cloth cloth = Pieces.cloth(new Count(warp, weft), over, new Shrink(shrink, shrink / 2), counted, run);
        PieceSize size = PieceSize.of(new ChartSize(wide, high), cloth, new Margins(marginMm, 0, marginMm / 3, marginMm), 6.35);
        for (Extent extent : new Extent[] {size.across(), size.down()}) {
            for (double mm : new double[] {extent.cellMm(), extent.finishedMm(), extent.tablePitchMm(), extent.designAtTableMm(), extent.exactCutMm(),
                extent.cutMm(), size.cutDiagonalMm()}) {
                assertTrue(mm > 0 && Double.isFinite(mm), extent + ": " + mm);
            }
            assertTrue(extent.nearEdgeToDesignMm() >= -SAME && extent.farEdgeToDesignMm() >= -SAME, extent.toString());
            assertTrue(extent.nearThreads() >= 0 && extent.farThreads() >= 0 && extent.designThreads() > 0 && extent.centreThreads() > 0
                    && extent.centreStitch() > 0, extent.toString());
        }
    }

    @Property
    void more_stitches_never_need_less_cloth_and_a_finer_count_never_more(@ForAll("cases") Case it) {
        Extent extent = it.size().across();
        Extent wider = new Extent(extent.stitches() + 1, extent.over(), extent.pitchMm(), extent.shrink(), extent.nearMarginMm(),
                extent.farMarginMm(), extent.stepMm());
        Extent finer = new Extent(extent.stitches(), extent.over(), extent.pitchMm() * 0.99, extent.shrink(), extent.nearMarginMm(),
                extent.farMarginMm(), extent.stepMm());
        assertTrue(wider.cutMm() >= extent.cutMm());
        assertTrue(finer.cutMm() <= extent.cutMm());
    }

    /** The count of every thread: edges and design together are the threads of the cut, to a thread of rounding at each edge. */
    @Property
    void thread_counts_make_up_the_threads_of_the_cut(@ForAll("cases") Case it) {
        Extent down = it.size().down();
        double threadsOfCut = down.cutMm() / down.tablePitchMm();
        assertEquals(threadsOfCut, down.nearThreads() + down.designThreads() + down.farThreads(), 1 + SAME);
    }

    @Property
    void a_guide_always_holds_its_first_stitch_on_one_page_clear_of_every_join(@ForAll("cases") Case it) {
        PieceSize size = it.size();
        CornerGuide guide = CornerGuide.of(size, 150, 190, 45);
        double x = size.across().nearEdgeToDesignMm();
        double y = size.down().nearEdgeToDesignMm();
        long holding = guide.windows().stream().filter(window -> x >= window.xMm() && x < window.xMm() + window.widthMm()
                && y >= window.yMm() && y < window.yMm() + window.heightMm()).count();
        assertEquals(1, holding);
        for (CornerGuide.Window window : guide.windows()) {
            assertTrue(window.widthMm() > 0 && window.widthMm() <= 150 + SAME && window.heightMm() > 0 && window.heightMm() <= 190 + SAME);
            if (window.column() > 0 && !patch(guide, window)) {
                assertTrue(Math.abs(window.xMm() - x) >= CornerGuide.CLEAR_MM - SAME, "join at " + window.xMm() + ", stitch at " + x);
            }
            if (window.column() < guide.columns() - 1 && window.row() == 0) {
                assertTrue(window.widthMm() + CornerGuide.LIP_MM <= 150 + SAME);
            }
        }
    }

    @Property
    void the_windows_of_a_guide_meet_edge_to_edge_from_the_cut_corner(@ForAll("cases") Case it) {
        CornerGuide guide = CornerGuide.of(it.size(), 150, 190, 45);
        double xMm = 0;
        for (CornerGuide.Window window : guide.windows().subList(0, guide.columns())) {
            assertEquals(xMm, window.xMm(), SAME);
            xMm += window.widthMm();
        }
        assertTrue(xMm <= it.size().across().cutMm() + SAME);
        // A row or a column of windows, or both with a patch: no page that would be blank.
        assertEquals(guide.columns() + guide.rows() - (guide.stripMm() > 0 ? 0 : 1), guide.windows().size());
    }

    private static boolean patch(CornerGuide guide, CornerGuide.Window window) {
        return guide.stripMm() > 0 && window.column() > 0 && window.row() > 0;
    }
}
