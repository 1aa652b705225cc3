package kitleaf.sizing.thread;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Thread the stash does not give, in skeins, before whole ones are made of it.
 *
 * @param ofLot what has to be of one dye lot and no other, by lot; each above 0
 * @param ofAny what may be of any lot, 0 or more
 */
public record Missing(SortedMap<String, Double> ofLot, double ofAny) {

    /** Nothing is. */
    static final Missing NONE = new Missing(Collections.emptySortedMap(), 0);

    /** Copies the map; refuses amounts below nothing. */
    public Missing {
        ofLot = ofLot.isEmpty() ? Collections.emptySortedMap() : Collections.unmodifiableSortedMap(new TreeMap<>(ofLot));
        if (!(ofAny >= 0) || ofLot.values().stream().anyMatch(skeins -> !(skeins > 0))) {
            throw new IllegalArgumentException("no such amounts: " + ofLot + ", " + ofAny);
        }
    }

    /**
     * Skeins that are bought in one lot.
     *
     * @param lot the one to ask for; empty where any will do
     * @param skeins what is missing of it, above 0
     */
    public record OfLot(Optional<String> lot, double skeins) {

        /** Refuses to buy nothing. */
        public OfLot {
            Objects.requireNonNull(lot);
            if (!(skeins > 0)) {
                throw new IllegalArgumentException("nothing to buy: " + skeins);
            }
        }

        /** Whole skeins that hold it. */
        public long whole() {
            return Edge.roundUp(skeins);
        }
    }

    Missing plus(Missing other) {
        SortedMap<String, Double> both = new TreeMap<>(ofLot);
        other.ofLot.forEach((lot, skeins) -> both.merge(lot, skeins, Double::sum));
        return new Missing(both, ofAny + other.ofAny);
    }

    /** All of it. */
    public double skeins() {
        return ofLot.values().stream().mapToDouble(Double::doubleValue).sum() + ofAny;
    }

    /**
     * What is bought in each lot, by lot. What may be of any goes with the lot that it makes the fewest skeins with, so that no lot
     * more than need be is opened.
     */
    public List<OfLot> purchases() {
        if (ofLot.isEmpty()) {
            return ofAny > 0 ? List.of(new OfLot(Optional.empty(), ofAny)) : List.of();
        }
        String with = ofLot.keySet().stream()
                .min(Comparator.comparingLong(lot -> Edge.roundUp(ofLot.get(lot) + ofAny) - Edge.roundUp(ofLot.get(lot)))).orElseThrow();
        return ofLot.entrySet().stream()
                .map(entry -> new OfLot(Optional.of(entry.getKey()), entry.getValue() + (entry.getKey().equals(with) ? ofAny : 0)))
                        .toList();
    }

    /** The purchases for which a lot has to be asked. */
    public List<OfLot> asked() {
        return ofLot.isEmpty() ? List.of() : purchases();
    }

    /** Whole skeins to buy. */
    public long buy() {
        return purchases().stream().mapToLong(OfLot::whole).sum();
    }

    /** Whether {@link #buy()} hangs on a tenth of a skein of any lot: first whether one is only just enough. */
    Edge edge() {
        List<Edge> edges = purchases().stream().map(one -> Edge.of(one.skeins())).toList();
        return edges.contains(Edge.JUST_ENOUGH) ? Edge.JUST_ENOUGH : edges.contains(Edge.JUST_OVER) ? Edge.JUST_OVER : Edge.CLEAR;
    }
}
