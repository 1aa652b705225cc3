package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Margins;
import kitleaf.basket.Piece;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Pieces;
import kitleaf.sizing.StitchTally;
import kitleaf.sizing.cloth.ClothReckoning;
import org.junit.jupiter.api.Test;

/** A cloth of 500 x 300 mm whose cuts take 4 mm, with all places worked by hand. */
class CutStepTests {

    private static PlannedCut piece(int number, double x, double y, double width, double height) {
        Piece piece = Pieces.piece(new ChartSize(50, 50), Pieces.linen(28, 2), Margins.all(50));
        PieceReckoning reckoned = new PieceReckoning(piece, ClothReckoning.of(piece, 5), StitchTally.of(piece));
        return new PlannedCut(number, reckoned, reckoned.cloth().size(), x, y, width, height, false, Cloth.WarpRun.DOWN, true);
    }

    private static PlannedCloth cloth(List<PlannedCut> cuts, List<EdgeCut> edges, List<Remnant> remnants) {
        return new PlannedCloth("Sea-mist", Optional.empty(), false, Cloth.Kind.LINEN, new Count(28, 28), 500, 300, Cloth.WarpRun.DOWN, Optional.empty(),
                List.of(), cuts, edges, remnants, new Proof(true, 0, 1, 0));
    }

    private static EdgeCut down(int number, double from, double x, double top, double bottom) {
        return new EdgeCut(number, EdgeCut.Run.DOWN, from, x, top, x, bottom);
    }

    private static EdgeCut across(int number, double from, double y, double left, double right) {
        return new EdgeCut(number, EdgeCut.Run.ACROSS, from, left, y, right, y);
    }

    /** 200 off the left; of the 296 that are left of the rest, 100 off the top; of that, 150 off the left. */
    @Test
    void every_step_knows_its_part_and_what_comes_off() {
        List<CutStep> steps = cloth(
                List.of(piece(1, 0, 0, 200, 300), piece(2, 204, 0, 150, 100)),
                List.of(down(1, 200, 200, 0, 300), across(2, 100, 100, 204, 500), down(3, 150, 354, 0, 100)),
                List.of(new Remnant(204, 104, 296, 196, true), new Remnant(358, 0, 142, 100, true))).steps();
        assertEquals(List.of(CutStep.Side.WHOLE, CutStep.Side.RIGHT, CutStep.Side.ABOVE), steps.stream().map(CutStep::side).toList());
        assertEquals(List.of(0, 1, 2), steps.stream().map(CutStep::madeBy).toList());
        assertEquals(List.of(500.0, 296.0, 296.0), steps.stream().map(CutStep::widthMm).toList());
        assertEquals(List.of(300.0, 300.0, 100.0), steps.stream().map(CutStep::heightMm).toList());
        assertEquals(List.of(List.of(1), List.of(), List.of(2)), steps.stream().map(step -> step.pieces().stream().map(PlannedCut::number).toList()).toList());
        assertEquals(List.of(List.of(), List.of(0), List.of(1)), steps.stream().map(CutStep::remnants).toList());
    }

    /** 100 off the top leave 196 of 300; of those 150 off the left leave 346 of 500, and of these 90 off the top. */
    @Test
    void a_part_below_a_cut_is_measured_from_its_own_top() {
        List<CutStep> steps = cloth(List.of(piece(1, 0, 0, 500, 100), piece(2, 0, 104, 150, 196), piece(3, 154, 104, 346, 90)),
                List.of(across(1, 100, 100, 0, 500), down(2, 150, 150, 104, 300), across(3, 90, 194, 154, 500)),
                List.of(new Remnant(154, 198, 346, 102, true))).steps();
        assertEquals(List.of(500.0, 500.0, 346.0), steps.stream().map(CutStep::widthMm).toList());
        assertEquals(List.of(300.0, 196.0, 196.0), steps.stream().map(CutStep::heightMm).toList());
    }

    @Test
    void a_cloth_that_is_the_piece_needs_no_step() {
        assertEquals(List.of(), cloth(List.of(piece(1, 0, 0, 500, 300)), List.of(), List.of()).steps());
    }

    @Test
    void a_cut_beside_the_cloth_is_refused() {
        PlannedCloth cloth = cloth(List.of(), List.of(down(1, 600, 600, 0, 300)), List.of());
        assertThrows(IllegalArgumentException.class, cloth::steps);
    }
}
