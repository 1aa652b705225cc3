package kitleaf.sizing.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kitleaf.sizing.cutting.CutVerifier.Placed;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The best cut judged by the constraint solver Choco, which lays pieces anywhere at whole millimetres without overlap and knows
 * nothing of cuts: the best layout is worth no less, and every layout that is worth more cannot be cut from edge to edge.
 */
class CutSolverTests {

    /** Pieces laid on a stock, each in or out; copies of a type are told apart. */
    private static final class Layouts {
        private final Model model = new Model();
        private final List<BoolVar> in = new ArrayList<>();
        private final List<IntVar> x = new ArrayList<>();
        private final List<IntVar> y = new ArrayList<>();
        private final List<Shape> shapes = new ArrayList<>();
        private final IntVar value;

        Layouts(CutCase job) {
            List<Integer> worth = new ArrayList<>();
            for (CutType type : job.types()) {
                Shape shape = type.shapes().get(0);
                for (int copy = 0; copy < type.most(); copy++) {
                    if (shape.widthMm() <= job.widthMm() && shape.heightMm() <= job.heightMm()) {
                        add(shape, (int) (job.widthMm() - shape.widthMm()), (int) (job.heightMm() - shape.heightMm()), copy);
                        worth.add((int) type.value());
                    }
                }
            }
            value = model.intVar(0, worth.stream().mapToInt(Integer::intValue).sum());
            model.scalar(in.toArray(new IntVar[0]), worth.stream().mapToInt(Integer::intValue).toArray(), "=", value).post();
        }

        private void add(Shape shape, int right, int down, int copy) {
            int i = in.size();
            in.add(model.boolVar());
            x.add(model.intVar(0, right));
            y.add(model.intVar(0, down));
            shapes.add(shape);
            // What is out lies nowhere; one place will do, so that no layout comes twice.
            model.ifThen(in.get(i).not(), model.and(model.arithm(x.get(i), "=", 0), model.arithm(y.get(i), "=", 0)));
            if (copy > 0) {
                model.arithm(in.get(i), "<=", in.get(i - 1)).post();
            }
            for (int j = 0; j < i; j++) {
                model.or(in.get(i).not(), in.get(j).not(), before(x.get(i), shape.widthMm(), x.get(j)), before(x.get(j), shapes.get(j).widthMm(), x.get(i)),
                        before(y.get(i), shape.heightMm(), y.get(j)), before(y.get(j), shapes.get(j).heightMm(), y.get(i))).post();
            }
        }

        private BoolVar before(IntVar one, double length, IntVar other) {
            return model.arithm(other, "-", one, ">=", (int) length).reify();
        }

        int best() {
            model.setObjective(Model.MAXIMIZE, value);
            int best = 0;
            while (model.getSolver().solve()) {
                best = value.getValue();
            }
            return best;
        }

        /** How many layouts are worth more than this; none of them may come apart. */
        int noneAbove(double least) {
            model.arithm(value, ">", (int) least).post();
            int layouts = 0;
            while (model.getSolver().solve()) {
                layouts++;
                List<Placed> placed = new ArrayList<>();
                for (int i = 0; i < in.size(); i++) {
                    if (in.get(i).getValue() == 1) {
                        placed.add(new Placed(x.get(i).getValue(), y.get(i).getValue(), shapes.get(i).widthMm(), shapes.get(i).heightMm()));
                    }
                }
                assertFalse(CutVerifier.separable(placed), "worth more, and can be cut: " + placed);
            }
            return layouts;
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30})
    void the_best_layout_is_worth_no_less_and_what_is_worth_more_cannot_be_cut(int seed) {
        CutCase job = CutCase.whole(seed, 8, 4, 2, false);
        double value = job.cut().value();
        int any = new Layouts(job).best();
        assertTrue(any >= value, any + " < " + value);
        assertEquals(any > value, new Layouts(job).noneAbove(value) > 0);
    }

    /** Four bars around a middle fill the stock; the solver finds all ways to fill it or nearly so, and none can be cut. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void a_pinwheel_is_laid_by_the_solver_and_not_cut(int seed) {
        Random random = new Random(seed);
        int a = 2 + random.nextInt(2);
        int b = 1 + random.nextInt(2);
        int c = a + 1 + random.nextInt(2);
        int d = b + 1 + random.nextInt(2);
        int width = c + 1 + random.nextInt(2);
        int height = d + 1 + random.nextInt(2);
        // Corners: the first bar c x b at the top left, then one to its right, one below, one at the left below the first, and the middle.
        List<Shape> bars = List.of(new Shape(c, b), new Shape(width - c, d), new Shape(width - a, height - d), new Shape(a, height - b), new Shape(c - a, d - b));
        CutCase job = new CutCase(width, height, bars.stream().map(it -> new CutType(List.of(it), 1, it.areaMm2())).toList());
        double value = job.cut().value();
        int any = new Layouts(job).best();
        assertEquals(width * height, any);
        assertTrue(value < any);
        assertTrue(new Layouts(job).noneAbove(value) > 0);
    }
}
