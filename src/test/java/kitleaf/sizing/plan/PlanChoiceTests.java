package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import kitleaf.basket.Piece;
import kitleaf.basket.Price;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Cutting;
import kitleaf.basket.cloth.Flaw;
import org.junit.jupiter.api.Test;

/** Which of several plans is taken, by hand. A cut takes 1 mm away, and remnants from 2 mm on are kept. */
class PlanChoiceTests {

    private static ClothPlan onHand(List<ClothOnHand> cloths, Piece... pieces) {
        return Cloths.plan(Cloths.supply(cloths, List.of()), pieces);
    }

    private static ClothPlan bought(List<ClothCut> shop, Piece... pieces) {
        return Cloths.plan(Cloths.supply(List.of(), shop), pieces);
    }

    private static List<String> ids(PlannedCloth cloth) {
        return cloth.cuts().stream().map(cut -> cut.piece().piece().id()).toList();
    }

    /** What is bought, such as "2 small". */
    private static List<String> buys(ClothPlan plan) {
        return plan.buy().stream().map(buy -> buy.number() + " " + buy.cut().name()).toList();
    }

    /** Beside 50 of 100 mm and the 1 mm of the cut 49 stay, over the whole 50 of the other side: 2450. */
    @Test
    void what_is_left_beside_and_below_a_piece_is_reckoned_without_the_cut() {
        assertEquals(2450, onHand(List.of(Cloths.onHand("c", 100, 50, false)), Cloths.piece("a", 50, 50)).cloths().get(0).proof()
                .remnantMm2());
        assertEquals(2450, onHand(List.of(Cloths.onHand("c", 50, 100, false)), Cloths.piece("a", 50, 50)).cloths().get(0).proof()
                .remnantMm2());
    }

    /** Of 104 x 115 a row of 104 x 10 and a column of 10 x 104 below it leave 93 x 104. */
    @Test
    void a_row_and_a_column_leave_the_rectangle_between_them() {
        ClothPlan plan = onHand(List.of(Cloths.onHand("c", 104, 115, false)), Cloths.piece("row", 104, 10),
                Cloths.piece("column", 10, 104));
        assertEquals(93 * 104, plan.cloths().get(0).proof().remnantMm2());
    }

    private static List<Double> largest(double usableMm, double width, double height, Piece... pieces) {
        ClothSupply supply = new ClothSupply(List.of(Cloths.onHand("c", width, height, false)), List.of(), true, new Cutting(0, usableMm));
        Remnant largest = Cloths.plan(supply, pieces).cloths().get(0).remnants().get(0);
        return List.of(largest.widthMm(), largest.heightMm());
    }

    /** Two of 50 x 20 on 200 x 41 stand one below the other, 50 wide, not beside one another, 101 wide; and turned by a quarter. */
    @Test
    void what_is_cut_off_is_as_narrow_as_it_can_be() {
        assertEquals(List.of(149.0, 41.0), largest(2, 200, 41, Cloths.piece("a", 50, 20), Cloths.piece("b", 50, 20)));
        assertEquals(List.of(41.0, 149.0), largest(2, 41, 200, Cloths.piece("a", 20, 50), Cloths.piece("b", 20, 50)));
    }

    /** From 14 x 49 on 40 x 100 stay 25 x 100 or 40 x 50: smaller, and alone wide enough where remnants are kept from 30 mm on. */
    @Test
    void what_is_worth_keeping_stays_before_what_is_larger() {
        assertEquals(List.of(40.0, 50.0), largest(30, 40, 100, Cloths.piece("a", 14, 49)));
        assertEquals(List.of(25.0, 100.0), largest(25, 40, 100, Cloths.piece("a", 14, 49)));
    }

    /** From 40 x 30 on 100 x 50 stay 59 x 50 or 100 x 19, all of less than 200 mm: the larger stays whole all the same. */
    @Test
    void what_is_not_worth_keeping_stays_as_large_as_it_can() {
        assertEquals(List.of(59.0, 50.0), largest(200, 100, 50, Cloths.piece("a", 40, 30)));
        assertEquals(List.of(50.0, 59.0), largest(200, 50, 100, Cloths.piece("a", 30, 40)));
    }

    /** Of three cloths the one of 60 x 60 is opened, and the largest rectangle is the one that stays whole: 300 x 200. */
    @Test
    void a_plan_tells_how_many_cloths_it_opens_and_the_largest_rectangle_left() {
        Proof proof = onHand(List.of(Cloths.onHand("low", 100, 90, false), Cloths.onHand("large", 300, 200, false),
                Cloths.onHand("small", 60, 60, false)), Cloths.piece("a", 50, 50)).cloths().get(0).proof();
        assertEquals(new Proof(true, 0, 1, 60_000), proof);
    }

