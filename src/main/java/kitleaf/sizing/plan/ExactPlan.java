package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitleaf.sizing.plan.search.Counts;
import kitleaf.sizing.plan.search.Patience;

/**
 * The best plan for a group, found by going through every way to share its pieces out between the cloths on hand and the
 * shop: for each selection of pieces, what it leaves of each cloth and what it costs in the shop are known, and the best
 * way to share a selection out among several cloths follows from those of its parts.
 */
final class ExactPlan {

    private final Group group;
    private final Counts counts;
    private final Patience patience;

    private ExactPlan(Group group, Patience patience) {
        this.group = group;
        this.counts = Counts.of(group.numbers());
        this.patience = patience;
    }

    /** What the first cloths on hand make of each selection, and what of it is cut from the last of them. */
    private record Shared(Outcome[] outcomes, int[] onLast) {
    }

    /** Finds it; empty if patience ended first. */
    static Optional<Draft> of(Group group, Patience patience) {
        return new ExactPlan(group, patience).find();
    }

    /** The cloths on hand, then the shop cuts. */
    private List<Stock> stocks() {
        return Stream.concat(group.onHand().stream(), group.shop().stream()).toList();
    }

    private Optional<Draft> find() {
        Map<Boolean, Fronts> fronts = new HashMap<>();
        for (Stock stock : stocks()) {
            if (!fronts.containsKey(stock.turning())) {
                Optional<Fronts> found = fronts(stock.turning());
                if (found.isEmpty()) {
                    return Optional.empty();
                }
                fronts.put(stock.turning(), found.get());
            }
        }
        List<StockTable> tables = new ArrayList<>();
        for (Stock stock : group.onHand()) {
            Optional<StockTable> table = StockTable.of(stock, fronts.get(stock.turning()), group.kerf(), patience);
            if (table.isEmpty()) {
                return Optional.empty();
            }
            tables.add(table.get());
        }
        List<Fronts> inShop = group.shop().stream().map(stock -> fronts.get(stock.turning())).toList();
        return ShopTable.of(group, counts, inShop, patience)
                .flatMap(shop -> share(tables).flatMap(shared -> choose(tables, shared, shop)));
    }

    private Optional<Fronts> fronts(boolean turning) {
        List<Stock> stocks = stocks().stream().filter(stock -> stock.turning() == turning).toList();
        return Fronts.of(counts, group.shapes(turning),
                stocks.stream().mapToDouble(Stock::widthMm).max().orElse(0) + group.kerf().besideMm() + Stock.SLACK_MM,
                stocks.stream().mapToDouble(Stock::heightMm).max().orElse(0) + group.kerf().belowMm() + Stock.SLACK_MM, patience);
    }

    /** Shares every selection out among the first cloth, the first two, and so on. */
    private Optional<List<Shared>> share(List<StockTable> tables) {
        List<Shared> shared = new ArrayList<>();
        Outcome[] before = new Outcome[counts.states()];
        before[0] = Outcome.NOTHING;
        for (int cloth = 0; cloth < tables.size(); cloth++) {
            StockTable table = tables.get(cloth);
            Outcome[] last = before;
            Outcome[] outcomes = new Outcome[counts.states()];
            int[] onLast = new int[counts.states()];
            boolean[] allowed = allowed(cloth);
            for (int state = 0; state < counts.states(); state++) {
                int whole = state;
                boolean inTime = counts.parts(state, part -> {
                    if (last[whole - part] != null && allowed[part] && table.best(part) >= 0) {
                        Outcome outcome = last[whole - part].with(part != 0, table.best(part));
                        if (outcomes[whole] == null || outcome.betterThan(outcomes[whole])) {
                            outcomes[whole] = outcome;
                            onLast[whole] = part;
                        }
                    }
                    return patience.step();
                });
                if (!inTime) {
                    return Optional.empty();
                }
            }
            shared.add(new Shared(outcomes, onLast));
            before = outcomes;
        }
        return Optional.of(shared);
    }

    /** Which selections hold only pieces that may be cut from a cloth on hand. */
    private boolean[] allowed(int cloth) {
        boolean[] allowed = new boolean[counts.states()];
        for (int state = 0; state < allowed.length; state++) {
            int selection = state;
            allowed[state] = IntStream.range(0, counts.types())
                    .allMatch(kin -> counts.of(selection, kin) == 0 || group.kins().get(kin).onHand().contains(cloth));
        }
        return allowed;
    }

    private Optional<Draft> choose(List<StockTable> tables, List<Shared> shared, ShopTable shop) {
        int best = -1;
        for (int state = 0; state < counts.states(); state++) {
            if (outcome(shared, state) != null && (best < 0 || better(shared, shop, state, best))) {
                best = state;
            }
        }
        Draft draft = new Draft(group, true);
        open(draft, tables, shared, best);
        return buy(draft, shop.buys(counts.all() - best)) ? Optional.of(draft) : Optional.empty();
    }

    private boolean better(List<Shared> shared, ShopTable shop, int state, int other) {
        ShopTable.Bill bill = shop.bill(counts.all() - state);
        ShopTable.Bill otherBill = shop.bill(counts.all() - other);
        return bill.lessThan(otherBill)
                || !otherBill.lessThan(bill) && outcome(shared, state).betterThan(outcome(shared, other));
    }

    private Outcome outcome(List<Shared> shared, int state) {
        return shared.isEmpty() ? (state == 0 ? Outcome.NOTHING : null) : shared.get(shared.size() - 1).outcomes()[state];
    }

    private void open(Draft draft, List<StockTable> tables, List<Shared> shared, int selection) {
        int rest = selection;
        for (int cloth = shared.size() - 1; cloth >= 0; cloth--) {
            int here = shared.get(cloth).onLast()[rest];
            if (here != 0) {
                Filled filled = new Filled(group.onHand().get(cloth), tables.get(cloth).parts(here));
                draft.open(new Draft.Load(cloth, filled, counts.numbers(here)));
            }
            rest -= here;
        }
    }

    /** Buys shop cuts, each cut so that the largest rectangle stays of it, too; false if patience ended first. */
    private boolean buy(Draft draft, List<ShopTable.Buy> buys) {
        for (ShopTable.Buy buy : buys) {
            List<Integer> numbers = counts.numbers(buy.selection());
            Optional<Filled> filled = StockTable.filled(group, group.shop().get(buy.cut()), numbers, patience);
            if (filled.isEmpty()) {
                return false;
            }
            draft.buy(new Draft.Load(buy.cut(), filled.get(), numbers));
        }
        return true;
    }
}
