package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import kitleaf.basket.Piece;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.cloth.Cutting;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * Plans of a few pieces against a constraint solver that places rectangles so that none overlap, and knows nothing of cuts.
 * Three rectangles that do not overlap can always be parted from edge to edge, so both must agree on what it costs and how
 * many cloths are opened. Four can stand as a pinwheel round an empty middle, which no cut parts: there the solver may do
 * better, and never worse.
 */
class ClothPlanSolverTests {

    private static final int UNIT = 10;
    private static final Cutting CUTTING = new Cutting(9, 20);

    /** One place to cut from: its sides, what it costs, whether it is on hand. */
    private record Bin(int width, int height, int cost, boolean onHand) { }

    /** Cost in hundreds and cloths opened, at best. */
    private static long solved(int[] widths, int[] heights, List<Bin> bins) {
        Model model = new Model();
        int side = bins.stream().mapToInt(bin -> Math.max(bin.width(), bin.height())).max().orElseThrow() + 1;
        int pieces = widths.length;
        // All bins stand in one row, parted by gaps nothing reaches across.
        IntVar[] bin = model.intVarArray(pieces, 0, bins.size() - 1);
        IntVar[] x = model.intVarArray(pieces, 0, side);
        IntVar[] y = model.intVarArray(pieces, 0, side);
        IntVar[] row = model.intVarArray(pieces, 0, bins.size() * (side + 1));
        IntVar[] wide = new IntVar[pieces];
        IntVar[] high = new IntVar[pieces];
        for (int i = 0; i < pieces; i++) {
            wide[i] = model.intVar(widths[i] + 1);
            high[i] = model.intVar(heights[i] + 1);
            row[i].eq(bin[i].mul(side + 1).add(x[i])).post();
            IntVar width = model.intVar(0, side);
            IntVar height = model.intVar(0, side);
            model.element(width, bins.stream().mapToInt(b -> b.width() + 1).toArray(), bin[i]).post();
            model.element(height, bins.stream().mapToInt(b -> b.height() + 1).toArray(), bin[i]).post();
            x[i].add(wide[i]).le(width).post();
            y[i].add(high[i]).le(height).post();
        }
        model.diffN(row, y, wide, high, true).post();
        BoolVar[] used = model.boolVarArray(bins.size());
        for (int b = 0; b < bins.size(); b++) {
            for (int i = 0; i < pieces; i++) {
                bin[i].ne(b).or(used[b]).post();
            }
        }
        IntVar cost = model.intVar(0, 1_000_000);
        model.scalar(used, bins.stream().mapToInt(b -> b.onHand() ? 1 : 1000 * b.cost() + 100).toArray(), "=", cost).post();
        model.setObjective(Model.MINIMIZE, cost);
        Solution best = new Solution(model);
        while (model.getSolver().solve()) {
            best.record();
        }
        return best.exists() ? best.getIntVal(cost) : -1;
    }

    @Property(tries = 120, seed = "20270108")
    void a_constraint_solver_finds_no_cheaper_plan(@ForAll long seed) {
        Random random = new Random(seed);
        int pieces = 2 + random.nextInt(3);
        int[] widths = random.ints(pieces, 1, 8).toArray();
        int[] heights = random.ints(pieces, 1, 8).toArray();
        List<Bin> bins = new ArrayList<>();
        List<ClothOnHand> onHand = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            Bin bin = new Bin(4 + random.nextInt(8), 4 + random.nextInt(8), 0, true);
            bins.add(bin);
            onHand.add(Cloths.onHand("c" + i, UNIT * bin.width(), UNIT * bin.height(), false));
        }
        List<ClothCut> shop = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            // The first cut holds any piece, so that none is left without cloth.
            Bin bin = new Bin(i == 0 ? 8 : 3 + random.nextInt(9), i == 0 ? 8 : 3 + random.nextInt(9), 1 + random.nextInt(9), false);
            bins.addAll(IntStream.range(0, pieces).mapToObj(copy -> bin).toList());
            shop.add(Cloths.cut("s" + i, UNIT * bin.width(), UNIT * bin.height(), String.valueOf(bin.cost())));
        }
        List<Piece> wanted = IntStream.range(0, pieces).mapToObj(i -> Cloths.piece("p" + i, UNIT * widths[i], UNIT * heights[i])).toList();
        ClothPlan plan = Cloths.plan(new ClothSupply(onHand, shop, true, CUTTING), wanted);
        long cost = plan.buy().stream().mapToLong(buy -> buy.number() * (1000 * buy.cut().price().orElseThrow().amount().longValueExact() + 100)).sum();
        long planned = cost + plan.cloths().stream().filter(cloth -> !cloth.bought()).count();
        long solved = solved(widths, heights, bins);
        assertTrue(solved <= planned, () -> solved + " > " + planned);
        if (pieces < 4) {
            assertEquals(solved, planned);
        }
    }
}
