package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitleaf.sizing.plan.CutVerifier.Placed;
import org.junit.jupiter.api.Test;

class CutVerifierTests {

    /** Four bars around a middle, each reaching past the next: the smallest layout no straight cut gets into. */
    private static final List<Placed> PINWHEEL = List.of(new Placed(0, 0, 2, 1), new Placed(2, 0, 1, 2),
            new Placed(1, 2, 2, 1), new Placed(0, 1, 1, 2), new Placed(1, 1, 1, 1));

    private static List<Placed> moved(List<Placed> placed, double x, double y) {
        return placed.stream().map(it -> new Placed(it.xMm() + x, it.yMm() + y, it.widthMm(), it.heightMm())).toList();
    }

    private static List<Placed> turned(List<Placed> placed) {
        return placed.stream().map(it -> new Placed(it.yMm(), it.xMm(), it.heightMm(), it.widthMm())).toList();
    }

    @Test
    void a_pinwheel_cannot_be_cut_from_edge_to_edge() {
        assertFalse(CutVerifier.separable(PINWHEEL));
        assertFalse(CutVerifier.separable(turned(PINWHEEL)));
        assertTrue(CutVerifier.fault(3, 3, PINWHEEL).orElseThrow().startsWith("no cut"));
        // Nor without its middle.
        assertFalse(CutVerifier.separable(PINWHEEL.subList(0, 4)));
    }

    @Test
    void a_pinwheel_without_one_of_its_bars_can() {
        for (int i = 0; i < 4; i++) {
            List<Placed> four = new ArrayList<>(PINWHEEL);
            four.remove(i);
            assertEquals(Optional.empty(), CutVerifier.fault(3, 3, four));
        }
    }

    @Test
    void a_pinwheel_deep_within_is_found() {
        List<Placed> all = new ArrayList<>(moved(PINWHEEL, 4, 5));
        all.add(new Placed(0, 0, 7, 5));
        all.add(new Placed(0, 5, 4, 3));
        assertFalse(CutVerifier.separable(all));
    }

    /** The layout of wang3 with 2726, printed in the header of cutting2d-optima.csv, is sound but for the cuts. */
    @Test
    void the_layout_of_wang3_with_2726_cannot_be_cut() {
        List<Placed> layout = List.of(new Placed(48, 21, 11, 19), new Placed(59, 0, 11, 19), new Placed(59, 19, 11, 19),
                new Placed(35, 0, 12, 21), new Placed(47, 0, 12, 21), new Placed(0, 25, 24, 15), new Placed(24, 25, 24, 15),
                new Placed(0, 0, 35, 25));
        assertTrue(CutVerifier.fault(70, 40, layout).orElseThrow().startsWith("no cut"));
    }

    @Test
    void grids_and_steps_can() {
        List<Placed> grid = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            grid.add(new Placed(i % 4 * 2.5, i / 4 * 1.5, 2.5, 1.5));
        }
        assertEquals(Optional.empty(), CutVerifier.fault(10, 4.5, grid));
        // A cut down at 3; then each side across at another height.
        assertEquals(Optional.empty(), CutVerifier.fault(5, 5, List.of(new Placed(0, 0, 3, 2), new Placed(0, 2, 3, 3), new Placed(3, 0, 2, 4), new Placed(3, 4, 2, 1))));
    }

    @Test
    void what_overlaps_or_sticks_out_is_told() {
        assertTrue(CutVerifier.fault(5, 5, List.of(new Placed(0, 0, 3, 3), new Placed(2.9, 2.9, 1, 1))).orElseThrow().startsWith("overlap"));
        assertTrue(CutVerifier.fault(5, 5, List.of(new Placed(2.5, 0, 2.6, 3))).orElseThrow().startsWith("sticks out"));
        assertTrue(CutVerifier.fault(5, 5, List.of(new Placed(0, -0.1, 2, 3))).orElseThrow().startsWith("sticks out"));
        assertTrue(CutVerifier.fault(5, 5, List.of(new Placed(1, 1, 2, 2), new Placed(1, 1, 2, 2))).orElseThrow().startsWith("overlap"));
    }

    @Test
    void rounding_of_sums_is_no_fault() {
        // 0.1 + 0.2 is a little more than 0.3.
        assertEquals(Optional.empty(), CutVerifier.fault(0.3, 1, List.of(new Placed(0, 0, 0.1, 1), new Placed(0.1, 0, 0.2, 1))));
        assertEquals(Optional.empty(), CutVerifier.fault(0.4, 1, List.of(new Placed(0, 0, 0.1 + 0.2, 1), new Placed(0.3, 0, 0.1, 1))));
    }
}
