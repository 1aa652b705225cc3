package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import kitleaf.basket.Piece;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.Flaw;
import kitleaf.sizing.plan.search.Patience;
import org.junit.jupiter.api.Test;

/**
 * An exact plan is found with patience to the last step or not at all, wherever it ends. A step is a part of a selection that is looked
 * at: one piece is two selections, nothing and it, with one part and two.
 */
class ExactPlanTests {

    private static final Piece PIECE = Cloths.piece("a", 50, 50);

    private static Group group(List<ClothOnHand> onHand, List<ClothCut> shop, Piece... pieces) {
        return Cloths.groups(Cloths.supply(onHand, shop), List.of(pieces)).get(0);
    }

    /** The least patience with which the plan is found. */
    private static long steps(Group group) {
        return LongStream.range(0, 100).filter(steps -> ExactPlan.of(group, new Patience(steps)).isPresent()).findFirst().orElseThrow();
    }

    /** What the cloth leaves: 3, one for each part and one for the rest it is cut from; the shop: 1 and 1; sharing: 1 and 2. */
    @Test
    void a_piece_from_a_cloth_on_hand_takes_eight_steps() {
        assertEquals(3 + 2 + 3, steps(group(List.of(Cloths.onHand("c", 60, 60, false)), List.of(), PIECE)));
    }

    /** The shop: 1 and 1; what the cut leaves: 3. */
    @Test
    void a_piece_that_is_bought_takes_five_steps() {
        assertEquals(2 + 3, steps(group(List.of(), List.of(Cloths.cut("s", 60, 60, "4")), PIECE)));
    }

    @Test
    void a_piece_no_cut_holds_takes_two_steps() {
        assertEquals(2, steps(group(List.of(), List.of(Cloths.cut("s", 40, 40, "4")), PIECE)));
    }

    /** Left and right of the flaw are 60 x 60 each: 3 steps for each, and 1 and 2 to share selections out between them. */
    @Test
    void a_piece_from_a_cloth_with_two_panels_takes_nine_steps() {
        Group group = group(List.of(Cloths.onHand("c", 124, 60, false, new Flaw(Flaw.Run.DOWN, 60, 4))), List.of(), PIECE);
        assertEquals(3 + 3 + 3, LongStream.range(0, 100).filter(steps -> filled(group, 1, steps).isPresent()).findFirst().orElseThrow());
    }

    private static Optional<Filled> filled(Group group, int number, long steps) {
        return StockTable.filled(group, group.onHand().get(0), List.of(number), new Patience(steps));
    }

    /** 50 + 1 + 50 are more than 60. */
    @Test
    void a_cloth_is_not_filled_with_what_does_not_fit() {
        Group group = group(List.of(Cloths.onHand("c", 60, 60, false)), List.of(), PIECE, Cloths.piece("b", 50, 50));
        assertEquals(List.of(true, false), List.of(filled(group, 1, 100).isPresent(), filled(group, 2, 100).isPresent()));
    }
}
