package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.concurrent.FutureTask;
import java.util.stream.IntStream;
import kitleaf.basket.Piece;
import kitleaf.basket.cloth.ClothSupply;
import org.junit.jupiter.api.Test;

/** Baskets far larger than a circle's: a plan for them is found all the same. */
class LargePlanTests {

    /** A hundred kilobytes hold a call for each of some hundred pieces, not of some thousand. */
    private static final long SMALL_STACK = 100_000;

    private static ClothPlan onSmallStack(ClothSupply supply, List<Piece> pieces) throws Exception {
        FutureTask<ClothPlan> planning = new FutureTask<>(() -> Cloths.plan(supply, pieces));
        new Thread(null, planning, "small stack", SMALL_STACK).start();
        return planning.get();
    }

    private static void allCut(ClothPlan plan, int pieces) {
        assertEquals(List.of(), plan.unplaced());
        assertEquals(pieces, plan.cloths().stream().mapToInt(cloth -> cloth.cuts().size()).sum());
        plan.cloths().forEach(cloth -> assertEquals(pieces - 1, cloth.steps().size(), "every cut parts two pieces, and nothing is left"));
    }

    /** 1,000 pieces of 9 mm and a kerf of 1 mm fill a strip of 9,999 mm: few enough selections for the exact plan. */
    @Test
    void a_thousand_like_pieces_in_one_strip() throws Exception {
        List<Piece> pieces = IntStream.range(0, 1000).mapToObj(i -> Cloths.piece("p" + i, 9, 40)).toList();
        allCut(onSmallStack(Cloths.supply(List.of(Cloths.onHand("bolt", 9_999, 40, false)), List.of()), pieces), 1000);
    }

    /** 2,500 pieces of 2 to 6 mm by fives, 5 mm with the kerf on average, fill a strip of 12,499 mm. */
    @Test
    void two_and_a_half_thousand_pieces_in_one_strip() throws Exception {
        List<Piece> pieces = IntStream.range(0, 2500).mapToObj(i -> Cloths.piece("p" + i, 2 + i % 5, 40)).toList();
        allCut(onSmallStack(Cloths.supply(List.of(Cloths.onHand("bolt", 12_499, 40, false)), List.of()), pieces), 2500);
    }
}
