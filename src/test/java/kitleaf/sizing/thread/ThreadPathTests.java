package kitleaf.sizing.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Shrink;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import kitleaf.sizing.Pieces;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The formulas against blocks stitched hole by hole, and against cells whose diagonals are whole (3, 4, 5). */
class ThreadPathTests {

    private static final double EXACT = 1e-9;
    private static final Cell THREE_BY_FOUR = new Cell(3, 4, 1.75);

    private static double oneMm(StitchKind kind, Cell cell) {
        return ThreadPath.oneMm(StitchCount.of(kind, 1), cell);
    }

    /** Only the turns at a row's ends differ, two a row, each by less than the block is wide or less than two cells. */
    private static void agreesPerStitch(double formulaMm, IntFunction<WorkedBlock> block, IntFunction<Double> bound, int legsEach) {
        for (int n : new int[] {10, 40, 160}) {
            WorkedBlock worked = block.apply(n);
            assertEquals(formulaMm, worked.lengthMm() / (n * n), bound.apply(n), n + " x " + n);
            assertEquals(legsEach * n * n, worked.frontLegs(), "every leg in its own place");
        }
    }

    @ParameterizedTest
    @CsvSource({"1.8, 1.8", "1.2, 1.9", "2.4, 0.7", "3, 4"})
    void crosses_halves_and_tents_agree_with_a_block_stitched_hole_by_hole(double a, double b) {
        Cell cell = new Cell(a, b, 1);
        // At each row's end one way behind is missing or another one taken, none longer than two cells and one: the
        // error a stitch is at most 2 (2a + b) a row of n, so it shrinks as 1 / n.
        IntFunction<Double> bound = n -> 2 * (2 * a + b) / n;
        agreesPerStitch(ThreadPath.crossInRowsMm(cell), n -> WorkedBlock.crossesInRows(n, a, b), bound, 2);
        agreesPerStitch(ThreadPath.crossSinglyMm(cell), n -> WorkedBlock.crossesSingly(n, a, b), bound, 2);
        agreesPerStitch(ThreadPath.halfMm(cell), n -> WorkedBlock.halves(n, a, b), bound, 1);
        agreesPerStitch(ThreadPath.tentMm(cell), n -> WorkedBlock.tents(n, a, b), bound, 1);
    }

    @ParameterizedTest
    @CsvSource({"1.8, 1.8", "1.2, 1.9", "2.4, 0.7"})
    void rows_of_part_stitches_agree_hole_by_hole_but_for_one_long_way_back(double a, double b) {
        Cell cell = new Cell(a, b, 1);
        for (int n : new int[] {10, 40, 160}) {
            WorkedBlock quarters = WorkedBlock.quarters(n, a, b);
            WorkedBlock threeQuarters = WorkedBlock.threeQuarters(n, a, b);
            // These rows all run one way; between two the thread goes back n cells, a known detour: taken off exactly, from
            // the last middle (n - 1/2, 1/2) to the next row's first corner (0, 1); the last stitch leaves out its d/2 behind.
            double detourMm = (n - 1) * Math.hypot((n - 0.5) * a, b / 2);
            double lastMm = n * cell.diagonalMm() / 2;
            assertEquals(ThreadPath.quarterMm(cell), (quarters.lengthMm() - detourMm + lastMm) / (n * n), EXACT);
            assertEquals(ThreadPath.threeQuarterMm(cell), (threeQuarters.lengthMm() - detourMm + lastMm) / (n * n), EXACT);
            assertEquals(n * n, quarters.frontLegs());
            assertEquals(2 * n * n, threeQuarters.frontLegs());
        }
    }

