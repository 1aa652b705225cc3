package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Cutting;
import kitleaf.basket.cloth.Flaw;
import kitleaf.basket.cloth.Shrink;
import org.junit.jupiter.api.Test;

/** Plans worked by hand. A cut takes 1 mm away, if nothing else is said. */
class ClothPlanTests {

    private static final List<ClothCut> NO_SHOP = List.of();

    private static Cloth linen(Count count, Cloth.WarpRun warp) {
        return new Cloth(Optional.empty(), Cloth.Kind.LINEN, count, 1, Shrink.NONE, Cloth.Counted.AFTER, warp, Cloth.Dyeing.NONE, false);
    }

    private static List<String> ids(PlannedCloth cloth) {
        return cloth.cuts().stream().map(cut -> cut.piece().piece().id()).toList();
    }

    /** 100 + 1 + 100 is 201: a cloth of 200 has no room for the kerf, one of 201 has. */
    @Test
    void a_cut_takes_a_thread_away() {
        ClothSupply narrow = Cloths.supply(List.of(Cloths.onHand("c", 200, 50, false)), NO_SHOP);
        assertEquals(1, Cloths.plan(narrow, Cloths.piece("a", 100, 50), Cloths.piece("b", 100, 50)).unplaced().size());
        ClothSupply wide = Cloths.supply(List.of(Cloths.onHand("c", 201, 50, false)), NO_SHOP);
        PlannedCloth cloth = Cloths.plan(wide, Cloths.piece("a", 100, 50), Cloths.piece("b", 100, 50)).cloths().get(0);
        assertEquals(0, cloth.cuts().get(0).xMm());
        assertEquals(101, cloth.cuts().get(1).xMm(), 1e-9);
        assertEquals(1, cloth.edgeCuts().size());
        assertEquals(List.of(1, 2), cloth.steps().get(0).pieces().stream().map(PlannedCut::number).toList());
        assertEquals(100, cloth.edgeCuts().get(0).fromMm());
        assertTrue(cloth.remnants().isEmpty());
    }

    /** With 4 mm of fraying each way the two need 205. */
    @Test
    void what_frays_is_counted_in() {
        ClothSupply frays = new ClothSupply(List.of(Cloths.onHand("c", 204, 50, false)), NO_SHOP, true, new Cutting(4, 2));
        assertEquals(1, Cloths.plan(frays, Cloths.piece("a", 100, 50), Cloths.piece("b", 100, 50)).unplaced().size());
        ClothSupply enough = new ClothSupply(List.of(Cloths.onHand("c", 205, 50, false)), NO_SHOP, true, new Cutting(4, 2));
        assertTrue(Cloths.plan(enough, Cloths.piece("a", 100, 50), Cloths.piece("b", 100, 50)).unplaced().isEmpty());
    }

    @Test
    void a_piece_is_turned_only_where_that_is_allowed() {
        ClothSupply grain = Cloths.supply(List.of(Cloths.onHand("c", 100, 50, false)), NO_SHOP);
        assertEquals(1, Cloths.plan(grain, Cloths.piece("a", 40, 90)).unplaced().size());
        ClothSupply any = Cloths.supply(List.of(Cloths.onHand("c", 100, 50, true)), NO_SHOP);
        PlannedCut cut = Cloths.plan(any, Cloths.piece("a", 40, 90)).cloths().get(0).cuts().get(0);
        assertTrue(cut.turned());
        assertFalse(cut.asAsked());
        assertEquals(90, cut.widthMm(), 1e-9);
        assertEquals(40, cut.heightMm(), 1e-9);
    }

    /**
     * Warp 25.4, weft 50.8 to the inch: a stitch is 1 mm across the warp and 1/2 mm along it. A chart of 80 x 40 is 80 x 20 mm
     * upright; turned, its width lies along the warp: 80 stitches of 1/2 mm by 40 of 1 mm, so 40 x 40 mm.
     */
    @Test
    void a_turned_piece_is_reckoned_anew() {
        Count uneven = new Count(25.4, 50.8);
        ClothOnHand square = new ClothOnHand("c", Cloth.Kind.LINEN, uneven, 45, 45, Cloth.WarpRun.DOWN, Optional.empty(), true, List.of());
        Piece piece = Cloths.piece("a", 80, 40, linen(uneven, Cloth.WarpRun.DOWN), Progress.NONE);
        PlannedCut cut = Cloths.plan(Cloths.supply(List.of(square), NO_SHOP), piece).cloths().get(0).cuts().get(0);
        assertTrue(cut.turned());
        assertEquals(Cloth.WarpRun.ACROSS, cut.warp());
        assertEquals(40, cut.widthMm(), 1e-9);
        assertEquals(40, cut.heightMm(), 1e-9);
    }

