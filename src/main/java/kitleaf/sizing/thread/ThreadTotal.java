package kitleaf.sizing.thread;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.thread.PutUp;

/**
 * All a piece takes of one thread in one put-up, in the piece itself and in its parts.
 *
 * @param code what stands on the skein
 * @param putUp how it is sold
 * @param needs where it is worked, in the order of the chart; at least one
 */
public record ThreadTotal(String code, PutUp putUp, List<ThreadNeed> needs) {

    /** Copies the list; refuses an empty one. */
    public ThreadTotal {
        Objects.requireNonNull(code);
        Objects.requireNonNull(putUp);
        needs = List.copyOf(needs);
        if (needs.isEmpty()) {
            throw new IllegalArgumentException("no needs of " + code);
        }
    }

    /** Whether every need of it is known; one unknown part makes the whole unknown. */
    public boolean known() {
        return needs.stream().allMatch(ThreadNeed.Known.class::isInstance);
    }

    /** Single plies for the whole piece, in millimetres; empty when not {@link #known()}. */
    public Optional<Estimate> plyLengthMm() {
        return known() ? Optional.of(needs.stream().map(need -> ((ThreadNeed.Known) need).plyLengthMm())
                .reduce(Estimate.NONE, Estimate::plus)) : Optional.empty();
    }

    /** The same in skeins: ply length / (skein length x plies). */
    public Optional<Estimate> skeins() {
        return plyLengthMm().map(mm -> mm.times(1 / (putUp.lengthMm() * putUp.plies())));
    }

    /**
     * The figure skeins are bought by: the high one where the dye lot matters, since no more of it may be had later; else the likely
     * one.
     */
    static double deciding(Estimate skeins, PutUp putUp) {
        return putUp.lotMatters() ? skeins.high() : skeins.likely();
    }

    /** Whole skeins for the whole piece, from an empty stash; empty when not {@link #known()}. */
    public Optional<Long> buy() {
        return skeins().map(skeins -> Edge.roundUp(deciding(skeins, putUp)));
    }

    /** Whether {@link #buy()} hangs on a tenth of a skein; {@link Edge#CLEAR} when not {@link #known()}. */
    public Edge edge() {
        return skeins().map(skeins -> Edge.of(deciding(skeins, putUp))).orElse(Edge.CLEAR);
    }
}
