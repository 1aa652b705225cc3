package kitleaf.sizing.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import kitleaf.sizing.cutting.Patience;

/**
 * Plans all groups: exactly where that can be done in reasonable time, otherwise as well as can be in bounded time.
 */
final class Search {

    /** The most pairs of a selection and a part of it gone through: twelve pieces, no two alike, have half a million. */
    private static final double EXACT_PAIRS = 6e5;

    /** How many of its steps the exact search of one group may take: some seconds. */
    private static final long EXACT_STEPS = 400_000_000;

    /** Steps of the exact search, which looks at two numbers in each, that are the work of one step of the others. */
    static final long FINE = 100;

    private Search() {
    }

    /** The plan of each group, in their order. The easy ones are planned first, so that a hard one takes no time from them. */
    static List<GroupPlan> of(List<Group> groups, Patience patience) {
        GroupPlan[] plans = new GroupPlan[groups.size()];
        IntStream.range(0, plans.length).boxed()
                .sorted(Comparator.comparingDouble(group -> Counts.pairs(groups.get(group).numbers())))
                .forEach(group -> plans[group] = plan(groups.get(group), patience));
        return List.of(plans);
    }

    private static GroupPlan plan(Group group, Patience patience) {
        List<Integer> cloths = IntStream.range(0, group.onHand().size()).boxed().toList();
        Optional<Draft> exact = Counts.pairs(group.numbers()) <= EXACT_PAIRS
                ? ExactPlan.of(group, group.numbers(), cloths, patience.part(EXACT_STEPS, FINE)) : Optional.empty();
        return exact.map(draft -> draft.plan(Proof.optimal(draft.cost(), draft.outcome()))).orElseGet(() -> BoundedPlan.of(group, patience));
    }
}
