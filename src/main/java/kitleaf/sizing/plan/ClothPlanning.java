package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import kitleaf.basket.Basket;
import kitleaf.basket.ClothOnHand;
import kitleaf.basket.ClothSupply;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.cutting.Patience;

/** Plans which pieces are cut from which cloth. */
public final class ClothPlanning {

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
     * The plan for all pieces that are not cut yet, see {@link PieceReckoning#cutAlready}.
     *
     * @param pieces the basket's pieces, reckoned
     * @param stepMm what cut sizes are rounded up to, in millimetres, above 0
     * @param steps how many steps to search for, 0 or more, about a million for each second of an ordinary computer
     */
    public static ClothPlan of(Basket basket, List<PieceReckoning> pieces, double stepMm, long steps) {
        List<Wanted> wanted = pieces.stream().filter(piece -> !piece.cutAlready()).map(piece -> Wanted.of(piece, stepMm)).toList();
        List<Group> groups = Grouping.of(basket.clothSupply(), wanted);
        ClothPlanning planning = new ClothPlanning(basket.clothSupply());
        List<GroupPlan> plans = Search.of(groups, new Patience(steps));
        for (int group = 0; group < groups.size(); group++) {
            planning.take(group, plans.get(group));
        }
        return planning.plan(pieces, wanted);
    }

    private void take(int group, GroupPlan plan) {
        PlanWriter writer = new PlanWriter(plan);
        plan.onHand().forEach(filled -> onHand.put(filled.stock().place(), writer.cloth(filled)));
        for (Filled filled : plan.bought()) {
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
