package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import kitleaf.basket.Piece;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.cloth.Cutting;
import kitleaf.basket.cloth.Flaw;
import org.junit.jupiter.api.Test;

/** What comes off a cloth and what stays, by hand. A cut takes 1 mm away, and remnants from 2 mm on are kept. */
class CutOrderTests {

    private static PlannedCloth planned(ClothOnHand cloth, Piece... pieces) {
        return planned(2, cloth, pieces);
    }

    private static PlannedCloth planned(double usableMm, ClothOnHand cloth, Piece... pieces) {
        ClothPlan plan = Cloths.plan(new ClothSupply(List.of(cloth), List.of(), true, new Cutting(0, usableMm)), pieces);
        assertEquals(List.of(), plan.unplaced());
        PlannedCloth planned = plan.cloths().get(0);
        new CuttingTable(1, 1).cutsUp(planned);
        CuttingTable.numbersRun(planned);
        return planned;
    }

    private static List<List<Double>> remnants(PlannedCloth cloth) {
        return cloth.remnants().stream().map(it -> List.of(it.xMm(), it.yMm(), it.widthMm(), it.heightMm())).toList();
    }

    /** The sides of what is left, the shorter first, in the order told. */
    private static List<List<Double>> sides(PlannedCloth cloth) {
        return cloth.remnants().stream()
                .map(it -> List.of(Math.min(it.widthMm(), it.heightMm()), Math.max(it.widthMm(), it.heightMm()))).toList();
    }

    private static List<List<Double>> places(PlannedCloth cloth) {
        return cloth.cuts().stream().sorted(Comparator.comparing(cut -> cut.piece().piece().id()))
                .map(cut -> List.of(cut.xMm(), cut.yMm())).toList();
    }

    /** Over a flaw at 40 to 44 are 40 mm, under it 56 of the 100: the piece of 50 fits under it alone, and the other above. */
    @Test
    void a_flaw_across_is_cut_off_above_and_below() {
        PlannedCloth cloth = planned(Cloths.onHand("c", 50, 100, false, new Flaw(Flaw.Run.ACROSS, 40, 4)), Cloths.piece("a", 50, 38),
                Cloths.piece("b", 50, 50));
        assertEquals(List.of(List.of(0.0, 0.0), List.of(0.0, 44.0)), places(cloth));
        // Under b 56 - 50 - 1 mm of the whole width; above, 40 - 38 - 1.
        assertEquals(List.of(List.of(0.0, 95.0, 50.0, 5.0), List.of(0.0, 39.0, 50.0, 1.0)), remnants(cloth));
        assertEquals(List.of(true, false), cloth.remnants().stream().map(Remnant::usable).toList());
    }

    /** Of 100 mm 56 lie to the right of the flaw, where the piece leaves least; what is left of the flaw is a remnant as it lies. */
    @Test
    void a_panel_nothing_is_cut_from_is_left_whole() {
        PlannedCloth cloth = planned(Cloths.onHand("c", 100, 30, false, new Flaw(Flaw.Run.DOWN, 40, 4)), Cloths.piece("a", 50, 30));
        assertEquals(List.of(List.of(44.0, 0.0)), places(cloth));
        assertEquals(List.of(List.of(0.0, 0.0, 40.0, 30.0), List.of(95.0, 0.0, 5.0, 30.0)), remnants(cloth));
        // The thread before the panel is drawn from the flaw, at 43; the other cut ends the piece, at 44 + 50.
        assertEquals(List.of(43.0, 94.0), cloth.edgeCuts().stream().map(EdgeCut::x1Mm).toList());
    }

    /** The same turned: of 100 mm 56 lie under the flaw; what is above it is a remnant. */
    @Test
    void a_panel_above_nothing_is_cut_from_is_left_whole() {
        PlannedCloth cloth = planned(Cloths.onHand("c", 30, 100, false, new Flaw(Flaw.Run.ACROSS, 40, 4)), Cloths.piece("a", 30, 50));
        assertEquals(List.of(List.of(0.0, 44.0)), places(cloth));
        assertEquals(List.of(List.of(0.0, 0.0, 30.0, 40.0), List.of(0.0, 95.0, 30.0, 5.0)), remnants(cloth));
    }

    /** Beside 50 x 40 a piece of 30 x 20 fills a cloth of 81 x 40 but for 19 mm above or below it. */
    @Test
    void what_a_piece_leaves_of_its_part_stays_in_one() {
        PlannedCloth cloth = planned(Cloths.onHand("c", 81, 40, false), Cloths.piece("a", 50, 40), Cloths.piece("b", 30, 20));
        assertEquals(List.of(List.of(19.0, 30.0)), sides(cloth));
        PlannedCloth turned = planned(Cloths.onHand("c", 40, 81, false), Cloths.piece("a", 40, 50), Cloths.piece("b", 20, 30));
        assertEquals(List.of(List.of(19.0, 30.0)), sides(turned));
    }

