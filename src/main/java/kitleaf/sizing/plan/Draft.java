package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A plan for a group in the making: cloths that are filled, and the pieces that are left. */
final class Draft {

    private final Group group;
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
     * @param numbers how many of each kin there are to plan
     */
    Draft(Group group, List<Integer> numbers) {
        this.group = group;
        this.left = numbers.stream().mapToInt(Integer::intValue).toArray();
    }

    /** The same with some of its cloths filled anew: what was cut from these very loads is cut as another plan says. */
    Draft with(List<Load> undone, Draft anew) {
        Draft draft = new Draft(group, numbers());
        Stream.concat(others(onHand, undone), anew.onHand.stream())
                .forEach(load -> draft.open(load.cloth(), load.filled(), load.numbers()));
        Stream.concat(others(bought, undone), anew.bought.stream())
                .forEach(load -> draft.buy(load.cloth(), load.filled(), load.numbers()));
        return draft;
    }

    /** By identity: to compare two loads is to walk through all that is cut from them, too deep a walk for calls within calls. */
    private static Stream<Load> others(List<Load> loads, List<Load> undone) {
        return loads.stream().filter(load -> undone.stream().noneMatch(it -> it == load));
    }

    /** Whether it is cut from a cloth on hand of this plan. */
    boolean onHand(Load load) {
        return onHand.stream().anyMatch(it -> it == load);
    }

    /** How many of each kin there are, planned or left. */
    private List<Integer> numbers() {
        return IntStream.range(0, left.length)
                .map(kin -> left[kin] + Stream.concat(onHand.stream(), bought.stream()).mapToInt(load -> load.numbers().get(kin)).sum()).boxed().toList();
    }

    /** The plan it has become. */
    GroupPlan plan(Proof proof) {
        return new GroupPlan(group, onHand.stream().sorted(Comparator.comparingInt(Load::cloth)).map(Load::filled).toList(),
                bought.stream().map(Load::filled).toList(), proof);
    }

    int left(int kin) {
        return left[kin];
    }

    /** How many pieces are left. */
    int left() {
        return Arrays.stream(left).sum();
    }

    /** Fills a cloth on hand. */
    void open(int cloth, Filled filled, List<Integer> numbers) {
        take(numbers);
        onHand.add(new Load(cloth, filled, numbers));
    }

    /** Buys a shop cut and fills it. */
    void buy(int cut, Filled filled, List<Integer> numbers) {
        take(numbers);
        bought.add(new Load(cut, filled, numbers));
    }

    private void take(List<Integer> numbers) {
        for (int kin = 0; kin < left.length; kin++) {
            left[kin] -= numbers.get(kin);
        }
    }

    List<Load> onHand() {
        return onHand;
    }

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

    boolean betterThan(Draft other) {
        ShopTable.Bill bill = new ShopTable.Bill(left(), cost(), bought.size(), -1, 0);
        ShopTable.Bill otherBill = new ShopTable.Bill(other.left(), other.cost(), other.bought.size(), -1, 0);
        return bill.lessThan(otherBill) || !otherBill.lessThan(bill) && outcome().betterThan(other.outcome());
    }
}
