package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import kitleaf.sizing.cutting.BestCut;
import kitleaf.sizing.cutting.Block;
import kitleaf.sizing.cutting.CutType;
import kitleaf.sizing.cutting.Patience;
import kitleaf.sizing.cutting.Shape;

/**
 * A good plan for a group too large to try everything: the cloths on hand are filled one after the other, each as full as
 * can be, in several orders; for the rest the shop cut is bought that holds most for its cost, again and again. The best
 * is then smoothed out, and set beside bounds no plan can pass, so that its distance from the best can be stated.
 */
final class BoundedPlan {

    /** Orders tried; each run of the same basket tries the same. */
    private static final int ORDERS = 12;

    /** Steps for filling one cloth: {@link BestCut} takes about a microsecond for one. */
    private static final long FILL_STEPS = 60_000;

    /** Steps for filling a shop cut that may be bought: many are tried for each that is. */
    private static final long SHOP_STEPS = 12_000;

    /** Kinds of pieces made ready for one panel in one step of patience. */
    private static final int KINS_A_STEP = 16;

    /** Steps for smoothing out one cloth. */
    private static final long SMOOTH_STEPS = 3_000_000;

    /** A cloth with so many pieces at most is smoothed out exactly. */
    private static final int SMOOTHED_EXACTLY = 10;

    /** Shares of a panel tried for all its pieces, so that the rest of it stays whole. */
    private static final double[] SHARES = {0.5, 0.6, 0.7, 0.8, 0.85, 0.9, 0.95};

    /** A piece of twice the area counts for more than twice where areas are raised to this: large ones fill first. */
    private static final double[] POWERS = {1, 1.15, 1.4};

    private final Group group;
    private final Patience patience;
    private final List<List<Shape>> kept;
    private final List<List<Shape>> turned;

    private BoundedPlan(Group group, Patience patience) {
        this.group = group;
        this.patience = patience;
        this.kept = group.shapes(false);
        this.turned = group.shapes(true);
    }

    /** A plan within so much patience; where it ends at once, what one quick filling of each cloth gives. */
    static GroupPlan of(Group group, Patience patience) {
        return new BoundedPlan(group, patience).find();
    }

    private GroupPlan find() {
        boolean cutShort = false;
        Draft best = null;
        // The same seed always: one basket, one plan.
        Random random = new Random(1);
        for (int trial = 0; trial < ORDERS && !cutShort; trial++) {
            Draft draft = draft(order(trial, random), POWERS[trial % POWERS.length], trial == 0);
            best = best == null || draft.betterThan(best) ? draft : best;
            cutShort = patience.ended();
        }
        Draft better = cutShort ? best : smoothed(new Windows(group, patience).improved(best));
        return better.plan(new Bounds(group).proof(better, cutShort || patience.ended()));
    }

    /** The cloths on hand, the largest first, the smallest first, then at random. */
    private List<Integer> order(int trial, Random random) {
        List<Integer> order = new ArrayList<>(IntStream.range(0, group.onHand().size()).boxed()
                .sorted(Comparator.comparingDouble((Integer cloth) -> area(group.onHand().get(cloth))).reversed()).toList());
        if (trial / POWERS.length == 1) {
            Collections.reverse(order);
        } else if (trial / POWERS.length > 1) {
            Collections.shuffle(order, random);
        }
        return order;
    }

    private static double area(Stock stock) {
        return stock.widthMm() * stock.heightMm();
    }

    /**
     * Fills the cloths in an order.
     *
     * @param whole whether it has to come to an end; another that does not is worse than the first, since pieces are left
     */
    private Draft draft(List<Integer> order, double power, boolean whole) {
        Draft draft = new Draft(group, group.numbers());
        for (int cloth : order) {
            if (draft.left() == 0 || !whole && patience.ended()) {
                return draft;
            }
            Stock stock = group.onHand().get(cloth);
            fill(draft, stock, kin -> group.kins().get(kin).onHand().contains(cloth), power, FILL_STEPS)
                    .ifPresent(load -> draft.open(cloth, load.filled(), load.numbers()));
        }
        Optional<Draft.Load> buy = bestBuy(draft, power);
        while (buy.isPresent()) {
            draft.buy(buy.get().cloth(), buy.get().filled(), buy.get().numbers());
            buy = whole || !patience.ended() ? bestBuy(draft, power) : Optional.empty();
        }
        return draft;
    }

