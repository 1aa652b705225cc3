package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitleaf.sizing.plan.search.Counts;
import kitleaf.sizing.plan.search.Front;
import kitleaf.sizing.plan.search.Patience;

/**
 * For every selection of pieces, the largest rectangles that stay whole when it is cut from one rectangle of cloth.
 *
 * <p>In any way of cutting from edge to edge, the rectangle that stays whole is what is left after blocks were cut off
 * at a side, one after the other; each may as well be as narrow (or as low) as its pieces allow, and stand at the left
 * (or on top). So the rectangles a selection leaves follow from those of its parts: all of them are kept, but for those
 * that fit into another.
 */
final class Leftovers {

    private final Fronts fronts;
    private final List<List<Rest>> rests;

    private Leftovers(Fronts fronts, List<List<Rest>> rests) {
        this.fronts = fronts;
        this.rests = rests;
    }

    /** What stays whole, and the step before it: which block was cut off which rest. */
    private record Rest(double widthMm, double heightMm, Rest before, int block, EdgeCut.Run run) {

        double usableMm2(Kerf kerf) {
            return kerf.usableMm2(widthMm, heightMm);
        }
    }

    /**
     * Works out what every selection leaves.
     *
     * @param widthMm the cloth's width, the kerf added
     * @param heightMm the cloth's height, the kerf added
     * @return empty if patience ended first
     */
    static Optional<Leftovers> of(Fronts fronts, double widthMm, double heightMm, Patience patience) {
        Counts counts = fronts.counts();
        List<List<Rest>> rests = new ArrayList<>();
        rests.add(List.of(new Rest(widthMm, heightMm, null, 0, EdgeCut.Run.DOWN)));
        for (int state = 1; state < counts.states(); state++) {
            List<Rest> found = new ArrayList<>();
            int whole = state;
            // What does not fit as one block cannot be cut off block by block either.
            boolean inTime = !fronts.fits(state, widthMm + Stock.SLACK_MM, heightMm + Stock.SLACK_MM) || counts.parts(state, part -> {
                for (Rest before : part == whole ? List.<Rest>of() : rests.get(part)) {
                    cutOff(before, fronts.of(whole - part), whole - part, found);
                }
                return patience.steps(1 + (part == whole ? 0 : rests.get(part).size()));
            });
            if (!inTime) {
                return Optional.empty();
            }
            rests.add(found);
        }
        return Optional.of(new Leftovers(fronts, rests));
    }

    private static void cutOff(Rest rest, Front front, int block, List<Rest> found) {
        double width = front.leastWidth(rest.heightMm() + Stock.SLACK_MM);
        if (width <= rest.widthMm() + Stock.SLACK_MM) {
            add(found, new Rest(Math.max(0, rest.widthMm() - width), rest.heightMm(), rest, block, EdgeCut.Run.DOWN));
        }
        double height = front.leastHeight(rest.widthMm() + Stock.SLACK_MM);
        if (height <= rest.heightMm() + Stock.SLACK_MM) {
            add(found, new Rest(rest.widthMm(), Math.max(0, rest.heightMm() - height), rest, block, EdgeCut.Run.ACROSS));
        }
    }

    private static void add(List<Rest> found, Rest rest) {
        for (Rest other : found) {
            if (other.widthMm() >= rest.widthMm() && other.heightMm() >= rest.heightMm()) {
                return;
            }
        }
        found.removeIf(other -> other.widthMm() <= rest.widthMm() && other.heightMm() <= rest.heightMm());
        found.add(rest);
    }

    /** The area of the largest usable rectangle a selection leaves, 0 if none is usable, -1 if the selection does not fit. */
    double best(int state, Kerf kerf) {
        return rests.get(state).stream().mapToDouble(rest -> rest.usableMm2(kerf)).max().orElse(-1);
    }

    /** How to cut a selection that fits, so that the largest usable rectangle stays. */
    List<Filled.Step> steps(int state, Kerf kerf) {
        Rest best = rests.get(state).stream().max(Comparator.comparingDouble((Rest rest) -> rest.usableMm2(kerf))
                .thenComparingDouble(rest -> rest.widthMm() * rest.heightMm())).orElseThrow();
        List<Filled.Step> steps = new ArrayList<>();
        for (Rest rest = best; rest.before() != null; rest = rest.before()) {
            double width = rest.before().widthMm() + Stock.SLACK_MM;
            double height = rest.before().heightMm() + Stock.SLACK_MM;
            double narrowest = rest.run() == EdgeCut.Run.DOWN ? fronts.of(rest.block()).leastWidth(height) : width;
            steps.add(new Filled.Step(rest.run(), fronts.block(rest.block(), narrowest, height)));
        }
        Collections.reverse(steps);
        return steps;
    }
}
