package kitleaf.sizing.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Plans all groups: exactly where that can be done in reasonable time, otherwise as well as it can in bounded time.
 */
final class Search {

    /** How many steps the exact search of one group may take. */
    private static final long EXACT_STEPS = 300_000_000;

    private Search() {
    }

    /** The plan of each group, in their order. */
    static List<GroupPlan> of(List<Group> groups, BooleanSupplier timeUp) {
        return groups.stream().map(group -> {
            Optional<GroupPlan> exact = ExactPlan.of(group, new Patience(EXACT_STEPS, timeUp));
            return exact.orElseThrow();
        }).toList();
    }
}
