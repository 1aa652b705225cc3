package kitleaf.basket.reader;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import kitleaf.basket.Goals;
import kitleaf.basket.place.Advice;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.words.Said;

/**
 * What came of reading the goals, before anyone knows which pieces there are.
 *
 * @param goals what she wants, if it could be read
 * @param named where each piece she named stands, by its ID, in her order
 */
record NamedGoals(Optional<Goals> goals, Map<String, Place> named) {

    /** No wish spoken. */
    static final NamedGoals NONE = new NamedGoals(Optional.empty(), Map.of());

    NamedGoals {
        named = Collections.unmodifiableMap(new LinkedHashMap<>(named));
    }

    /** Tells of named pieces that are not among those there are. */
    void check(Collection<String> ids, Problems problems) {
        named.forEach((id, place) -> {
            if (!ids.contains(id)) {
                problems.add(place, Fault.of(Said.of("goals.no-piece", Quote.bare(id)), Advice.on(id, ids)));
            }
        });
    }
}
