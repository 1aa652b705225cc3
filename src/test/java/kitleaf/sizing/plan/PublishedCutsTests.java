package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitleaf.basket.Piece;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.sizing.plan.search.Counts;
import kitleaf.sizing.plan.search.Patience;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the exact plan rests on, and the plan itself, against published instances of cutting from edge to edge. */
class PublishedCutsTests {

    /** These have too many selections to go through: of the first it would take a minute, of the others years. */
    private static final List<String> TOO_MANY = List.of("cgcut2", "cgcut3", "wang3");

    /** A cut takes 1 mm away here: with it each side of a piece and of the cloth is so many millimetres a unit. */
    private static final int UNIT = 10;

    private static Fronts fronts(PublishedCuts.Instance instance) {
        return Fronts.of(Counts.of(instance.most()), instance.shapes(), instance.widthMm() + Stock.SLACK_MM,
                instance.heightMm() + Stock.SLACK_MM, new Patience(Long.MAX_VALUE)).orElseThrow();
    }

    /** The most that any selection is worth that can be cut from the rectangle. */
    private static double most(PublishedCuts.Instance instance) {
        Fronts fronts = fronts(instance);
        return IntStream.range(0, fronts.counts().states())
                .filter(state -> fronts.fits(state, instance.widthMm() + Stock.SLACK_MM, instance.heightMm() + Stock.SLACK_MM))
                .mapToDouble(state -> IntStream.range(0, instance.values().size())
                        .mapToDouble(type -> fronts.counts().of(state, type) * instance.values().get(type)).sum()).max().orElseThrow();
    }

    static Stream<Arguments> optima() {
        return PublishedCuts.optima().stream().filter(row -> !TOO_MANY.contains(row[0]))
                .flatMap(row -> Stream.of(Arguments.of(row[0], false, row[1]), Arguments.of(row[0], true, row[3])))
                .filter(it -> !it.get()[2].equals(""));
    }

    @Test
    void ten_instances_and_eight_of_them_turned_are_there() {
        assertEquals(10, optima().filter(it -> it.get()[1].equals(false)).count());
        assertEquals(8, optima().filter(it -> it.get()[1].equals(true)).count());
    }

    @ParameterizedTest
    @MethodSource("optima")
    void no_selection_that_can_be_cut_is_worth_more_than_the_optimum_and_one_is_worth_that(String instance, boolean turns, String optimum) {
        assertEquals(Double.parseDouble(optimum), most(PublishedCuts.instance(instance, turns)), 0);
    }

    @Test
    void all_pieces_of_a_perfect_filling_fit() {
        PublishedCuts.Instance filling = PublishedCuts.filling("C1_1");
        assertEquals(400, filling.values().stream().mapToDouble(value -> value).sum());
        Fronts fronts = fronts(filling);
        assertTrue(fronts.fits(fronts.counts().all(), 20 + Stock.SLACK_MM, 20 + Stock.SLACK_MM));
    }

    private static ClothPlan plan(int width, int height, List<int[]> sides) {
        List<Piece> pieces = new ArrayList<>();
        for (int[] side : sides) {
            pieces.add(Cloths.piece("p" + pieces.size(), UNIT * side[0] - 1, UNIT * side[1] - 1));
        }
        ClothSupply supply = Cloths.supply(List.of(Cloths.onHand("c", UNIT * width - 1, UNIT * height - 1, false)), List.of());
        return Cloths.plan(supply, pieces);
    }

    static Stream<String> patterns() {
        return PublishedCuts.optima().stream().map(row -> row[0]);
    }

    /** The pieces of one optimal pattern of each instance, as cloth. */
    @ParameterizedTest
    @MethodSource("patterns")
    void an_optimal_pattern_is_cut_from_one_cloth_with_proof(String name) {
        PublishedCuts.Instance instance = PublishedCuts.instance(name, false);
        String[] numbers = PublishedCuts.optima().stream().filter(row -> row[0].equals(name)).findFirst().orElseThrow()[4].split(" ");
        List<int[]> sides = new ArrayList<>();
        for (int type = 0; type < numbers.length; type++) {
            Shape shape = instance.shapes().get(type).get(0);
            for (int copy = 0; copy < Integer.parseInt(numbers[type]); copy++) {
                sides.add(new int[] {(int) shape.widthMm(), (int) shape.heightMm()});
            }
        }
        ClothPlan plan = plan((int) instance.widthMm(), (int) instance.heightMm(), sides);
        assertEquals(List.of(), plan.unplaced());
        assertTrue(plan.optimal());
        plan.cloths().forEach(new CuttingTable(1, 1)::cutsUp);
    }

    /**
     * Laid in any way, wang3 holds these eight, worth 2726, but no straight cut gets into that layout ({@link CutVerifierTests}); by cuts
     * from edge to edge 2721 is the most. Whoever finds cloth for all eight has broken the rule of the cuts.
     */
    @Test
    void the_layout_of_wang3_with_2726_is_not_cut() {
        int[] widths = {11, 11, 11, 12, 12, 24, 24, 35};
        int[] heights = {19, 19, 19, 21, 21, 15, 15, 25};
        ClothPlan plan = plan(70, 40, IntStream.range(0, 8).mapToObj(at -> new int[] {widths[at], heights[at]}).toList());
        assertTrue(plan.unplaced().size() >= 1);
        assertTrue(plan.optimal());
    }
}