    @Test
    void lines_agree_with_lines_stitched_hole_by_hole() {
        double edgeMm = 1.7;
        Cell cell = new Cell(edgeMm, edgeMm, 0.85);
        for (int n : new int[] {10, 100, 1000}) {
            // The last back stitch goes nowhere: two edges of n are missing; double running lacks one way behind at its turn.
            assertEquals(ThreadPath.backMm(cell), WorkedBlock.backStitches(n, edgeMm).lengthMm() / n, 2 * edgeMm / n + EXACT);
            assertEquals(ThreadPath.doubleRunningMm(cell), WorkedBlock.doubleRunning(n, edgeMm).lengthMm() / n, 2 * edgeMm / n + EXACT);
            assertEquals(n, WorkedBlock.backStitches(n, edgeMm).frontLegs());
            assertEquals(n, WorkedBlock.doubleRunning(n, edgeMm).frontLegs());
        }
    }

    @Test
    void satin_and_knots_agree_with_theirs() {
        double threadMm = 0.9;
        Cell cell = new Cell(1.8, 1.8, threadMm);
        for (int n : new int[] {10, 100, 1000}) {
            for (int span : new int[] {1, 4, 9}) {
                // The last stitch lacks its way behind, at most span + 1 threads.
                assertEquals(ThreadPath.satinMm(cell, span), WorkedBlock.satin(n, threadMm, span).lengthMm() / n,
                        (span + 1) * threadMm / n);
            }
            // A polygon of 720 sides is shorter than its circle by under 4e-6 of it.
            assertEquals(ThreadPath.knotMm(cell), WorkedBlock.knotsMm(n, threadMm, 1.8, 2, 1.5) / n, 1.8 / n + 1e-4);
        }
    }

    /** By hand on a cell of 3 x 4, d = 5. */
    @Test
    void paths_on_three_by_four_are_those_worked_by_hand() {
        assertEquals(2 * 5 + 2 * 4, oneMm(StitchKind.CROSS, THREE_BY_FOUR), EXACT);
        assertEquals(5 + 4, oneMm(StitchKind.HALF, THREE_BY_FOUR), EXACT);
        assertEquals(5 + Math.sqrt(36 + 16), oneMm(StitchKind.TENT, THREE_BY_FOUR), EXACT);
        assertEquals(5, oneMm(StitchKind.QUARTER, THREE_BY_FOUR), EXACT);
        assertEquals(2 * 5 + 4, oneMm(StitchKind.THREE_QUARTER, THREE_BY_FOUR), EXACT);
        assertEquals(3 * 3.5, oneMm(StitchKind.BACK, THREE_BY_FOUR), EXACT);
        assertEquals(2 * 3.5, oneMm(StitchKind.DOUBLE_RUNNING, THREE_BY_FOUR), EXACT);
        // Four threads of 1.75 are 7; behind sqrt(49 + 1.75 x 1.75).
        assertEquals(7 + Math.sqrt(49 + 3.0625), oneMm(StitchKind.SATIN, THREE_BY_FOUR), EXACT);
        assertEquals(2 * Math.PI * 1.5 + 1.75 + 3.5, oneMm(StitchKind.KNOT, THREE_BY_FOUR), EXACT);
    }

    /** From hole to hole, front and behind in turn, in cloth threads from the stitch's own first hole to the next one's. */
    private static double walked(double... holes) {
        double sum = 0;
        for (int i = 2; i < holes.length; i += 2) {
            sum += Math.sqrt(Math.pow(holes[i] - holes[i - 2], 2) + Math.pow(holes[i + 1] - holes[i - 1], 2));
        }
        return sum;
    }

