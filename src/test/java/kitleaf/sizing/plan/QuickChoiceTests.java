package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitleaf.basket.Piece;
import kitleaf.basket.Price;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.sizing.plan.search.Patience;
import org.junit.jupiter.api.Test;

/** What the quick plan tries so as to find a good one, on cases worked by hand where less would not do. A cut takes 1 mm away. */
class QuickChoiceTests {

    private static final List<ClothCut> NO_SHOP = List.of();

    private static Draft planned(List<ClothOnHand> onHand, List<ClothCut> shop, List<Piece> pieces) {
        return QuickPlan.of(Cloths.groups(Cloths.supply(onHand, shop), pieces).get(0), new Patience(20_000_000));
    }

    private static List<Piece> pieces(String id, int number, int width, int height) {
        return IntStream.range(0, number).mapToObj(i -> Cloths.piece(id + i, width, height)).toList();
    }

    private static List<ClothOnHand> cloths(String name, int number, double width, double height) {
        return Collections.nCopies(number, Cloths.onHand(name, width, height, false));
    }

    private static <T> List<T> all(Stream<List<T>> lists) {
        return lists.flatMap(List::stream).toList();
    }

    private static int left(Draft draft) {
        return IntStream.range(0, draft.group().kins().size()).map(draft::left).sum();
    }

    /** 2 x 2, 2 x 3 and 3 x 2 squares of 50 with the cuts between them, to the last thread. */
    @Test
    void what_lies_beside_and_below_a_piece_is_filled_to_the_last_thread() {
        assertEquals(0, left(planned(cloths("c", 1, 101, 101), NO_SHOP, pieces("p", 4, 50, 50))));
        assertEquals(0, left(planned(cloths("c", 1, 101, 152), NO_SHOP, pieces("p", 6, 50, 50))));
        assertEquals(0, left(planned(cloths("c", 1, 152, 101), NO_SHOP, pieces("p", 6, 50, 50))));
    }

    /** Each of 20 small cloths holds one of 20 squares, one large cloth all of them, 5 by 4: 254 x 203. */
    @Test
    void the_largest_cloth_is_tried_first_so_that_few_are_opened() {
        List<ClothOnHand> cloths = all(Stream.of(cloths("small", 10, 60, 60), cloths("large", 1, 254, 203), cloths("small", 10, 60, 60)));
        Outcome outcome = planned(cloths, NO_SHOP, pieces("p", 20, 50, 50)).outcome();
        assertEquals(1, outcome.cloths());
    }

    /**
     * Three cloths of 100 x 100 alone hold the pieces of 97 x 60, but one of 94 x 94 fills them better. So only where the twelve of those
     * lie on the twelve cloths of 95 x 95 already nothing is left.
     */
    @Test
    void the_smallest_cloths_are_tried_first_too_so_that_large_ones_are_free_for_long_pieces() {
        List<ClothOnHand> cloths = all(Stream.of(cloths("small", 6, 95, 95), cloths("large", 3, 100, 100), cloths("small", 6, 95, 95)));
        assertEquals(0, left(planned(cloths, NO_SHOP, all(Stream.of(pieces("square", 12, 94, 94), pieces("long", 3, 97, 60))))));
    }

    /**
     * As above 95 x 95 has to come before 100 x 100. Of two narrow cloths it is the larger that has to be first: 199 x 38 holds three of
     * 199 x 12 and none of 390 x 4; 400 x 12 alone holds that, but two of 199 x 12 fill it better.
     */
    @Test
    void cloths_are_tried_in_any_order_too() {
        List<ClothOnHand> cloths = all(Stream.of(cloths("small", 1, 95, 95), cloths("large", 1, 100, 100), cloths("strip", 1, 400, 12),
                cloths("short", 1, 199, 38)));
        List<Piece> pieces = all(Stream.of(pieces("square", 1, 94, 94), pieces("long", 1, 97, 60), pieces("strip", 1, 390, 4),
                pieces("short", 3, 199, 12)));
        assertEquals(0, left(planned(cloths, NO_SHOP, pieces)));
    }

    @Test
    void no_plan_is_better_than_its_like() {
        Draft draft = planned(cloths("c", 2, 60, 60), NO_SHOP, pieces("p", 1, 50, 50));
        assertFalse(draft.betterThan(planned(cloths("c", 2, 60, 60), NO_SHOP, pieces("p", 1, 50, 50))));
        assertTrue(draft.betterThan(planned(cloths("c", 2, 60, 60), NO_SHOP, pieces("p", 2, 50, 50))));
    }

    @Test
    void a_piece_is_cut_from_no_cloth_of_another_name() {
        List<Piece> pieces = List.of(Cloths.piece("f", 50, 50, Optional.of("Fog")), Cloths.piece("t", 40, 40, Optional.of("Tar")),
                Cloths.piece("a", 30, 30));
        Draft draft = planned(List.of(Cloths.onHand("Tar", 200, 200, false)), NO_SHOP, pieces);
        assertEquals(List.of(1, 0, 0), IntStream.range(0, 3).map(draft::left).boxed().toList());
    }

