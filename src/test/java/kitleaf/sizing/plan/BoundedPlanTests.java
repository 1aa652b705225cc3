package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import kitleaf.basket.Basket;
import kitleaf.basket.ClothCut;
import kitleaf.basket.ClothOnHand;
import kitleaf.basket.ClothSupply;
import kitleaf.basket.Cutting;
import kitleaf.basket.Piece;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.cutting.Patience;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Plans for more pieces than can be tried through. */
class BoundedPlanTests {

    private static final Cutting CUTTING = new Cutting(3, 50);

    private static List<ClothCut> shop() {
        return List.of(Cloths.cut("half", 1380, 460, "25"), Cloths.cut("quarter", 690, 460, "14"), Cloths.cut("eighth", 330, 460, "8"));
    }

    private static List<Piece> pieces(Random random, int number) {
        return IntStream.range(0, number).mapToObj(i -> Cloths.piece("p" + i, 60 + random.nextInt(260), 60 + random.nextInt(260))).toList();
    }

    private static ClothSupply supply(Random random, int cloths, double shareOfArea, List<Piece> pieces) {
        double area = pieces.stream().mapToDouble(piece -> piece.stitches().cells()).sum() * shareOfArea / Math.max(1, cloths);
        List<ClothOnHand> onHand = IntStream.range(0, cloths).mapToObj(i -> {
            double width = Math.sqrt(area) * (0.7 + random.nextDouble());
            return Cloths.onHand("c" + i, Math.max(20, width), Math.max(20, area / width), random.nextBoolean());
        }).toList();
        return new ClothSupply(onHand, shop(), true, CUTTING);
    }

    private static List<Group> groups(Basket basket) {
        List<Wanted> wanted = Reckoning.of(basket).pieces().stream().map(piece -> Wanted.of(piece, 1)).toList();
        return Grouping.of(basket.clothSupply(), wanted);
    }

    @Property(tries = 25, seed = "20270109")
    void many_pieces_can_be_cut_as_planned(@ForAll long seed, @ForAll @IntRange(min = 13, max = 40) int number, @ForAll @IntRange(max = 3) int cloths) {
        Random random = new Random(seed);
        List<Piece> pieces = pieces(random, number);
        ClothPlan plan = Cloths.plan(supply(random, cloths, 0.5 + random.nextDouble(), pieces), pieces);
        CuttingTable table = new CuttingTable(4, 4);
        plan.cloths().forEach(table::cutsUp);
        plan.cloths().forEach(CuttingTable::numbersRun);
        List<String> placed = new ArrayList<>();
        plan.cloths().forEach(cloth -> cloth.cuts().forEach(cut -> placed.add(cut.piece().piece().id())));
        // Each of these fits on a half when nothing else does.
        assertEquals(pieces.stream().map(Piece::id).sorted().toList(), placed.stream().sorted().toList());
    }

    @Property(tries = 80, seed = "20270110")
    void what_it_says_no_plan_can_pass_the_best_plan_does_not(@ForAll long seed, @ForAll @IntRange(min = 1, max = 7) int number,
                                                               @ForAll @IntRange(max = 3) int cloths) {
        Random random = new Random(seed);
        List<Piece> pieces = pieces(random, number);
        ClothSupply supply = supply(random, cloths, 0.5 + random.nextDouble() * 1.5, pieces);
        for (Group group : groups(Cloths.basket(supply, pieces))) {
            Draft best = ExactPlan.of(group, group.numbers(), IntStream.range(0, group.onHand().size()).boxed().toList(),
                    new Patience(Long.MAX_VALUE)).orElseThrow();
            Proof proof = BoundedPlan.of(group, new Patience(Long.MAX_VALUE)).proof();
            assertTrue(proof.leastCost() <= best.cost() + 1e-6, () -> proof + " but " + best.cost());
            assertTrue(proof.cost() >= best.cost() - 1e-6, () -> proof + " but " + best.cost());
            // The other bounds are for plans that buy for no more than this one.
            assertTrue(proof.fewestCloths() <= best.outcome().cloths() || best.cost() > proof.cost() + 1e-6, () -> proof + " but " + best.outcome());
            assertTrue(proof.largestRemnantMm2() >= best.outcome().largestMm2() - 1 || best.outcome().cloths() != proof.cloths(),
                    () -> proof + " but " + best.outcome());
            if (proof.optimal()) {
                assertEquals(best.cost(), proof.cost(), 1e-6);
                assertEquals(best.outcome().cloths(), proof.cloths());
                assertEquals(best.outcome().largestMm2(), proof.remnantMm2(), 1);
            }
        }
    }

    @Test
    void the_same_pieces_are_always_planned_the_same() {
        List<Piece> pieces = pieces(new Random(4), 30);
        ClothSupply supply = supply(new Random(5), 2, 0.8, pieces);
        assertEquals(Cloths.plan(supply, pieces).toString(), Cloths.plan(supply, pieces).toString());
    }

    @Test
    void plans_of_few_steps_are_the_same_at_every_run_and_of_more_steps_no_worse() {
        List<Piece> pieces = pieces(new Random(8), 30);
        Basket basket = Cloths.basket(supply(new Random(9), 2, 0.8, pieces), pieces);
        double last = Double.POSITIVE_INFINITY;
        for (long steps : new long[] {0, 300, 5_000, 100_000, 2_000_000}) {
            ClothPlan plan = Reckoning.of(basket, steps).clothPlan();
            assertEquals(plan.toString(), Reckoning.of(basket, steps).clothPlan().toString(), steps + " steps");
            double cost = plan.cost().map(price -> price.amount().doubleValue()).orElse(0.0);
            assertTrue(cost <= last, steps + " steps: " + cost + " after " + last);
            last = cost;
        }
    }

    @Test
    void when_steps_run_out_it_says_so_and_still_places_every_piece() {
        List<Piece> pieces = pieces(new Random(6), 40);
        ClothSupply supply = supply(new Random(7), 2, 0.8, pieces);
        ClothPlan plan = Reckoning.of(Cloths.basket(supply, pieces), 0).clothPlan();
        assertTrue(plan.cloths().stream().allMatch(cloth -> cloth.proof().cutShort()));
        assertFalse(plan.optimal());
        assertEquals(40, plan.cloths().stream().mapToInt(cloth -> cloth.cuts().size()).sum());
        plan.cloths().forEach(new CuttingTable(4, 4)::cutsUp);
    }

    /** 24 pieces of 100 x 100 with a kerf of 4 on 620 x 412: six by four of them and every kerf, exactly. */
    @Test
    void a_cloth_of_many_like_pieces_is_filled_to_the_last_thread_with_proof() {
        List<Piece> pieces = IntStream.range(0, 24).mapToObj(i -> Cloths.piece("p" + i, 100, 100)).toList();
        ClothPlan plan = Cloths.plan(new ClothSupply(List.of(Cloths.onHand("c", 620, 412, false)), shop(), true, CUTTING), pieces);
        assertEquals(24, plan.cloths().get(0).cuts().size());
        assertTrue(plan.optimal());
    }
}