    /** Fills a cloth with what is left, as full as can be found; empty if nothing fits. */
    private Optional<Draft.Load> fill(Draft draft, Stock stock, IntPredicate allowed, double power, long steps) {
        int[] taken = new int[group.kins().size()];
        List<Filled.Part> parts = new ArrayList<>();
        for (Stock.Panel panel : stock.panels(group.kerf())) {
            // Cloth with many flaws has thousands of panels, and most are looked at in vain.
            patience.steps(1 + taken.length / KINS_A_STEP);
            if (IntStream.range(0, taken.length).noneMatch(kin -> draft.left(kin) > taken[kin] && allowed.test(kin))) {
                parts.add(new Filled.Part(panel, Chain.NONE));
                continue;
            }
            List<CutType> types = IntStream.range(0, taken.length)
                    .mapToObj(kin -> new CutType(shapes(kin, stock.turning()),
                            allowed.test(kin) ? draft.left(kin) - taken[kin] : 0, Math.pow(areaMm2(kin, stock.turning()), power))).toList();
            Optional<Block> block = BestCut.of(panel.widthMm() + group.kerf().besideMm(), panel.heightMm() + group.kerf().belowMm(),
                    types, patience.part(steps)).block();
            block.ifPresent(found -> found.count(taken));
            parts.add(new Filled.Part(panel, block.map(found -> Chain.of(found, panel, group.kerf())).orElse(Chain.NONE)));
        }
        return Arrays.stream(taken).sum() == 0 ? Optional.empty()
                : Optional.of(new Draft.Load(0, new Filled(stock, parts), Arrays.stream(taken).boxed().toList()));
    }

    private double areaMm2(int kin, boolean turning) {
        double least = Double.POSITIVE_INFINITY;
        for (Shape shape : shapes(kin, turning)) {
            least = Math.min(least, shape.areaMm2());
        }
        return least;
    }

    private List<Shape> shapes(int kin, boolean turning) {
        return (turning ? turned : kept).get(kin);
    }

    /** The shop cut that holds most of what is left for what it costs; empty if none holds anything. */
    private Optional<Draft.Load> bestBuy(Draft draft, double power) {
        List<Optional<String>> names = IntStream.range(0, group.kins().size()).filter(kin -> draft.left(kin) > 0)
                .mapToObj(kin -> group.kins().get(kin).name()).distinct().toList();
        Draft.Load best = null;
        double bestWorth = 0;
        for (int cut = 0; cut < group.shop().size(); cut++) {
            for (Optional<String> name : names) {
                int shop = cut;
                // One shop cut is one cloth: pieces that ask for it by name, and pieces that do not care.
                Optional<Draft.Load> load = fill(draft, group.shop().get(cut), kin -> group.kins().get(kin).shop().contains(shop)
                        && (group.kins().get(kin).name().isEmpty() || group.kins().get(kin).name().equals(name)), power, SHOP_STEPS);
                double worth = load.map(held -> worth(held, shop)).orElse(0.0);
                if (worth > bestWorth) {
                    best = new Draft.Load(cut, load.get().filled(), load.get().numbers());
                    bestWorth = worth;
                }
            }
        }
        return Optional.ofNullable(best).map(this::cheapest);
    }

    private double worth(Draft.Load load, int cut) {
        double held = IntStream.range(0, load.numbers().size())
                .mapToDouble(kin -> load.numbers().get(kin) * areaMm2(kin, group.shop().get(cut).turning())).sum();
        return held / Math.max(group.cost(cut), Double.MIN_NORMAL);
    }

