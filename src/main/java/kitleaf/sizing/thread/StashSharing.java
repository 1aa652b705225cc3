package kitleaf.sizing.thread;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitleaf.basket.Piece;
import kitleaf.basket.PutUp;

/** Shares the stash of one thread among the pieces that call for it: each in its turn, and no thread twice. */
final class StashSharing {

    /**
     * Whose turn it is: first the piece due earliest, those without a date last; then those that must be finished; then
     * the one started earliest, those not started last; then by ID.
     */
    static final Comparator<Piece> TURNS = Comparator
            .comparing((Piece piece) -> piece.goal().by().orElse(LocalDate.MAX))
            .thenComparing(piece -> !piece.goal().must())
            .thenComparing(piece -> piece.progress().started().orElse(LocalDate.MAX))
            .thenComparing(Piece::id);

    private static final Comparator<StashLot> AS_WRITTEN = Comparator.comparingInt(StashLot::entry);
    private static final Comparator<StashLot> LEAST_FIRST = Comparator.comparingDouble(StashLot::leftSkeins).thenComparing(AS_WRITTEN);
    private static final Comparator<StashLot> MOST_FIRST =
            Comparator.comparingDouble(StashLot::leftSkeins).reversed().thenComparing(AS_WRITTEN);

    private final PutUp putUp;
    private final List<StashLot> lots;

    StashSharing(PutUp putUp, List<StashLot> lots) {
        this.putUp = putUp;
        this.lots = lots;
    }

    /**
     * The share of the piece whose turn it is. Where the dye lot matters it comes from one lot if any one covers it: the
     * lot named in the chart before others, then the smallest that does, so that great lots stay whole. If none covers it,
     * the named lot and then the greatest are drawn first, so that few lots meet. Where it does not matter, the named lot
     * is drawn first and then the stash as written.
     *
     * @param need in skeins, for what is still to be stitched
     * @param named lots the piece names for this thread
     */
    StashShare next(String piece, Estimate need, Set<String> named) {
        double wanted = ThreadTotal.deciding(need, putUp);
        List<StashShare.Drawn> drawn = new ArrayList<>();
        double rest = wanted;
        for (StashLot lot : turns(wanted, named)) {
            // The last bits of double arithmetic are not worth a lot of their own.
            double taken = rest > Edge.SLACK ? lot.draw(rest) : 0;
            if (taken > 0) {
                drawn.add(new StashShare.Drawn(lot.entry(), lot.lot(), taken));
                rest = Math.max(0, rest - taken);
            }
        }
        return new StashShare(piece, need, wanted, drawn, rest, putUp.lotMatters() && lots(drawn, rest, named) > 1);
    }

    private List<StashLot> turns(double wanted, Set<String> named) {
        Comparator<StashLot> namedFirst = Comparator.comparing(lot -> lot.lot().filter(named::contains).isEmpty());
        if (!putUp.lotMatters()) {
            return lots.stream().sorted(namedFirst.thenComparing(AS_WRITTEN)).toList();
        }
        Optional<StashLot> whole = lots.stream().filter(lot -> lot.covers(wanted)).min(namedFirst.thenComparing(LEAST_FIRST));
        return whole.map(List::of).orElseGet(() -> lots.stream().sorted(namedFirst.thenComparing(MOST_FIRST)).toList());
    }

    /** How many lots meet in a piece: those drawn, those it names, and what is bought, which may be of any. */
    private static int lots(List<StashShare.Drawn> drawn, double rest, Set<String> named) {
        if (drawn.isEmpty()) {
            return 0;
        }
        Set<Object> meeting = new HashSet<>(named);
        drawn.forEach(one -> meeting.add(one.lot().<Object>map(lot -> lot).orElse(one.entry())));
        return meeting.size() + (rest > Edge.SLACK ? 1 : 0);
    }
}