    /** One cut would hold all three; that of Fog at 1 is sold in no other cloth, so Tar and what names none share the other, at 5. */
    @Test
    void a_shop_cut_is_one_cloth_and_sold_in_what_it_says() {
        ClothCut fogs = new ClothCut("fogs", 200, 200, Cloth.WarpRun.DOWN, false, Optional.of(new Price(BigDecimal.ONE, "XTS")),
                Optional.of("Fog"), Optional.empty(), Optional.empty());
        List<Piece> pieces = List.of(Cloths.piece("f", 50, 50, Optional.of("Fog")), Cloths.piece("t", 40, 40, Optional.of("Tar")),
                Cloths.piece("a", 30, 30));
        Draft draft = planned(List.of(), List.of(fogs, Cloths.cut("any", 200, 200, "5")), pieces);
        assertEquals(6, draft.cost());
        assertEquals(List.of(List.of(0, List.of(1, 0, 0)), List.of(1, List.of(0, 1, 1))),
                draft.bought().stream().sorted((one, other) -> one.cloth() - other.cloth())
                        .map(load -> List.of(load.cloth(), load.numbers())).toList());
        assertEquals(10, planned(List.of(), List.of(Cloths.cut("any", 200, 200, "5")), pieces).cost());
    }

    /**
     * Five of 20 x 10 are a row of 104 x 10, five of 10 x 20 a column of 10 x 104 below it: 93 x 104 stay, though what is cut lies along
     * the whole width and the whole height. Ten pieces are few enough to look for that.
     */
    @Test
    void of_a_cloth_with_few_pieces_the_largest_rectangle_stays() {
        Draft draft = planned(cloths("c", 1, 104, 115), NO_SHOP, all(Stream.of(pieces("row", 5, 20, 10), pieces("column", 5, 10, 20))));
        assertEquals(0, left(draft));
        assertTrue(draft.outcome().largestMm2() >= 93 * 104, () -> "only " + draft.outcome().largestMm2());
    }

    /** Twelve of 10 with twelve cuts take 132 of 200 mm: 68 x 71 stay beside them, or below. */
    @Test
    void many_pieces_are_cut_off_at_the_side_that_leaves_more() {
        assertEquals(68 * 71, planned(cloths("c", 1, 200, 71), NO_SHOP, pieces("p", 12, 10, 71)).outcome().largestMm2());
        assertEquals(68 * 71, planned(cloths("c", 1, 71, 200), NO_SHOP, pieces("p", 12, 71, 10)).outcome().largestMm2());
    }

    /** Twelve squares of 20 in three columns of four take 63 of 200 mm with their cuts, in two rows 42 of 100: 137 x 100, not 200 x 58. */
    @Test
    void of_guesses_as_full_the_one_that_leaves_the_largest_rectangle_is_taken() {
        Filled filled = planned(List.of(), List.of(Cloths.cut("s", 200, 100, "4")), pieces("p", 12, 20, 20)).bought().get(0).filled();
        assertEquals(137 * 100, filled.remnantMm2(new Kerf(1, 1, 2)));
    }

    private static final int UNIT = 10;

    /** The part of the most that can be cut from a published instance, its pieces worth their areas. */
    private static double filled(PublishedCuts.Instance instance, double most) {
        List<Piece> pieces = new ArrayList<>();
        for (int type = 0; type < instance.most().size(); type++) {
            Shape shape = instance.shapes().get(type).get(0);
            pieces.addAll(pieces("p" + type + "-", instance.most().get(type), UNIT * (int) shape.widthMm() - 1,
                    UNIT * (int) shape.heightMm() - 1));
        }
        Draft draft = planned(cloths("c", 1, UNIT * instance.widthMm() - 1, UNIT * instance.heightMm() - 1), NO_SHOP, pieces);
        List<List<Shape>> shapes = draft.group().shapes(false);
        return IntStream.range(0, shapes.size())
                .mapToDouble(kin -> draft.onHand().get(0).numbers().get(kin) * shapes.get(kin).get(0).areaMm2())
                .sum() / UNIT / UNIT / most;
    }

    /** Of six cloths whose optimum is published as the fullest, a twelfth less on average is taken as good (common practice, no source). */
    @Test
    void a_cloth_is_filled_nearly_as_full_as_can_be() {
        List<Double> parts = Stream.concat(
                PublishedCuts.optima().stream().filter(row -> List.of("wang3", "of1", "of2").contains(row[0]))
                        .map(row -> filled(PublishedCuts.instance(row[0], false), Double.parseDouble(row[1]))),
                Stream.of("C1_1", "C1_2", "C1_3").map(name -> filled(PublishedCuts.filling(name), 400))).toList();
        assertEquals(6, parts.size());
        assertTrue(parts.stream().allMatch(part -> part <= 1), parts::toString);
        assertTrue(parts.stream().mapToDouble(part -> part).sum() >= 6 - 6.0 / 12, parts::toString);
    }
}
