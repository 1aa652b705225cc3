package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** A plan for a group, and how it is made: cloths that are filled one after the other, and the pieces that are left. */
final class Draft {

    private final Group group;
    private final boolean optimal;
    private final int[] left;
    private final List<Load> onHand = new ArrayList<>();
    private final List<Load> bought = new ArrayList<>();

    /**
     * A filled cloth.
     *
     * @param cloth which of the group's cloths on hand, or which of its shop cuts
     * @param filled how it is cut
     * @param numbers how many of each kin are cut from it
     */
    record Load(int cloth, Filled filled, List<Integer> numbers) {

        /** How many pieces are cut from it. */
        int pieces() {
            return numbers.stream().mapToInt(Integer::intValue).sum();
        }
    }

    /**
     * Nothing planned yet.
     *
     * @param optimal whether it is proved that what it is to become is the best
     */
    Draft(Group group, boolean optimal) {
        this.group = group;
        this.optimal = optimal;
        this.left = group.numbers().stream().mapToInt(Integer::intValue).toArray();
    }

    Group group() {
        return group;
    }

    int left(int kin) {
        return left[kin];
    }

    /** Fills a cloth on hand. */
    void open(Load load) {
        take(load);
        onHand.add(load);
        onHand.sort(Comparator.comparingInt(Load::cloth));
    }

    /** Buys a shop cut and fills it. */
    void buy(Load load) {
        take(load);
        bought.add(load);
    }

    private void take(Load load) {
        for (int kin = 0; kin < left.length; kin++) {
            left[kin] -= load.numbers().get(kin);
        }
    }

    /** Which cloths on hand are opened, in the basket's order. */
    List<Load> onHand() {
        return onHand;
    }

    /** The shop cuts. */
    List<Load> bought() {
        return bought;
    }

    double cost() {
        return bought.stream().mapToDouble(load -> group.cost(load.cloth())).sum();
    }

    /** The largest usable rectangle of each cloth on hand, opened or not. */
    Outcome outcome() {
        Outcome outcome = Outcome.NOTHING;
        for (int cloth = 0; cloth < group.onHand().size(); cloth++) {
            int number = cloth;
            Filled filled = onHand.stream().filter(load -> load.cloth() == number).map(Load::filled).findFirst()
                    .orElseGet(() -> Filled.untouched(group.onHand().get(number), group.kerf()));
            outcome = outcome.with(onHand.stream().anyMatch(load -> load.cloth() == number), filled.remnantMm2(group.kerf()));
        }
        return outcome;
    }

    /** What it comes to. */
    Proof proof() {
        Outcome outcome = outcome();
        return new Proof(optimal, cost(), outcome.cloths(), outcome.largestMm2());
    }

    boolean betterThan(Draft other) {
        ShopTable.Bill bill = bill();
        ShopTable.Bill otherBill = other.bill();
        return bill.lessThan(otherBill) || !otherBill.lessThan(bill) && outcome().betterThan(other.outcome());
    }

    private ShopTable.Bill bill() {
        return new ShopTable.Bill(Arrays.stream(left).sum(), cost(), bought.size(), -1, 0);
    }
}
