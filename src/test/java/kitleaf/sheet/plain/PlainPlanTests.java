package kitleaf.sheet.plain;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Margins;
import kitleaf.basket.Piece;
import kitleaf.basket.Units;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Pieces;
import kitleaf.sizing.StitchTally;
import kitleaf.sizing.cloth.ClothReckoning;
import kitleaf.sizing.plan.ClothPlan;
import kitleaf.sizing.plan.EdgeCut;
import kitleaf.sizing.plan.PlannedCloth;
import kitleaf.sizing.plan.PlannedCut;
import kitleaf.sizing.plan.Proof;
import kitleaf.sizing.plan.Remnant;
import org.junit.jupiter.api.Test;

class PlainPlanTests {

    private static ClothPlan plan(Proof proof) {
        Piece piece = Pieces.piece(new ChartSize(50, 50), Pieces.linen(28, 2), Margins.all(50));
        PieceReckoning reckoned = new PieceReckoning(piece, ClothReckoning.of(piece, 5), StitchTally.of(piece));
        PlannedCut cut = new PlannedCut(1, reckoned, reckoned.cloth().size(), 0, 0, 200, 300, true, Cloth.WarpRun.ACROSS, false);
        PlannedCloth cloth = new PlannedCloth("Sea-mist", Optional.empty(), false, Cloth.Kind.LINEN, new Count(28, 28), 500, 300, Cloth.WarpRun.DOWN,
                Optional.empty(), List.of(), List.of(cut), List.of(new EdgeCut(1, EdgeCut.Run.DOWN, 200, 200, 0, 200, 300)),
                List.of(new Remnant(204, 0, 296, 300, true)), proof);
        return new ClothPlan(List.of(cloth), List.of(), List.of(reckoned), List.of(), List.of());
    }

    /** By hand: 50 stitches over two of 28 are 90.7 mm, with 100 mm of margins up to 195 mm. */
    @Test
    void a_plan_reads_in_a_few_lines() {
        assertEquals(List.of(
                "cloth plan",
                "  cloth      Sea-mist                 50 x 30 cm",
                "    piece 1  p                        20 x 30 cm, turned",
                "    cut 1    whole cloth              20 cm from its left, down",
                "    left     29.6 x 30 cm             keep",
                "    proof    no plan is better",
                "  no cloth   p                        needs 19.5 x 19.5 cm"), PlainPlan.of(plan(new Proof(true, 0, 1, 0)), Units.CM, Locale.ENGLISH));
    }

    @Test
    void a_plan_that_is_not_proved_says_so() {
        Proof none = new Proof(false, 10, 2, 75);
        assertEquals("    proof    not proved to be the best", PlainPlan.of(plan(none), Units.CM, Locale.ENGLISH).get(5));
        assertEquals("    Beweis    nicht als bester Plan bewiesen", PlainPlan.of(plan(none), Units.CM, Locale.GERMAN).get(5));
    }

    @Test
    void nothing_to_cut_is_nothing_to_say() {
        assertEquals(List.of(), PlainPlan.of(new ClothPlan(List.of(), List.of(), List.of(), List.of(), List.of()), Units.CM, Locale.ENGLISH));
    }
}
