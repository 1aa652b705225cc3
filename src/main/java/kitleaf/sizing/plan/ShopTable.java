package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import kitleaf.sizing.plan.search.Counts;
import kitleaf.sizing.plan.search.Patience;

/**
 * For every selection of pieces, the cheapest shop cuts it can be cut from: fewest pieces left without cloth, then the
 * least cost, then the fewest cuts.
 */
final class ShopTable {

    private final Group group;
    private final Counts counts;
    private final List<Fronts> fronts;
    private final double[] costs;
    private final Bill[] bills;

    private ShopTable(Group group, Counts counts, List<Fronts> fronts) {
        this.group = group;
        this.counts = counts;
        this.fronts = fronts;
        this.costs = IntStream.range(0, group.shop().size()).mapToDouble(group::cost).toArray();
        this.bills = new Bill[counts.states()];
    }

    /**
     * What a selection costs, and how that comes about.
     *
     * @param unplaced pieces without cloth
     * @param cost of all cuts
     * @param cuts how many cuts
     * @param cut the shop cut its first piece is cut from, -1 if there is none for it
     * @param from what is cut from that
     */
    record Bill(int unplaced, double cost, int cuts, int cut, int from) {

        private static final Bill NOTHING = new Bill(0, 0, 0, -1, 0);

        /** Sums of prices are equal to within this part of them: doubles are no coins. */
        private static final double EQUAL = 1e-9;

        boolean lessThan(Bill other) {
            int less = Integer.compare(unplaced, other.unplaced);
            if (less == 0 && Math.abs(cost - other.cost) > EQUAL * Math.max(cost, other.cost)) {
                less = Double.compare(cost, other.cost);
            }
            return less < 0 || less == 0 && cuts < other.cuts;
        }
    }

    /**
     * Works it out; empty if patience ended first.
     *
     * @param fronts for each shop cut, the boxes of all selections as they may lie on it
     */
    static Optional<ShopTable> of(Group group, Counts counts, List<Fronts> fronts, Patience patience) {
        ShopTable table = new ShopTable(group, counts, fronts);
        int[] cheapest = new int[counts.states()];
        for (int state = 1; state < counts.states(); state++) {
            if (!patience.steps(Math.max(1, group.shop().size()))) {
                return Optional.empty();
            }
            cheapest[state] = table.cheapest(state);
        }
        table.bills[0] = Bill.NOTHING;
        for (int state = 1; state < counts.states(); state++) {
            if (!table.work(state, cheapest, patience)) {
                return Optional.empty();
            }
        }
        return Optional.of(table);
    }

    /** The cheapest cut that holds a whole selection, -1 if none does. */
    private int cheapest(int state) {
        Optional<String> name = Optional.empty();
        int cheapest = -1;
        for (int kin = 0; kin < counts.types(); kin++) {
            Optional<String> asked = group.kins().get(kin).name();
            if (counts.of(state, kin) > 0 && asked.isPresent()) {
                // One shop cut is one cloth.
                if (name.isPresent() && !name.equals(asked)) {
                    return -1;
                }
                name = asked;
            }
        }
        for (int cut = 0; cut < group.shop().size(); cut++) {
            if ((cheapest < 0 || costs[cut] < costs[cheapest]) && holds(cut, state)) {
                cheapest = cut;
            }
        }
        return cheapest;
    }

    private boolean holds(int cut, int state) {
        for (int kin = 0; kin < counts.types(); kin++) {
            if (counts.of(state, kin) > 0 && !group.kins().get(kin).shop().contains(cut)) {
                return false;
            }
        }
        Stock stock = group.shop().get(cut);
        return fronts.get(cut).fits(state, stock.widthMm() + group.kerf().besideMm() + Stock.SLACK_MM,
                stock.heightMm() + group.kerf().belowMm() + Stock.SLACK_MM);
    }

    private boolean work(int state, int[] cheapest, Patience patience) {
        int first = counts.one(counts.first(state));
        Bill others = bills[state - first];
        Bill[] best = {new Bill(others.unplaced() + 1, others.cost(), others.cuts(), -1, first)};
        // Or the first piece lies on some cut: go through all that may lie there with it.
        boolean inTime = counts.parts(state - first, with -> {
            int from = first + with;
            int cut = cheapest[from];
            if (cut >= 0) {
                Bill rest = bills[state - from];
                Bill bill = new Bill(rest.unplaced(), rest.cost() + costs[cut], rest.cuts() + 1, cut, from);
                if (bill.lessThan(best[0])) {
                    best[0] = bill;
                }
            }
            return patience.step();
        });
        bills[state] = best[0];
        return inTime;
    }

    Bill bill(int state) {
        return bills[state];
    }

    /**
     * One shop cut of a bill.
     *
     * @param cut which of the group's
     * @param selection what is cut from it
     */
    record Buy(int cut, int selection) {
    }

    /** The cuts of a selection's bill. */
    List<Buy> buys(int state) {
        List<Buy> buys = new ArrayList<>();
        for (int rest = state; rest != 0; rest -= bills[rest].from()) {
            if (bills[rest].cut() >= 0) {
                buys.add(new Buy(bills[rest].cut(), bills[rest].from()));
            }
        }
        return buys;
    }
}
