package kitleaf.sizing.plan;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import kitleaf.sizing.cutting.Shape;

/**
 * What no plan for a group can do better than, by areas alone: pieces take up at least their area, the kerf added, and a
 * cloth has no more than its own.
 */
final class Bounds {

    /** Areas and costs are equal to within this part of them. */
    private static final double EQUAL = 1e-9;

    private final Group group;
    /** The panels of each cloth on hand. */
    private final List<List<Stock.Panel>> panels;
    private final boolean[] hopeless;

    Bounds(Group group) {
        this.group = group;
        this.panels = group.onHand().stream().map(stock -> stock.panels(group.kerf())).toList();
        this.hopeless = new boolean[group.kins().size()];
        for (int kin = 0; kin < hopeless.length; kin++) {
            hopeless[kin] = fitsNowhere(kin);
        }
    }

    /** Sets a plan beside its bounds. */
    Proof proof(Draft draft, boolean cutShort) {
        double cost = draft.cost();
        double leastCost = Math.min(cost, leastCost(draft));
        Outcome outcome = draft.outcome();
        int fewest = Math.min(outcome.cloths(), fewestCloths(draft, cost));
        double largest = Math.max(outcome.largestMm2(), largestRemnantMm2(draft, cost));
        boolean optimal = IntStream.range(0, group.kins().size()).allMatch(kin -> draft.left(kin) == 0 || hopeless(kin))
                && cost - leastCost <= EQUAL * cost && fewest == outcome.cloths() && largest - outcome.largestMm2() <= EQUAL * largest;
        return new Proof(optimal, cutShort && !optimal, cost, leastCost, outcome.cloths(), fewest, outcome.largestMm2(), largest);
    }

    /** Whether a kin fits on no cloth at all. */
    private boolean hopeless(int kin) {
        return hopeless[kin];
    }

    private boolean fitsNowhere(int kin) {
        return IntStream.range(0, group.onHand().size()).noneMatch(cloth -> fitsOnHand(kin, cloth))
                && IntStream.range(0, group.shop().size()).noneMatch(cut -> fitsInShop(kin, cut));
    }

    private boolean fitsOnHand(int kin, int cloth) {
        Stock stock = group.onHand().get(cloth);
        return group.kins().get(kin).onHand().contains(cloth) && fits(kin, stock.turning(), panels.get(cloth));
    }

    private boolean fitsInShop(int kin, int cut) {
        Stock stock = group.shop().get(cut);
        return group.kins().get(kin).shop().contains(cut) && fits(kin, stock.turning(), stock.panels(group.kerf()));
    }

    private boolean fits(int kin, boolean turning, List<Stock.Panel> some) {
        List<Shape> shapes = group.kins().get(kin).shapes(turning, group.kerf());
        return some.stream().anyMatch(panel -> shapes.stream()
                .anyMatch(shape -> shape.widthMm() <= panel.widthMm() + group.kerf().besideMm() + Stock.SLACK_MM
                        && shape.heightMm() <= panel.heightMm() + group.kerf().belowMm() + Stock.SLACK_MM));
    }

    private double pieceMm2(int kin) {
        return group.kins().get(kin).shapes(true, group.kerf()).stream().mapToDouble(Shape::areaMm2).min().orElseThrow();
    }

    private double clothMm2(Stock stock) {
        return stock.panels(group.kerf()).stream().mapToDouble(this::panelMm2).sum();
    }

    private double panelMm2(Stock.Panel panel) {
        return (panel.widthMm() + group.kerf().besideMm()) * (panel.heightMm() + group.kerf().belowMm());
    }

    /** The area of all pieces that could have cloth. */
    private double wantedMm2() {
        return IntStream.range(0, group.kins().size()).filter(kin -> !hopeless(kin))
                .mapToDouble(kin -> group.kins().get(kin).number() * pieceMm2(kin)).sum();
    }

    private double onHandMm2() {
        return group.onHand().stream().mapToDouble(this::clothMm2).sum();
    }

    /** What an area of shop cut costs at least. */
    private double leastRate() {
        return IntStream.range(0, group.shop().size()).mapToDouble(cut -> group.cost(cut) / clothMm2(group.shop().get(cut))).min().orElse(0);
    }

    /**
     * What is larger than all cloth on hand has to be bought, and so has every piece that fits on none of it; and each
     * piece that has to be bought costs at least the cheapest cut that holds it.
     */
    private double leastCost(Draft draft) {
        List<Integer> bought = IntStream.range(0, group.kins().size())
                .filter(kin -> !hopeless(kin) && IntStream.range(0, group.onHand().size()).noneMatch(cloth -> fitsOnHand(kin, cloth))).boxed().toList();
        double alone = bought.stream().mapToDouble(kin -> IntStream.range(0, group.shop().size()).filter(cut -> fitsInShop(kin, cut))
                .mapToDouble(group::cost).min().orElse(0)).max().orElse(0);
        double boughtMm2 = bought.stream().mapToDouble(kin -> group.kins().get(kin).number() * pieceMm2(kin)).sum();
        double mm2 = Math.max(boughtMm2, wantedMm2() - onHandMm2());
        double cheapest = mm2 > EQUAL * wantedMm2() ? IntStream.range(0, group.shop().size()).mapToDouble(group::cost).min().orElse(0) : 0;
        // What a plan leaves without cloth costs nothing: only if it leaves none does all of this have to be paid.
        return draft.left() > 0 ? 0 : Math.max(Math.max(alone, cheapest), Math.max(0, mm2) * leastRate());
    }

    /** A plan that buys for no more leaves so much for the cloths on hand, 0 or more. */
    private double leastOnHandMm2(Draft draft, double cost) {
        double rate = leastRate();
        double affordableMm2 = rate > 0 ? cost / rate : cost > 0 ? Double.POSITIVE_INFINITY : 0;
        return draft.left() > 0 ? 0 : Math.max(0, wantedMm2() - affordableMm2);
    }

    /** The largest cloths hold what has to be cut from cloths on hand. */
    private int fewestCloths(Draft draft, double cost) {
        double mm2 = leastOnHandMm2(draft, cost);
        List<Double> cloths = group.onHand().stream().map(this::clothMm2).sorted(Comparator.reverseOrder()).toList();
        int fewest = 0;
        for (double held = 0; fewest < cloths.size() && held < mm2 * (1 - EQUAL); fewest++) {
            held += cloths.get(fewest);
        }
        return fewest;
    }

    /** No remnant is larger than the largest panel, nor than all that is left. */
    private double largestRemnantMm2(Draft draft, double cost) {
        return Math.min(onHandMm2() - leastOnHandMm2(draft, cost), panels.stream().flatMap(List::stream)
                .mapToDouble(panel -> group.kerf().usableMm2(panel.widthMm() + group.kerf().besideMm(), panel.heightMm() + group.kerf().belowMm()))
                .max().orElse(0));
    }
}
