package kitleaf.sizing.thread;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import kitleaf.basket.Piece;
import kitleaf.basket.thread.PutUp;

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
     * What a piece still needs of one thread, in skeins.
     *
     * @param all of it
     * @param ofLot what of it is to come from one lot and no other, by lot
     * @param ofAny the rest, which any lot may serve
     * @param named lots the piece names for this thread, whether others may serve or not
     */
    record Demand(Estimate all, SortedMap<String, Estimate> ofLot, Estimate ofAny, Set<String> named) {

        /** So much, of any lot. */
        static Demand ofAny(Estimate skeins, Set<String> named) {
            return new Demand(skeins, Collections.emptySortedMap(), skeins, named);
        }
    }

    /**
     * The share of the piece whose turn it is. What is to be of one lot comes from that lot alone. The rest, where the dye lot
     * matters, comes from one lot if any one covers it: the lot named in the chart before others, then the smallest that does, so
     * that great lots stay whole. If none covers it, the named lot and then the greatest are drawn first, so that few lots meet.
     * Where it does not matter, the named lot is drawn first and then the stash as written.
     */
    StashShare next(String piece, Demand demand) {
        Map<StashLot, Double> drawn = new LinkedHashMap<>();
        SortedMap<String, Double> asked = new TreeMap<>();
        demand.ofLot().forEach((name, need) -> {
            List<StashLot> its = lots.stream().filter(lot -> lot.lot().filter(name::equals).isPresent()).toList();
            double rest = draw(ThreadTotal.deciding(need, putUp), its, drawn);
            if (rest > Edge.SLACK) {
                asked.put(name, rest);
            }
        });
        double wanted = ThreadTotal.deciding(demand.ofAny(), putUp);
        double rest = draw(wanted, turns(wanted, demand.named()), drawn);
        List<StashShare.Drawn> taken = drawn.entrySet().stream()
                .map(entry -> new StashShare.Drawn(entry.getKey().entry(), entry.getKey().lot(), entry.getValue())).toList();
        return new StashShare(piece, demand.all(), ThreadTotal.deciding(demand.all(), putUp), taken, new Missing(asked, rest),
                putUp.lotMatters() && lots(taken, rest, demand.named()) > 1);
    }

    /** Draws so much from lots, one after the other, and says what they did not give. */
    private static double draw(double skeins, List<StashLot> from, Map<StashLot, Double> drawn) {
        double rest = skeins;
        for (StashLot lot : from) {
            // The last bits of double arithmetic are not worth a lot of their own.
            double taken = rest > Edge.SLACK ? lot.draw(rest) : 0;
            if (taken > 0) {
                drawn.merge(lot, taken, Double::sum);
                rest = Math.max(0, rest - taken);
            }
        }
        return rest;
    }

    /** Whether any thread is left in the stash. */
    boolean someLeft() {
        return lots.stream().anyMatch(lot -> lot.leftSkeins() > Edge.SLACK);
    }

    private List<StashLot> turns(double wanted, Set<String> named) {
        Comparator<StashLot> namedFirst = Comparator.comparing(lot -> lot.lot().filter(named::contains).isEmpty());
        if (!putUp.lotMatters()) {
            return lots.stream().sorted(namedFirst.thenComparing(AS_WRITTEN)).toList();
        }
        Optional<StashLot> whole = lots.stream().filter(lot -> lot.covers(wanted)).min(namedFirst.thenComparing(LEAST_FIRST));
        return whole.map(List::of).orElseGet(() -> lots.stream().sorted(namedFirst.thenComparing(MOST_FIRST)).toList());
    }

    /** How many lots meet in a piece: those drawn, those it names, and what is bought that may be of any. */
    private static int lots(List<StashShare.Drawn> drawn, double rest, Set<String> named) {
        if (drawn.isEmpty()) {
            return 0;
        }
        Set<Object> meeting = new HashSet<>(named);
        drawn.forEach(one -> meeting.add(one.lot().<Object>map(lot -> lot).orElse(one.entry())));
        return meeting.size() + (rest > Edge.SLACK ? 1 : 0);
    }
}