    /**
     * On 81 x 51 a strip of 81 x 10 leaves 81 x 40, 50 x 40 of that 30 x 40, and 20 x 30 of that a strip of 9 along one side and one of 9
     * along the rest of the other. The larger rectangle stays first: 9 x 40 is more than 9 x 30, so 9 x 20 is the rest.
     */
    @Test
    void of_two_strips_round_a_piece_the_larger_stays_whole() {
        PlannedCloth cloth = planned(Cloths.onHand("c", 81, 51, false), Cloths.piece("a", 50, 40), Cloths.piece("b", 20, 30),
                Cloths.piece("c", 81, 10));
        assertEquals(List.of(List.of(9.0, 40.0), List.of(9.0, 20.0)), sides(cloth));
        PlannedCloth turned = planned(Cloths.onHand("c", 51, 81, false), Cloths.piece("a", 40, 50), Cloths.piece("b", 30, 20),
                Cloths.piece("c", 10, 81));
        assertEquals(List.of(List.of(9.0, 40.0), List.of(9.0, 20.0)), sides(turned));
    }

    /**
     * On 300 x 51 a, 50 x 51, stands beside b, 30 x 10, over c, 20 x 30, and 218 x 51 stay whole beside them. Remnants are worth keeping
     * from 20 mm on, so nothing is cut off below b and c together, and c lies in 30 x 40: the strip beside it is 9 x 40, the one below it
     * would be 30 x 9. So the one beside it is cut first, and turned by a quarter the one below.
     */
    @Test
    void of_two_strips_round_a_piece_inside_a_block_the_larger_stays_whole() {
        PlannedCloth cloth = planned(20, Cloths.onHand("c", 300, 51, false), Cloths.piece("a", 50, 51), Cloths.piece("b", 30, 10),
                Cloths.piece("c", 20, 30));
        assertEquals(List.of(List.of(82.0, 0.0, 218.0, 51.0), List.of(72.0, 11.0, 9.0, 40.0), List.of(51.0, 42.0, 20.0, 9.0)),
                remnants(cloth));
        PlannedCloth turned = planned(20, Cloths.onHand("c", 51, 300, false), Cloths.piece("a", 51, 50), Cloths.piece("b", 10, 30),
                Cloths.piece("c", 30, 20));
        assertEquals(List.of(List.of(0.0, 82.0, 51.0, 218.0), List.of(11.0, 72.0, 40.0, 9.0), List.of(42.0, 51.0, 9.0, 20.0)),
                remnants(turned));
    }

    private static List<String> order(PlannedCloth cloth) {
        return cloth.cuts().stream().map(cut -> cut.piece().piece().id()).toList();
    }

    /**
     * a, 20 x 20, over b, 20 x 30, is 51 high, as c is, which stands beside them: the cut between sets c free, and a and b are still one.
     * Is c 1 mm lower, a cut is wanted for it too, and the parts are taken up from the left. The same turned by a quarter.
     */
    @Test
    void what_a_cut_makes_a_piece_comes_off_before_the_other_part_is_cut_up() {
        Piece a = Cloths.piece("a", 20, 20);
        assertEquals(List.of("c", "a", "b"),
                order(planned(Cloths.onHand("c", 300, 51, false), a, Cloths.piece("b", 20, 30), Cloths.piece("c", 40, 51))));
        assertEquals(List.of("a", "b", "c"),
                order(planned(Cloths.onHand("c", 300, 51, false), a, Cloths.piece("b", 20, 30), Cloths.piece("c", 40, 50))));
        assertEquals(List.of("c", "a", "b"),
                order(planned(Cloths.onHand("c", 51, 300, false), a, Cloths.piece("b", 30, 20), Cloths.piece("c", 51, 40))));
        assertEquals(List.of("a", "b", "c"),
                order(planned(Cloths.onHand("c", 51, 300, false), a, Cloths.piece("b", 30, 20), Cloths.piece("c", 50, 40))));
    }

    /** 50 + 1 + 50 are 101: a ten-thousandth of a thousandth more is no strip to cut off. */
    @Test
    void a_hair_is_not_cut_off() {
        PlannedCloth high = planned(Cloths.onHand("c", 50, 101.0000001, false), Cloths.piece("a", 50, 50), Cloths.piece("b", 50, 50));
        assertEquals(List.of(50.0), high.edgeCuts().stream().map(EdgeCut::y1Mm).toList());
        assertEquals(List.of(), high.remnants());
        PlannedCloth wide = planned(Cloths.onHand("c", 101.0000001, 50, false), Cloths.piece("a", 50, 50), Cloths.piece("b", 50, 50));
        assertEquals(List.of(50.0), wide.edgeCuts().stream().map(EdgeCut::x1Mm).toList());
        assertEquals(List.of(), wide.remnants());
    }

    /** The last bits of doubles are neither a strip to cut off nor a remnant. */
    @Test
    void a_part_as_narrow_as_rounding_is_none() {
        double hair = Stock.SLACK_MM;
        assertEquals(List.of(false, false, true), Stream.of(new CutOrder.Region(0, 0, hair, 9), new CutOrder.Region(0, 0, 9, hair),
                new CutOrder.Region(0, 0, 2 * hair, 2 * hair)).map(CutOrder.Region::exists).toList());
        assertEquals(List.of(true, false, false), Stream.of(new CutOrder.Region(0, 0, hair, hair),
                new CutOrder.Region(0, 0, 2 * hair, 0), new CutOrder.Region(0, 0, 0, 2 * hair))
                .map(region -> region.is(EdgeCut.Run.DOWN, 0) && region.is(EdgeCut.Run.ACROSS, 0)).toList());
    }
}
