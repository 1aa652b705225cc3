package kitleaf.sizing.year;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.PutUp;
import kitleaf.basket.thread.StitchCount;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.StitchTally;
import kitleaf.sizing.thread.Cell;
import kitleaf.sizing.thread.ThreadNeed;
import kitleaf.sizing.thread.ThreadPath;

/**
 * What is still to do on a piece, in plain crosses.
 *
 * <p>Assumptions, all without a source: a stitch takes time as it takes thread, so that one whose path is twice a cross's
 * is two crosses of work; the path is measured in crosses worked in rows on the piece's own main cell. A stitch over
 * fewer threads than the main one takes less thread but no less time, since each is a stitch of the hand: it is never
 * less than one cross. What is left costs, stitch for stitch, what the whole does. Starting, ending and unpicking are
 * in the pace already, as far as she logs them.
 *
 * @param crossesPerStitch what one stitch of the piece is worth on average, above 0
 * @param crossesLeft what is still to do, 0 or more
 * @param byPath whether the thread path was known; otherwise each stitch counts as one cross
 */
public record Effort(double crossesPerStitch, double crossesLeft, boolean byPath) {

    /** Refuses work below nothing. */
    public Effort {
        if (!(crossesPerStitch > 0) || !(crossesLeft >= 0)) {
            throw new IllegalArgumentException("no such effort: " + crossesPerStitch + ", " + crossesLeft);
        }
    }

    /** What is still to do on a piece. One thread of unknown need makes each stitch count as one cross. */
    static Effort of(PieceReckoning reckoned) {
        Piece piece = reckoned.piece();
        Cell main = Cell.of(piece.cloth(), piece.cloth().over());
        double stitches = 0;
        double crosses = 0;
        for (ThreadNeed need : needs(piece)) {
            if (!(need instanceof ThreadNeed.Known known)) {
                return plain(reckoned.tally());
            }
            stitches += known.stitches();
            crosses += crosses(known, main);
        }
        // Shares need not add up to the whole: they tell what a stitch is worth, the tally how many there are.
        return stitches > 0 && crosses > 0
                ? new Effort(crosses / stitches, reckoned.tally().left() * (crosses / stitches), true) : plain(reckoned.tally());
    }

    /** Hours at so many plain crosses an hour, above 0. */
    public double hours(double stitchesPerHour) {
        return crossesLeft / stitchesPerHour;
    }

    private static Effort plain(StitchTally tally) {
        return new Effort(1, tally.left(), false);
    }

    private static double crosses(ThreadNeed.Known need, Cell main) {
        double crossMm = ThreadPath.crossInRowsMm(main);
        double least = need.cell().edgeMm() < main.edgeMm() ? 1 : 0;
        if (need.thread().stitches().isEmpty()) {
            return need.stitches() * Math.max(least, ThreadPath.crossInRowsMm(need.cell()) / crossMm);
        }
        double sum = 0;
        for (StitchCount one : need.thread().stitches()) {
            sum += one.count() * Math.max(least, ThreadPath.oneMm(one, need.cell()) / crossMm);
        }
        return sum;
    }

    private static List<ThreadNeed> needs(Piece piece) {
        // How a thread is sold does not change its path.
        List<ThreadNeed> needs = new ArrayList<>();
        for (CalledThread thread : piece.threads()) {
            needs.add(ThreadNeed.of(piece, Optional.empty(), thread, PutUp.COTTON));
        }
        for (Part part : piece.parts()) {
            for (CalledThread thread : part.threads()) {
                needs.add(ThreadNeed.of(piece, Optional.of(part), thread, PutUp.COTTON));
            }
        }
        return needs;
    }
}
