package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import kitleaf.basket.Basket;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.plan.search.Counts;
import kitleaf.sizing.plan.search.Patience;

/**
 * Plans which pieces are cut from which cloth: exactly where that can be done in reasonable time, otherwise as well as is quickly found.
 */
public final class ClothPlanning {

    /** The most pairs of a selection and a part of it gone through: twelve pieces, no two alike, have half a million. */
    private static final double EXACT_PAIRS = 6e5;

    /** How many steps all exact plans may take together, some nanoseconds each: some seconds. */
    private static final long EXACT_STEPS = 400_000_000;

    /** How many all quick ones may, one for each piece that is looked at: some seconds, too. */
    private static final long QUICK_STEPS = 100_000_000;

    private final ClothSupply supply;
    /** Cloths on hand that are cut, by their place in the basket. */
    private final Map<Integer, PlannedCloth> onHand = new TreeMap<>();
    private final List<PlannedCloth> bought = new ArrayList<>();
    private final Map<Bought, Purchase> buy = new LinkedHashMap<>();
    private final List<PieceReckoning> unplaced = new ArrayList<>();

    /** What makes two purchases one line of the list: the shop cut, the group, and the cloth's name. */
    private record Bought(int cut, int group, Optional<String> cloth) {
    }

    private ClothPlanning(ClothSupply supply) {
        this.supply = supply;
    }

    /**
     * The plan for all pieces that {@linkplain PieceReckoning#wantsCloth want cloth}.
     *
     * @param pieces the basket's pieces, reckoned
     * @param stepMm what cut sizes are rounded up to, in millimetres, above 0
     */
    public static ClothPlan of(Basket basket, List<PieceReckoning> pieces, double stepMm) {
        List<Wanted> wanted = pieces.stream().filter(PieceReckoning::wantsCloth).map(piece -> Wanted.of(piece, stepMm)).toList();
        List<Group> groups = Grouping.of(basket.clothSupply(), wanted);
        ClothPlanning planning = new ClothPlanning(basket.clothSupply());
        List<Draft> plans = plans(groups);
        for (int group = 0; group < groups.size(); group++) {
            planning.take(group, plans.get(group));
        }
        return planning.plan(pieces, wanted);
    }

    /** The plan of each group, in their order. The easy ones are planned first, so that a hard one takes no steps from them. */
    private static List<Draft> plans(List<Group> groups) {
        Patience exact = new Patience(EXACT_STEPS);
        Patience quick = new Patience(QUICK_STEPS);
        Draft[] plans = new Draft[groups.size()];
        IntStream.range(0, plans.length).boxed()
                .sorted(Comparator.comparingDouble(group -> Counts.pairs(groups.get(group).numbers())))
                .forEach(group -> plans[group] = Optional.of(groups.get(group)).filter(few -> Counts.pairs(few.numbers()) <= EXACT_PAIRS)
                        .flatMap(few -> ExactPlan.of(few, exact)).orElseGet(() -> QuickPlan.of(groups.get(group), quick)));
        return List.of(plans);
    }

    private void take(int group, Draft plan) {
        PlanWriter writer = new PlanWriter(plan);
        plan.onHand().forEach(load -> onHand.put(load.filled().stock().place(), writer.cloth(load.filled())));
        for (Draft.Load load : plan.bought()) {
            Filled filled = load.filled();
            PlannedCloth cloth = writer.cloth(filled);
            bought.add(cloth);
            buy.merge(new Bought(filled.stock().place(), group, cloth.cloth().map(name -> name.strip().toLowerCase(Locale.ROOT))),
                    new Purchase(filled.stock().cut().orElseThrow(), 1, cloth.cloth(), cloth.kind(), cloth.count()),
                    (one, other) -> one.and(other.number()));
        }
        unplaced.addAll(writer.unplaced());
    }

    private ClothPlan plan(List<PieceReckoning> pieces, List<Wanted> wanted) {
        List<PlannedCloth> cloths = new ArrayList<>(onHand.values());
        cloths.addAll(bought);
        List<ClothOnHand> untouched = IntStream.range(0, supply.onHand().size()).filter(place -> !onHand.containsKey(place))
                .mapToObj(supply.onHand()::get).toList();
        List<ClothPlan.NearMiss> nearMisses = wanted.stream().flatMap(piece -> nearMiss(piece).stream()).toList();
        return new ClothPlan(cloths, List.copyOf(buy.values()),
                pieces.stream().filter(Set.copyOf(unplaced)::contains).toList(), untouched, nearMisses);
    }

    /** A cloth on hand of the name a piece asks for, when none of that name is the cloth it describes. */
    private Optional<ClothPlan.NearMiss> nearMiss(Wanted piece) {
        List<ClothOnHand> named = supply.onHand().stream()
                .filter(cloth -> piece.cloth().name().filter(cloth::isCalled).isPresent()).toList();
        return named.stream().anyMatch(cloth -> Grouping.serves(cloth, piece.cloth())) ? Optional.empty()
                : named.stream().findFirst().map(cloth -> new ClothPlan.NearMiss(piece.piece(), cloth));
    }
}
