package kitleaf.sizing.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sets of more pieces than can be tried one by one, judged by the constraint solver Choco: fixed seeds, whole sizes. */
class SolverAgreementTests {

    private static final int MANY = 1000;

    /** The best first figure x 1000 + second, as the solver proves it. */
    private static int solved(int[] sizes, int[] weights, int capacity, int most, boolean number) {
        Model model = new Model();
        int things = sizes.length;
        BoolVar[] in = model.boolVarArray(things);
        int[] worth = Arrays.stream(weights).map(weight -> number ? MANY + weight : MANY * weight + 1).toArray();
        IntVar size = model.intVar(0, capacity);
        IntVar value = model.intVar(0, Arrays.stream(worth).sum());
        model.knapsack(in, size, value, sizes, worth).post();
        model.sum(in, "<=", most).post();
        model.setObjective(Model.MAXIMIZE, value);
        int best = 0;
        while (model.getSolver().solve()) {
            best = value.getValue();
        }
        return best;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void the_solver_proves_the_same_optimum(int seed) {
        Random random = new Random(seed);
        int things = 18 + random.nextInt(8);
        int[] sizes = random.ints(things, 1, 60).toArray();
        int[] weights = random.ints(things, 1, 20).toArray();
        int capacity = Arrays.stream(sizes).sum() / (2 + random.nextInt(3));
        int most = seed % 3 == 0 ? things : 3 + random.nextInt(6);
        boolean number = seed % 2 == 0;
        List<Integer> best = BestSet.of(Arrays.stream(sizes).asLongStream().toArray(), Arrays.stream(weights).asLongStream().toArray(),
                capacity, most, number);
        assertTrue(best.size() <= most && best.stream().mapToInt(i -> sizes[i]).sum() <= capacity);
        int weight = best.stream().mapToInt(i -> weights[i]).sum();
        assertEquals(solved(sizes, weights, capacity, most, number), number ? MANY * best.size() + weight : MANY * weight + best.size());
    }

    /** Two hundred pieces of one hour each and weights 1 to 100 have their answer at sight: the heaviest, and the first of equal ones. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void two_hundred_of_one_size_leave_the_lightest(boolean number) {
        long[] weights = LongStream.range(0, 200).map(i -> 1 + i % 100).toArray();
        long[] sizes = LongStream.generate(() -> 1).limit(200).toArray();
        // 199 and 99 weigh 100, 198 and 98 weigh 99; of the two that weigh 98 only the first, 97, has room.
        assertEquals(List.of(97, 98, 99, 198, 199), BestSet.of(sizes, weights, 5, 200, number));
    }
}
