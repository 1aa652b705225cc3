package kitleaf.sizing.year;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What would bring a late piece in by its date, the other dated pieces that are in time staying so.
 *
 * @param moreHoursPerWeek how many more hours a week from now on; empty when no week has enough
 * @param instead the piece that would have to be dropped for it, by ID: the lightest that is enough, and never a must-have; empty when
 *        none is
 */
public record Rescue(OptionalDouble moreHoursPerWeek, Optional<String> instead) {

    /** Refuses hours below 0. */
    public Rescue {
        Objects.requireNonNull(instead);
        if (!(moreHoursPerWeek.orElse(0) >= 0)) {
            throw new IllegalArgumentException("no such hours: " + moreHoursPerWeek);
        }
    }
}