    /** 60 x 60 holds a, 50 x 50, or b, 50 x 20, and one cut of the same size at 4 the other: b leaves 60 x 39, a only 60 x 9. */
    @Test
    void of_two_pieces_that_cost_the_same_the_one_that_leaves_more_is_cut_from_the_cloth_on_hand() {
        ClothPlan plan = Cloths.plan(Cloths.supply(List.of(Cloths.onHand("c", 60, 60, false)), List.of(Cloths.cut("s", 60, 60, "4"))),
                Cloths.piece("a", 50, 50), Cloths.piece("b", 50, 20));
        assertEquals(List.of(List.of("b"), List.of("a")), plan.cloths().stream().map(PlanChoiceTests::ids).toList());
        assertEquals(2340, plan.cloths().get(0).proof().remnantMm2());
    }

    /** b, 100 x 100, has to be bought, and its cut of 151 x 100 has room for a, 50 x 50: 50 + 1 + 100. */
    @Test
    void a_cloth_on_hand_stays_whole_where_what_is_bought_holds_all() {
        ClothPlan plan = Cloths.plan(Cloths.supply(List.of(Cloths.onHand("c", 60, 60, false)), List.of(Cloths.cut("s", 151, 100, "9"))),
                Cloths.piece("a", 50, 50), Cloths.piece("b", 100, 100));
        assertEquals(1, plan.cloths().size());
        assertEquals(1, plan.untouched().size());
        assertEquals(List.of("1 s"), buys(plan));
    }

    @Test
    void like_pieces_are_cut_in_the_order_of_the_cloths() {
        ClothPlan plan = onHand(List.of(Cloths.onHand("first", 60, 60, false), Cloths.onHand("second", 60, 60, false)),
                Cloths.piece("a", 50, 50), Cloths.piece("b", 50, 50));
        assertEquals(List.of(List.of("a"), List.of("b")), plan.cloths().stream().map(PlanChoiceTests::ids).toList());
    }

    @Test
    void the_cheaper_of_two_shop_cuts_is_bought_and_at_one_price_the_one_written_first() {
        Piece piece = Cloths.piece("a", 100, 100);
        List<ClothCut> shop = Arrays.asList(Cloths.cut("small", 120, 120, "4"), Cloths.cut("large", 300, 300, "9"));
        assertEquals(List.of("1 small"), buys(bought(shop, piece)));
        Collections.reverse(shop);
        assertEquals(List.of("1 small"), buys(bought(shop, piece)));
        assertEquals(List.of("1 one"), buys(bought(List.of(Cloths.cut("one", 120, 120, "4"), Cloths.cut("other", 110, 110, "4")), piece)));
    }

    /** Two small ones at 4 or one large one at 8, and two or one for nothing. */
    @Test
    void at_one_price_as_few_cuts_as_can_be_are_bought() {
        for (String[] prices : new String[][] {{"4", "8"}, {"0", "0"}}) {
            List<ClothCut> shop = Arrays.asList(Cloths.cut("small", 50, 50, prices[0]), Cloths.cut("large", 101, 50, prices[1]));
            assertEquals(List.of("1 large"), buys(bought(shop, Cloths.piece("a", 50, 50), Cloths.piece("b", 50, 50))));
            Collections.reverse(shop);
            assertEquals(List.of("1 large"), buys(bought(shop, Cloths.piece("a", 50, 50), Cloths.piece("b", 50, 50))));
        }
    }

    /**
     * Ten at 0.10 are as dear as one at 1.00, and ten at 1000.15 as one at 10001.50, though sums of doubles say they are cheaper, by
     * 1.1e-16 and 1.8e-12. A hundredth more is another price.
     */
    @Test
    void sums_of_prices_are_compared_as_coins() {
        Piece[] pieces = IntStream.range(0, 10).mapToObj(i -> Cloths.piece("p" + i, 20, 20)).toArray(Piece[]::new);
        for (String[] prices : new String[][] {{"0.10", "1.00"}, {"1000.15", "10001.50"}}) {
            assertEquals(List.of("1 large"), buys(bought(List.of(Cloths.cut("small", 20, 20, prices[0]),
                    Cloths.cut("large", 209, 20, prices[1])), pieces)));
            assertEquals(List.of("10 small"), buys(bought(List.of(Cloths.cut("small", 20, 20, prices[0]),
                    Cloths.cut("large", 209, 20, new BigDecimal(prices[1]).add(new BigDecimal("0.01")).toString())), pieces)));
        }
    }