    /** Its warp across, a cloth of 90 x 40 is one of 40 x 90 laid over: an upright piece of 40 x 90 lies on its side there. */
    @Test
    void a_cloth_written_with_its_warp_across_stays_as_it_is_written() {
        ClothOnHand cloth = new ClothOnHand("c", Cloth.Kind.LINEN, Cloths.FINE, 95, 40, Cloth.WarpRun.ACROSS, Optional.empty(), false, List.of());
        PlannedCloth planned = Cloths.plan(Cloths.supply(List.of(cloth), NO_SHOP), Cloths.piece("a", 40, 90)).cloths().get(0);
        PlannedCut cut = planned.cuts().get(0);
        assertTrue(cut.turned());
        assertTrue(cut.asAsked());
        assertEquals(90, cut.widthMm(), 1e-9);
        EdgeCut edge = planned.edgeCuts().get(0);
        assertEquals(EdgeCut.Run.DOWN, edge.run());
        assertEquals(90, edge.x1Mm(), 1e-9);
        assertEquals(40, edge.y2Mm(), 1e-9);
        assertEquals(4, planned.remnants().get(0).widthMm(), 1e-9);
    }

    @Test
    void a_piece_that_asks_for_its_warp_across_lies_on_its_side() {
        Piece runner = Cloths.piece("a", 90, 40, linen(Cloths.FINE, Cloth.WarpRun.ACROSS), Progress.NONE);
        PlannedCut cut = Cloths.plan(Cloths.supply(List.of(Cloths.onHand("c", 45, 95, false)), NO_SHOP), runner).cloths().get(0).cuts().get(0);
        assertTrue(cut.turned());
        assertTrue(cut.asAsked());
        assertEquals(40, cut.widthMm(), 1e-9);
        assertEquals(90, cut.heightMm(), 1e-9);
    }

    /** Between flaws at 40-44 and from 60 on, 16 mm stay: a piece of 20 fits at the left only. */
    @Test
    void no_piece_lies_on_a_flaw() {
        ClothOnHand flawed = Cloths.onHand("c", 100, 30, false, new Flaw(Flaw.Run.DOWN, 40, 4), new Flaw(Flaw.Run.DOWN, 60, 40));
        ClothPlan plan = Cloths.plan(Cloths.supply(List.of(flawed), NO_SHOP), Cloths.piece("a", 30, 20), Cloths.piece("b", 15, 20), Cloths.piece("d", 20, 20));
        assertEquals(1, plan.unplaced().size());
        PlannedCloth cloth = plan.cloths().get(0);
        new CuttingTable(1, 1).cutsUp(cloth);
        assertEquals(2, cloth.cuts().size());
        // The two that leave most: 30 at the left, and 15 between the flaws.
        assertEquals(List.of(0.0, 44.0), cloth.cuts().stream().map(PlannedCut::xMm).sorted().toList());
    }

    @Test
    void the_small_cloth_is_cut_so_that_the_large_one_stays_whole() {
        ClothPlan plan = Cloths.plan(Cloths.supply(List.of(Cloths.onHand("large", 500, 500, false), Cloths.onHand("small", 60, 60, false)), NO_SHOP),
                Cloths.piece("a", 50, 50));
        assertEquals("small", plan.cloths().get(0).name());
        assertEquals(List.of("large"), plan.untouched().stream().map(ClothOnHand::name).toList());
    }

    @Test
    void one_large_cloth_is_opened_rather_than_two_small_ones() {
        ClothPlan plan = Cloths.plan(Cloths.supply(List.of(Cloths.onHand("small", 60, 60, false), Cloths.onHand("small", 60, 60, false),
                Cloths.onHand("large", 110, 60, false)), NO_SHOP), Cloths.piece("a", 50, 50), Cloths.piece("b", 50, 50));
        assertEquals(List.of("large"), plan.cloths().stream().map(PlannedCloth::name).toList());
    }

    @Test
    void a_piece_that_names_its_cloth_takes_no_other_and_one_that_does_not_takes_any() {
        ClothSupply supply = Cloths.supply(List.of(Cloths.onHand("Fog", 60, 60, false), Cloths.onHand("Tar", 60, 60, false)), NO_SHOP);
        ClothPlan plan = Cloths.plan(supply, Cloths.piece("any", 50, 50), Cloths.piece("tar", 50, 50, Optional.of(" tar")),
                Cloths.piece("slate", 10, 10, Optional.of("Slate")));
        assertEquals(List.of("any"), ids(plan.cloths().get(0)));
        assertEquals("Tar", plan.cloths().get(1).name());
        assertEquals(List.of("tar"), ids(plan.cloths().get(1)));
        assertEquals(List.of("slate"), plan.unplaced().stream().map(piece -> piece.piece().id()).toList());
    }

