package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitleaf.sizing.cutting.Patience;

/**
 * Betters a plan a few cloths at a time: what lies on two of its cloths, if it is little enough, is planned anew and
 * exactly, over and over until no two of them can be bettered.
 */
final class Windows {

    /** The most pairs of a selection and a part of it for one window: eleven pieces, no two alike, have 177147. */
    private static final double MOST_PAIRS = 1.8e5;

    /** The most pairs for all windows together: about a second's work. */
    private static final double ALL_PAIRS = 1e6;

    /** Kinds of pieces counted on two cloths for one step of patience. */
    private static final int KINS_A_STEP = 40;

    /** Steps for one window, some tenths of a second. */
    private static final long STEPS = 100_000_000;

    private final Group group;
    private final Patience patience;
    private double pairsLeft = ALL_PAIRS;

    Windows(Group group, Patience patience) {
        this.group = group;
        this.patience = patience;
    }

    Draft improved(Draft draft) {
        Draft best = draft;
        Optional<Draft> better = Optional.of(draft);
        while (better.isPresent()) {
            best = better.get();
            better = once(best);
        }
        return best;
    }

    /** The first improvement; bought cuts are looked at first, they cost money. */
    private Optional<Draft> once(Draft draft) {
        List<Draft.Load> loads = Stream.concat(draft.bought().stream(), draft.onHand().stream()).toList();
        for (int one = 0; one < loads.size(); one++) {
            for (int other = one + 1; other < loads.size(); other++) {
                if (!patience.steps(1 + group.kins().size() / KINS_A_STEP)) {
                    return Optional.empty();
                }
                Optional<Draft> better = anew(draft, List.of(loads.get(one), loads.get(other)));
                if (better.isPresent()) {
                    return better;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Draft> anew(Draft draft, List<Draft.Load> window) {
        List<Integer> numbers = IntStream.range(0, group.kins().size())
                .map(kin -> window.stream().mapToInt(load -> load.numbers().get(kin)).sum()).boxed().toList();
        double pairs = Counts.pairs(numbers);
        if (pairs > Math.min(MOST_PAIRS, pairsLeft)) {
            return Optional.empty();
        }
        pairsLeft -= pairs;
        List<Integer> cloths = new ArrayList<>(window.stream().filter(draft::onHand).map(Draft.Load::cloth).sorted().toList());
        return ExactPlan.of(group, numbers, cloths, patience.part(STEPS, Search.FINE)).map(anew -> draft.with(window, anew))
                .filter(found -> found.betterThan(draft));
    }
}