    /** The same pieces on the cheapest cut that is found to hold them all. */
    private Draft.Load cheapest(Draft.Load load) {
        List<Integer> cheaper = IntStream.range(0, group.shop().size()).filter(cut -> group.cost(cut) < group.cost(load.cloth())).boxed()
                .sorted(Comparator.comparingDouble(group::cost)).toList();
        for (int cut : cheaper) {
            boolean sold = IntStream.range(0, load.numbers().size())
                    .allMatch(kin -> load.numbers().get(kin) == 0 || group.kins().get(kin).shop().contains(cut));
            Optional<Filled> filled = sold ? whole(group.shop().get(cut), load.numbers(), SHOP_STEPS) : Optional.empty();
            if (filled.isPresent()) {
                return new Draft.Load(cut, filled.get(), load.numbers());
            }
        }
        return load;
    }

    /** Cuts all of these from one cloth without flaws, if that is found. */
    private Optional<Filled> whole(Stock stock, List<Integer> numbers, long steps) {
        Stock.Panel panel = new Stock.Panel(0, 0, stock.widthMm(), stock.heightMm());
        return block(panel.widthMm(), panel.heightMm(), stock.turning(), numbers, steps)
                .map(block -> new Filled(stock, List.of(new Filled.Part(panel, Chain.of(block, panel, group.kerf())))));
    }

    private Optional<Block> block(double widthMm, double heightMm, boolean turning, List<Integer> numbers, long steps) {
        List<CutType> types = IntStream.range(0, numbers.size())
                .mapToObj(kin -> new CutType(shapes(kin, turning), numbers.get(kin), areaMm2(kin, turning))).toList();
        double room = (widthMm + group.kerf().besideMm()) * (heightMm + group.kerf().belowMm());
        if (types.stream().mapToDouble(type -> type.most() * type.value()).sum() > room) {
            return Optional.empty();
        }
        int[] held = new int[numbers.size()];
        return BestCut.of(widthMm + group.kerf().besideMm(), heightMm + group.kerf().belowMm(), types, patience.part(steps)).block()
                .filter(block -> {
                    block.count(held);
                    return Arrays.stream(held).boxed().toList().equals(numbers);
                });
    }

    /** The same plan with what stays of each cloth in as large a rectangle as is found. */
    private Draft smoothed(Draft draft) {
        Draft smooth = new Draft(group, group.numbers());
        draft.onHand().forEach(load -> smooth.open(load.cloth(), smoothed(load), load.numbers()));
        draft.bought().forEach(load -> smooth.buy(load.cloth(), smoothed(load), load.numbers()));
        return smooth;
    }

    private Filled smoothed(Draft.Load load) {
        if (patience.ended()) {
            return load.filled();
        }
        if (load.pieces() <= SMOOTHED_EXACTLY) {
            return Filling.of(group, load.filled().stock(), load.numbers(), patience.part(SMOOTH_STEPS, Search.FINE)).orElse(load.filled());
        }
        return new Filled(load.filled().stock(), load.filled().parts().stream().map(part -> smoothed(part, load.filled().stock())).toList());
    }

    private Filled.Part smoothed(Filled.Part part, Stock stock) {
        if (part.chain().steps().isEmpty() || patience.ended()) {
            return part;
        }
        int[] held = new int[group.kins().size()];
        part.chain().steps().forEach(step -> step.block().count(held));
        List<Integer> numbers = Arrays.stream(held).boxed().toList();
        Stock.Panel panel = part.panel();
        return Arrays.stream(SHARES).boxed()
                .flatMap(share -> IntStream.range(0, 2).mapToObj(way -> block(panel.widthMm() * (way == 0 ? share : 1),
                        panel.heightMm() * (way == 0 ? 1 : share), stock.turning(), numbers, FILL_STEPS).orElse(null)))
                .filter(Objects::nonNull).map(block -> new Filled.Part(panel, Chain.of(block, panel, group.kerf())))
                .max(Comparator.comparingDouble(better -> better.chain().restMm2(panel, group.kerf())))
                .filter(better -> better.chain().restMm2(panel, group.kerf()) > part.chain().restMm2(panel, group.kerf())).orElse(part);
    }
}