    @Test
    void a_cloth_of_the_name_but_another_count_is_told_of_and_not_cut() {
        ClothOnHand finer = new ClothOnHand("Fog", Cloth.Kind.LINEN, new Count(35, 36), 500, 500, Cloth.WarpRun.DOWN, Optional.empty(), false, List.of());
        ClothPlan plan = Cloths.plan(Cloths.supply(List.of(finer), NO_SHOP), Cloths.piece("a", 50, 50, Optional.of("Fog")));
        assertTrue(plan.cloths().isEmpty());
        assertEquals("a", plan.nearMisses().get(0).piece().piece().id());
        assertEquals(finer, plan.nearMisses().get(0).cloth());
    }

    @Test
    void what_is_begun_or_cut_is_not_planned() {
        Cloth cut = new Cloth(Optional.empty(), Cloth.Kind.LINEN, Cloths.FINE, 1, Shrink.NONE, Cloth.Counted.AFTER,
                Cloth.WarpRun.DOWN, Cloth.Dyeing.NONE, true);
        Progress begun = new Progress(Optional.of(LocalDate.of(2026, 5, 1)), Optional.empty(), Optional.empty(), List.of());
        ClothPlan plan = Cloths.plan(Cloths.supply(List.of(Cloths.onHand("c", 500, 500, false)), NO_SHOP), Cloths.piece("cut", 50, 50, cut, Progress.NONE),
                Cloths.piece("begun", 50, 50, linen(Cloths.FINE, Cloth.WarpRun.DOWN), begun), Cloths.piece("new", 50, 50));
        assertEquals(List.of("new"), ids(plan.cloths().get(0)));
        assertEquals(1, plan.cloths().size());
    }

    /** Two of 100 x 100 and one of 40 x 40: a large cut for 9 holds all three, small ones at 4 hold one each. */
    @Test
    void the_cheapest_shop_cuts_are_bought_of_mixed_sizes() {
        List<ClothCut> shop = List.of(Cloths.cut("large", 241, 100, "9"), Cloths.cut("small", 100, 100, "4"), Cloths.cut("scrap", 40, 40, "0.50"));
        ClothPlan plan = Cloths.plan(Cloths.supply(List.of(), shop), Cloths.piece("a", 100, 100), Cloths.piece("b", 100, 100), Cloths.piece("c", 40, 40));
        assertEquals(List.of("small", "scrap"), plan.buy().stream().map(buy -> buy.cut().name()).sorted(Comparator.reverseOrder()).toList());
        assertEquals(List.of(1, 2), plan.buy().stream().map(Purchase::number).sorted().toList());
        assertEquals(8.5, plan.cloths().get(0).proof().cost(), 1e-9);
        List<ClothCut> cheaper = List.of(Cloths.cut("large", 242, 100, "8"), shop.get(1), shop.get(2));
        assertEquals(List.of("large"), Cloths.plan(Cloths.supply(List.of(), cheaper), Cloths.piece("a", 100, 100), Cloths.piece("b", 100, 100), Cloths.piece("c", 40, 40))
                .buy().stream().map(buy -> buy.cut().name()).toList());
    }

    @Test
    void without_prices_the_least_cloth_is_bought() {
        List<ClothCut> shop = List.of(Cloths.cut("large", 300, 300, ""), Cloths.cut("small", 120, 120, ""));
        assertEquals("small", Cloths.plan(Cloths.supply(List.of(), shop), Cloths.piece("a", 100, 100)).buy().get(0).cut().name());
    }

    @Test
    void pieces_that_name_two_cloths_share_no_shop_cut() {
        List<ClothCut> shop = List.of(Cloths.cut("large", 300, 300, "5"));
        ClothPlan plan = Cloths.plan(Cloths.supply(List.of(), shop), Cloths.piece("a", 50, 50, Optional.of("Fog")), Cloths.piece("b", 50, 50, Optional.of("Tar")),
                Cloths.piece("c", 50, 50));
        assertEquals(2, plan.buy().stream().mapToInt(Purchase::number).sum());
        assertEquals(List.of(Optional.of("Fog"), Optional.of("Tar")), plan.buy().stream().map(Purchase::cloth).sorted(Comparator.comparing(Optional::get)).toList());
    }

    @Test
    void an_empty_basket_has_an_empty_plan() {
        assertTrue(Cloths.plan(Cloths.supply(List.of(), NO_SHOP)).isEmpty());
    }
}
