package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitleaf.basket.Piece;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.cloth.Cutting;
import kitleaf.sizing.plan.search.Patience;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plans for more pieces than can be tried through. */
class QuickPlanTests {

    /** More steps than most of these take. */
    private static final long LONG = 20_000_000;

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

    @Property(tries = 12, seed = "20270109")
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

    /** The exact plan is found by other ideas: if this one were ever better, one of them would be wrong. */
    @Property(tries = 80, seed = "20270110")
    void it_is_never_better_than_the_exact_plan_and_claims_no_proof(@ForAll long seed, @ForAll @IntRange(min = 1, max = 7) int number,
                                                                    @ForAll @IntRange(max = 3) int cloths) {
        Random random = new Random(seed);
        List<Piece> pieces = pieces(random, number);
        for (Group group : Cloths.groups(supply(random, cloths, 0.5 + random.nextDouble() * 1.5, pieces), pieces)) {
            Draft exact = ExactPlan.of(group, new Patience(Long.MAX_VALUE)).orElseThrow();
            Draft quick = QuickPlan.of(group, new Patience(LONG));
            assertFalse(quick.betterThan(exact), () -> quick.proof() + " but " + exact.proof());
            assertTrue(exact.proof().optimal());
            assertFalse(quick.proof().optimal());
        }
    }

    /** A quarter of the cloth wasted is what a child with scissors does (common practice, no source); the last cut may hold a piece alone. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void little_of_what_is_bought_is_wasted(int seed) {
        List<Piece> pieces = pieces(new Random(seed), 30);
        Group group = Cloths.groups(new ClothSupply(List.of(), shop(), true, CUTTING), pieces).get(0);
        DoubleSummaryStatistics boughtMm2 = QuickPlan.of(group, new Patience(LONG)).bought().stream()
                .mapToDouble(load -> load.filled().stock().areaMm2()).summaryStatistics();
        double piecesMm2 = pieces.stream().mapToDouble(piece -> piece.stitches().cells()).sum();
        assertTrue(piecesMm2 >= 0.75 * (boughtMm2.getSum() - boughtMm2.getMin()), piecesMm2 + " of " + boughtMm2);
    }

    @Test
    void the_same_pieces_are_always_planned_the_same() {
        List<Piece> pieces = pieces(new Random(4), 30);
        ClothSupply supply = supply(new Random(5), 2, 0.8, pieces);
        assertEquals(Cloths.plan(supply, pieces).toString(), Cloths.plan(supply, pieces).toString());
    }

    @Test
    void without_a_step_every_piece_has_cloth_all_the_same_and_more_steps_are_no_worse() {
        List<Piece> pieces = pieces(new Random(6), 40);
        Group group = Cloths.groups(supply(new Random(7), 2, 0.8, pieces), pieces).get(0);
        Draft last = QuickPlan.of(group, new Patience(0));
        assertEquals(40, Stream.concat(last.onHand().stream(), last.bought().stream()).mapToInt(Draft.Load::pieces).sum());
        for (long steps : new long[] {1_000, 100_000, LONG}) {
            Draft next = QuickPlan.of(group, new Patience(steps));
            assertTrue(next.cost() <= last.cost(), steps + " steps: " + next.proof() + " after " + last.proof());
            last = next;
        }
    }

    @Test
    void a_plan_for_many_pieces_is_not_said_to_be_proved() {
        List<Piece> pieces = pieces(new Random(6), 40);
        assertFalse(Cloths.plan(supply(new Random(7), 2, 0.8, pieces), pieces).optimal());
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