    /** Fog alone is sold in the cut at 1, which has room for both: the piece that names no cloth has to take the one at 5. */
    @Test
    void a_piece_takes_no_cut_its_cloth_is_not_sold_in() {
        ClothCut fogs = new ClothCut("fogs", 120, 60, Cloth.WarpRun.DOWN, false, Optional.of(new Price(BigDecimal.ONE, "XTS")),
                Optional.of("Fog"), Optional.empty(), Optional.empty());
        ClothPlan plan = bought(List.of(fogs, Cloths.cut("any", 60, 60, "5")), Cloths.piece("f", 50, 50, Optional.of("Fog")),
                Cloths.piece("a", 50, 50));
        assertEquals(List.of("1 any", "1 fogs"), buys(plan).stream().sorted().toList());
        assertEquals(List.of("f"), plan.cloths().stream().filter(cloth -> cloth.name().equals("fogs")).flatMap(it -> ids(it).stream())
                .toList());
    }

    /** Two at 4 and one at 0.50. */
    @Test
    void what_is_bought_costs_its_number_of_times_its_price() {
        ClothPlan plan = bought(List.of(Cloths.cut("small", 100, 100, "4"), Cloths.cut("scrap", 40, 40, "0.50")),
                Cloths.piece("a", 100, 100), Cloths.piece("b", 100, 100), Cloths.piece("c", 40, 40));
        Purchase small = plan.buy().stream().filter(buy -> buy.number() == 2).findFirst().orElseThrow();
        assertEquals(Optional.of(new Price(new BigDecimal("8"), "XTS")), small.cost());
        assertEquals(Optional.of(new Price(new BigDecimal("8.50"), "XTS")), plan.cost());
        assertEquals(Optional.empty(), bought(List.of(Cloths.cut("small", 100, 100, "")), Cloths.piece("a", 100, 100)).cost());
    }

    @Test
    void a_plan_that_finds_no_cloth_says_so() {
        ClothPlan plan = bought(List.of(), Cloths.piece("a", 100, 100));
        assertFalse(plan.isEmpty());
        assertEquals(List.of(), plan.cloths());
        assertFalse(onHand(List.of(Cloths.onHand("c", 60, 60, false)), Cloths.piece("a", 50, 50)).isEmpty());
    }

    private static ClothOnHand coarse(String name) {
        return new ClothOnHand(name, Cloth.Kind.LINEN, new Count(20, 20), 500, 500, Cloth.WarpRun.DOWN, Optional.empty(), false, List.of());
    }

    @Test
    void a_cloth_of_another_count_is_told_of_only_to_a_piece_that_names_it_and_has_no_other_of_the_name() {
        assertEquals(List.of(), onHand(List.of(coarse("Fog")), Cloths.piece("a", 50, 50), Cloths.piece("b", 50, 50, Optional.of("Tar")))
                .nearMisses());
        assertEquals(List.of(),
                onHand(List.of(coarse("Fog"), Cloths.onHand("Fog", 20, 20, false)), Cloths.piece("a", 50, 50, Optional.of("Fog")))
                .nearMisses());
        assertEquals(1, onHand(List.of(coarse("Fog"), Cloths.onHand("Tar", 60, 60, false)), Cloths.piece("a", 50, 50, Optional.of("Fog")))
                .nearMisses().size());
    }

    @Test
    void nothing_is_cut_from_a_cloth_that_is_one_flaw() {
        ClothOnHand stained = Cloths.onHand("c", 100, 30, false, new Flaw(Flaw.Run.DOWN, 0, 100));
        ClothPlan plan = onHand(List.of(stained), Cloths.piece("a", 50, 30));
        assertEquals(List.of(1, 0, 1), List.of(plan.unplaced().size(), plan.cloths().size(), plan.untouched().size()));
    }

    /** 40 + 1 + 59 are 100: a flaw of 1 mm goes with the one cut between them. */
    @Test
    void a_flaw_as_narrow_as_a_cut_goes_with_it() {
        ClothOnHand thread = Cloths.onHand("c", 100, 30, false, new Flaw(Flaw.Run.DOWN, 40, 1));
        ClothPlan plan = onHand(List.of(thread), Cloths.piece("a", 40, 30), Cloths.piece("b", 59, 30));
        assertTrue(plan.unplaced().isEmpty());
        assertEquals(1, plan.cloths().get(0).edgeCuts().size());
    }

    /** Up to the flaw at 60 the piece of 50 leaves 60 - 50 - 1, and nothing lies beyond a flaw that reaches the edge. */
    @Test
    void nothing_is_left_beyond_a_flaw_at_the_far_edge() {
        ClothOnHand flawed = Cloths.onHand("c", 100, 30, false, new Flaw(Flaw.Run.DOWN, 60, 40));
        assertEquals(List.of(new Remnant(51, 0, 9, 30, true)), onHand(List.of(flawed), Cloths.piece("a", 50, 30)).cloths().get(0)
                .remnants());
    }
}
