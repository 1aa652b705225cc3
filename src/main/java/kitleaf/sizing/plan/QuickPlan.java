package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import kitleaf.sizing.plan.search.Patience;

/**
 * A good plan for a group too large to try everything, of which nothing is proved: the cloths on hand are filled one after the other, in
 * several orders; for the rest the shop cut is bought that holds most for its cost, again and again. The best of these plans is taken.
 */
final class QuickPlan {

    /** Plans made. */
    private static final int TRIALS = 24;

    /** Guesses at how to fill one panel. */
    private static final int GUESSES = 20;

    /** A cloth with so many pieces at most is cut anew at the end, so that the largest rectangle stays of it. */
    private static final int FEW = 10;

    /** Steps of {@link StockTable} for that, some tenths of a second. */
    private static final long FEW_STEPS = 20_000_000;

    /** Areas are equal to within this many square millimetres. */
    private static final double EQUAL_MM2 = 1e-3;

    private final Group group;
    private final Patience patience;
    private final List<List<Shape>> kept;
    private final List<List<Shape>> turned;
    /** The same seed always: one basket, one plan. */
    private final Random random = new Random(1);

    private QuickPlan(Group group, Patience patience) {
        this.group = group;
        this.patience = patience;
        this.kept = group.shapes(false);
        this.turned = group.shapes(true);
    }

    /** A plan; where patience has ended it is the first that is found. */
    static Draft of(Group group, Patience patience) {
        QuickPlan quick = new QuickPlan(group, patience);
        Draft best = quick.draft(0);
        for (int trial = 1; trial < TRIALS && !patience.ended(); trial++) {
            Draft draft = quick.draft(trial);
            best = draft.betterThan(best) ? draft : best;
        }
        return quick.smoothed(best);
    }

    private Draft draft(int trial) {
        Draft draft = new Draft(group, false);
        for (int cloth : order(trial)) {
            fill(cloth, group.onHand().get(cloth), most(draft, kin -> kin.onHand().contains(cloth))).ifPresent(draft::open);
        }
        for (Optional<Draft.Load> buy = bestBuy(draft); buy.isPresent(); buy = bestBuy(draft)) {
            draft.buy(buy.get());
        }
        return draft;
    }

    /** The cloths on hand, the largest first, the smallest first, or at random. */
    private List<Integer> order(int trial) {
        List<Integer> order = new ArrayList<>(IntStream.range(0, group.onHand().size()).boxed()
                .sorted(Comparator.comparingDouble((Integer cloth) -> group.onHand().get(cloth).areaMm2()).reversed()).toList());
        if (trial % 3 == 1) {
            Collections.reverse(order);
        } else if (trial % 3 == 2) {
            Collections.shuffle(order, random);
        }
        return order;
    }

    /** How many of each kin that may be cut from a cloth are left. */
    private int[] most(Draft draft, Predicate<Group.Kin> allowed) {
        return IntStream.range(0, group.kins().size()).map(kin -> allowed.test(group.kins().get(kin)) ? draft.left(kin) : 0).toArray();
    }

    /** Fills a cloth panel by panel, as full as is guessed; empty if nothing fits. */
    private Optional<Draft.Load> fill(int cloth, Stock stock, int[] most) {
        int[] left = most.clone();
        List<Filled.Part> parts = new ArrayList<>();
        for (Stock.Panel panel : stock.panels(group.kerf())) {
            Filled.Part part = fill(panel, stock.turning(), left);
            Arrays.setAll(left, kin -> left[kin] - numbers(part)[kin]);
            parts.add(part);
        }
        List<Integer> numbers = IntStream.range(0, most.length).mapToObj(kin -> most[kin] - left[kin]).toList();
        return Arrays.equals(left, most) ? Optional.empty() : Optional.of(new Draft.Load(cloth, new Filled(stock, parts), numbers));
    }

    /** The fullest of many guesses, and of those as full the one that leaves the largest rectangle. */
    private Filled.Part fill(Stock.Panel panel, boolean turning, int[] left) {
        Filled.Part best = Filled.Part.untouched(panel);
        double bestMm2 = 0;
        for (int guess = 0; guess == 0 || guess < GUESSES && !patience.ended(); guess++) {
            Optional<Block> block = Guess.of(panel.widthMm() + group.kerf().besideMm(), panel.heightMm() + group.kerf().belowMm(),
                    turning ? turned : kept, left, random, patience);
            if (block.isEmpty()) {
                return best;
            }
            Filled.Part found = Filled.Part.of(panel, block.get(), group.kerf());
            double mm2 = areaMm2(numbers(found));
            if (mm2 > bestMm2 + EQUAL_MM2
                    || mm2 > bestMm2 - EQUAL_MM2 && found.restMm2(group.kerf()) > best.restMm2(group.kerf())) {
                best = found;
                bestMm2 = mm2;
            }
        }
        return best;
    }

    private int[] numbers(Filled.Part part) {
        int[] numbers = new int[group.kins().size()];
        part.steps().forEach(step -> step.block().count(numbers));
        return numbers;
    }

    private double areaMm2(int[] numbers) {
        return IntStream.range(0, numbers.length).mapToDouble(kin -> numbers[kin] * kept.get(kin).get(0).areaMm2()).sum();
    }

    /** The shop cut that holds most of what is left for what it costs; empty if none holds anything. */
    private Optional<Draft.Load> bestBuy(Draft draft) {
        List<Optional<String>> names = IntStream.range(0, group.kins().size()).filter(kin -> draft.left(kin) > 0)
                .mapToObj(kin -> group.kins().get(kin).name()).distinct().toList();
        // One shop cut is one cloth: pieces that ask for it by name, and pieces that do not care.
        return IntStream.range(0, group.shop().size()).boxed()
                .flatMap(cut -> names.stream().flatMap(name -> fill(cut, group.shop().get(cut), most(draft, kin -> kin.shop().contains(cut)
                        && (kin.name().isEmpty() || kin.name().equals(name)))).stream()))
                .max(Comparator.comparingDouble(this::worth));
    }

    private double worth(Draft.Load load) {
        int[] numbers = load.numbers().stream().mapToInt(Integer::intValue).toArray();
        return areaMm2(numbers) / Math.max(group.cost(load.cloth()), Double.MIN_NORMAL);
    }

    /** The same plan, and of each cloth with few pieces the largest rectangle that can stay of it. */
    private Draft smoothed(Draft draft) {
        Draft smooth = new Draft(group, false);
        draft.onHand().forEach(load -> smooth.open(smoothed(load)));
        draft.bought().forEach(load -> smooth.buy(smoothed(load)));
        return smooth;
    }

    private Draft.Load smoothed(Draft.Load load) {
        return load.pieces() > FEW ? load
                : StockTable.filled(group, load.filled().stock(), load.numbers(), new Patience(FEW_STEPS))
                        .map(filled -> new Draft.Load(load.cloth(), filled, load.numbers())).orElse(load);
    }
}
