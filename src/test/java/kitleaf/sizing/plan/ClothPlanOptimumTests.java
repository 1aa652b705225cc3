package kitleaf.sizing.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitleaf.basket.Piece;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.cloth.Cutting;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Plans of small random cases against trying everything. */
class ClothPlanOptimumTests {

    /** The side of a small square of cloth, in millimetres: all lengths are so many of it. */
    private static final int UNIT = 10;

    /** A cut takes one unit away, 1 mm of it the drawn thread; two units are worth keeping. */
    private static final Cutting CUTTING = new Cutting(9, 20);

    /** How good a plan is: pieces without cloth, cost, cuts bought, cloths opened, and the remnants, the largest first. */
    private record Score(int unplaced, long cost, int bought, int opened, List<Integer> remnants) {
        boolean betterThan(Score other) {
            return Comparator.comparingInt(Score::unplaced).thenComparingLong(Score::cost).thenComparingInt(Score::bought)
                    .thenComparingInt(Score::opened).thenComparing(Score::remnants, (a, b) -> Arrays.compare(
                            b.stream().mapToInt(i -> i).toArray(), a.stream().mapToInt(i -> i).toArray()))
                    .compare(this, other) < 0;
        }
    }

    /** One random case. */
    private static final class Case {
        private final int[] widths;
        private final int[] heights;
        private final List<int[]> cloths = new ArrayList<>();
        private final List<int[]> cuts = new ArrayList<>();
        private final List<SmallCuts> tried;

        Case(long seed, int pieces) {
            Random random = new Random(seed);
            widths = random.ints(pieces, 1, 7).toArray();
            heights = random.ints(pieces, 1, 7).toArray();
            IntStream.range(0, random.nextInt(3)).forEach(i -> cloths.add(new int[] {3 + random.nextInt(9), 3 + random.nextInt(9), random.nextInt(2), 0}));
            IntStream.range(0, random.nextInt(3)).forEach(i -> cuts.add(new int[] {3 + random.nextInt(7), 3 + random.nextInt(7), 0, 1 + random.nextInt(9)}));
            tried = List.of(new SmallCuts(widths, heights, false, 2), new SmallCuts(widths, heights, true, 2));
        }

        int largest(int[] cloth, int pieces) {
            return tried.get(cloth[2]).largest(cloth[0], cloth[1], pieces);
        }

        ClothPlan plan() {
            List<Piece> pieces = IntStream.range(0, widths.length).mapToObj(i -> Cloths.piece("p" + i, UNIT * widths[i], UNIT * heights[i])).toList();
            List<ClothOnHand> onHand = cloths.stream().map(c -> wide("c", c)).toList();
            List<ClothCut> shop = IntStream.range(0, cuts.size())
                    .mapToObj(i -> Cloths.cut("s" + i, UNIT * cuts.get(i)[0], UNIT * cuts.get(i)[1], String.valueOf(cuts.get(i)[3]))).toList();
            return Cloths.plan(new ClothSupply(onHand, shop, true, CUTTING), pieces);
        }

        private static ClothOnHand wide(String name, int[] cloth) {
            return Cloths.onHand(name, UNIT * cloth[0], UNIT * cloth[1], cloth[2] == 1);
        }

        /** The best way to give each piece a cloth on hand, to buy for it, or to leave it. */
        Score best() {
            return onHand(0, (1 << widths.length) - 1, 0, List.of(), null);
        }

        private Score onHand(int cloth, int left, int opened, List<Integer> remnants, Score best) {
            if (cloth == cloths.size()) {
                long[] bill = bought(left);
                Score score = new Score((int) bill[0], bill[1], (int) bill[2], opened, remnants.stream().sorted(Comparator.reverseOrder()).toList());
                return best == null || score.betterThan(best) ? score : best;
            }
            Score found = best;
            for (int part = left; ; part = part - 1 & left) {
                int remnant = largest(cloths.get(cloth), part);
                if (remnant >= 0) {
                    found = onHand(cloth + 1, left & ~part, opened + (part == 0 ? 0 : 1), Stream.concat(remnants.stream(), Stream.of(remnant)).toList(), found);
                }
                if (part == 0) {
                    return found;
                }
            }
        }

        /** Pieces without cloth, cost and number of cuts at best, over all ways to share pieces out among cuts. */
        private long[] bought(int left) {
            if (left == 0) {
                return new long[3];
            }
            int first = Integer.lowestOneBit(left);
            long[] best = cuts.stream().noneMatch(cut -> largest(cut, first) >= 0) ? plus(bought(left & ~first), 1, 0, 0) : null;
            int others = left & ~first;
            for (int with = others; ; with = with - 1 & others) {
                for (int[] cut : cuts) {
                    if (largest(cut, first | with) >= 0) {
                        long[] bill = plus(bought(others & ~with), 0, cut[3], 1);
                        best = best == null || Arrays.compare(bill, best) < 0 ? bill : best;
                    }
                }
                if (with == 0) {
                    return best;
                }
            }
        }

        private static long[] plus(long[] bill, long unplaced, long cost, long cuts) {
            return new long[] {bill[0] + unplaced, bill[1] + cost, bill[2] + cuts};
        }

        private static int units(double mm2) {
            return (int) Math.round(mm2 / UNIT / UNIT);
        }

        private Score score(ClothPlan plan) {
            int opened = (int) plan.cloths().stream().filter(cloth -> !cloth.bought()).count();
            List<Integer> remnants = new ArrayList<>();
            plan.cloths().stream().filter(cloth -> !cloth.bought())
                    .forEach(cloth -> remnants.add(units(cloth.remnants().stream().filter(Remnant::usable).mapToDouble(Remnant::areaMm2).max().orElse(0))));
            plan.untouched().forEach(cloth -> remnants.add(units(cloth.widthMm() * cloth.heightMm())));
            remnants.sort(Comparator.reverseOrder());
            long cost = plan.buy().stream().mapToLong(buy -> buy.number() * buy.cut().price().orElseThrow().amount().longValueExact()).sum();
            return new Score(plan.unplaced().size(), cost, plan.buy().stream().mapToInt(Purchase::number).sum(), opened, remnants);
        }
    }

    @Property(tries = 1500, seed = "20270106")
    void no_plan_for_up_to_four_pieces_is_better(@ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int pieces) {
        Case random = new Case(seed, pieces);
        ClothPlan plan = random.plan();
        assertEquals(random.best(), random.score(plan));
        assertTrue(plan.optimal());
        CuttingTable table = new CuttingTable(UNIT, UNIT);
        plan.cloths().forEach(table::cutsUp);
        plan.cloths().forEach(CuttingTable::numbersRun);
    }
}
