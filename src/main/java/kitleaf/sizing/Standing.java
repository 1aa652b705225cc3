package kitleaf.sizing;

import java.util.List;
import java.util.Optional;
import kitleaf.basket.PieceState;
import kitleaf.basket.Progress;
import kitleaf.basket.SaidState;

/**
 * How a piece stands: what its days and stitches tell, or what she said last. A sitting after the day she laid it aside is taking it up
 * again; a reading is not.
 */
public final class Standing {

    private Standing() {
    }

    /** How a piece of this progress and this tally stands. */
    public static PieceState of(Progress progress, StitchTally tally) {
        boolean begun = tally.done() > 0 || progress.begun();
        if (progress.finished().isPresent()) {
            return PieceState.MADE_UP;
        }
        if (progress.stitched().isPresent() || begun && tally.left() == 0) {
            return PieceState.STITCHED;
        }
        return last(progress.states()).filter(said -> progress.log().stream().noneMatch(entry -> entry.on().isAfter(said.on())))
                .map(SaidState::is).orElse(begun ? PieceState.BEGUN : PieceState.WAITING);
    }

    private static Optional<SaidState> last(List<SaidState> states) {
        return states.isEmpty() ? Optional.empty() : Optional.of(states.get(states.size() - 1));
    }
}