    /** Threads half a millimetre apart, stitches over four of them, whatever the cell is. The holes are drawn from how each is worked. */
    @Test
    void stitches_of_band_samplers_agree_with_their_holes() {
        Cell cell = new Cell(3, 4, 0.5);
        // Cells are 6 x 8 threads here.
        assertEquals(walked(0, 0, 12, 8, 6, 8, 12, 0, 6, 0) / 2, oneMm(StitchKind.LONG_ARMED, cell), EXACT);
        assertEquals(walked(0, 0, 4, 4, 4, 0, 0, 4, 2, 4, 0, 2, 4, 2, 2, 4, 2, 0, 4, 2, 0, 2, 2, 0, 4, 0) / 2,
                oneMm(StitchKind.RICE, cell), EXACT);
        assertEquals(walked(0, 0, 2, 2, 0, 2, 2, 2, 0, 4, 2, 2, 2, 4, 2, 2, 4, 4, 2, 2, 4, 2, 2, 2, 4, 0, 2, 2, 2, 0, 2, 2, 4, 0) / 2,
                oneMm(StitchKind.EYELET, cell), EXACT);
        assertEquals(walked(4, 0, 4, 4, 0, 0, 4, 0, 0, 4, 4, 4, 0, 0) / 2, oneMm(StitchKind.FOUR_SIDED, cell), EXACT);
        // The next block's first stitch goes from (8,4) into the corner (4,4).
        assertEquals(walked(0, 0, 0, 4, 1, 0, 1, 4, 2, 0, 2, 4, 3, 0, 3, 4, 4, 0, 4, 4, 8, 4) / 2,
                oneMm(StitchKind.SATIN_BLOCK, cell), EXACT);
        assertEquals(walked(0, -2, 0, 0, 4, 0, 0, 0, 4, -2) / 2, oneMm(StitchKind.HEM, cell), EXACT);
        // Each upright stitch with the bend at its tie, then behind to the tie and back down.
        assertEquals(walked(0, 0, -1.5, 2, 0, 4, -1, 2, -2, 2, 0, 0, -0.5, 2, 0, 4, 0, 2, -1, 2, 0, 0, 0.5, 2, 0, 4, 1, 2, 0, 2,
                0, 0, 1.5, 2, 0, 4, 2, 2, 1, 2, 4, 0) / 2, oneMm(StitchKind.QUEEN, cell), EXACT);
    }

    /** By hand on the cell of 3 x 4, d = 5, and threads 1.75 apart: s = 7, s sqrt 2 = 9.899495. */
    @Test
    void stitches_of_band_samplers_are_those_worked_by_hand() {
        // sqrt(36 + 16) = 7.211103, + 5 + 6.
        assertEquals(18.211103, oneMm(StitchKind.LONG_ARMED, THREE_BY_FOUR), 1e-6);
        // 39.597980 + 35; + 28; 29.698485 + 21.
        assertEquals(74.597980, oneMm(StitchKind.RICE, THREE_BY_FOUR), 1e-6);
        assertEquals(67.597980, oneMm(StitchKind.EYELET, THREE_BY_FOUR), 1e-6);
        assertEquals(50.698485, oneMm(StitchKind.FOUR_SIDED, THREE_BY_FOUR), 1e-6);
        // 24 threads and 4 sqrt 17 = 16.492423: 40.492423 x 1.75. In a hem 8 + sqrt 20 + 2 = 14.472136 threads.
        assertEquals(70.861739, oneMm(StitchKind.SATIN_BLOCK, THREE_BY_FOUR), 1e-6);
        assertEquals(25.326238, oneMm(StitchKind.HEM, THREE_BY_FOUR), 1e-6);
        // 18 + 8.246211 + 6.708204 + 5.656854 + 3.605551 = 42.216820 threads.
        assertEquals(73.879436, oneMm(StitchKind.QUEEN, THREE_BY_FOUR), 2e-6);
    }

    @Test
    void crosses_follow_how_they_are_worked_and_other_stitches_what_each_takes() {
        StitchCount singly = new StitchCount(StitchKind.CROSS, 1, Optional.of(StitchCount.Worked.SINGLY), OptionalInt.empty(), OptionalDouble.empty());
        StitchCount rows = new StitchCount(StitchKind.CROSS, 1, Optional.of(StitchCount.Worked.ROWS), OptionalInt.empty(), OptionalDouble.empty());
        StitchCount other = new StitchCount(StitchKind.OTHER, 1, Optional.empty(), OptionalInt.empty(), OptionalDouble.of(30));
        StitchCount satin = new StitchCount(StitchKind.SATIN, 1, Optional.empty(), OptionalInt.of(8), OptionalDouble.empty());
        assertEquals(3 * 5 + 4, ThreadPath.oneMm(singly, THREE_BY_FOUR), EXACT);
        assertEquals(18, ThreadPath.oneMm(rows, THREE_BY_FOUR), EXACT);
        assertEquals(30, ThreadPath.oneMm(other, THREE_BY_FOUR), EXACT);
        assertEquals(14 + Math.hypot(14, 1.75), ThreadPath.oneMm(satin, THREE_BY_FOUR), EXACT);
    }

    /**
     * Common practice, from memory: canvas yarn is reckoned at roughly 1 to 1.5 yards a square inch on 10 to 14 mesh, more the
     * finer the canvas. Rules differ in what they allow for ends, so the bare path is held to the rule itself and the sparing
     * estimate to twice its width. Basketweave, worked on the diagonal, goes two cells straight behind (2a and 2b in turn).
     */
    @ParameterizedTest
    @CsvSource({"10", "12", "14"})
    void tent_on_canvas_eats_about_what_the_yarn_rule_says(double mesh) {
        Cell cell = new Cell(25.4 / mesh, 25.4 / mesh, 25.4 / mesh);
        double tentYards = ThreadPath.tentMm(cell) * mesh * mesh / 914.4;
        double basketweaveYards = (cell.diagonalMm() + cell.acrossMm() + cell.downMm()) * mesh * mesh / 914.4;
        assertTrue(tentYards >= 1 && tentYards <= 1.5, tentYards + " yd");
        assertTrue(Math.abs(basketweaveYards / tentYards - 1) < 0.1, basketweaveYards + " yd against " + tentYards);
        double sparing = tentYards * Allowances.LOW.factor();
        assertTrue(sparing >= 1 && sparing <= 2, sparing + " yd");
    }

    /** By hand: 36 over two is 18 to the inch, a cell of 25.4 / 18 mm; over one half of it. Its threads are 25.4 / 36 apart either way. */
    @Test
    void the_cell_spans_so_many_threads_of_the_cloth() {
        Cell two = Cell.of(Pieces.linen(36, 2), 2);
        Cell one = Cell.of(Pieces.linen(36, 2), 1);
        assertEquals(25.4 / 18, two.acrossMm(), EXACT);
        assertEquals(25.4 / 36, one.downMm(), EXACT);
        assertEquals(25.4 / 36, one.threadMm(), EXACT);
        assertEquals(25.4 / 36, two.threadMm(), EXACT);
        assertEquals(18, two.stitchesPerInch(), EXACT);
    }

    /**
     * By hand: 20 ends an inch met across and 25 picks met down, over two: cells of 2.54 x 2.032 mm. Counted before a warp
     * shrinks by 5 %, picks lie at 2.032 x 0.95 at the hoop. With the warp across, width and height change places.
     */
    @Test
    void an_uneven_cloth_gives_cells_as_they_lie_at_the_hoop() {
        Count count = new Count(20, 25);
        Cell down = Cell.of(Pieces.cloth(count, 2, new Shrink(0.05, 0), Cloth.Counted.BEFORE, Cloth.WarpRun.DOWN), 2);
        Cell across = Cell.of(Pieces.cloth(count, 2, new Shrink(0.05, 0), Cloth.Counted.BEFORE, Cloth.WarpRun.ACROSS), 2);
        assertEquals(2.54, down.acrossMm(), EXACT);
        assertEquals(2.032 * 0.95, down.downMm(), EXACT);
        assertEquals(down.acrossMm(), across.downMm(), EXACT);
        assertEquals(down.downMm(), across.acrossMm(), EXACT);
    }
}
