package kitleaf.basket;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What she says of her own pace; what she does not say is reckoned from her logs.
 *
 * @param stitchesPerHour plain crosses an hour, above 0
 * @param hoursPerWeek hours at the hoop in a usual week, above 0 to {@value #MOST_HOURS}
 */
public record Pace(OptionalDouble stitchesPerHour, OptionalDouble hoursPerWeek) {

    /** The hours of a week. */
    public static final double MOST_HOURS = 168;

    /** Nothing said. */
    public static final Pace UNSAID = new Pace(OptionalDouble.empty(), OptionalDouble.empty());

    /** Refuses figures nobody stitches at. */
    public Pace {
        Objects.requireNonNull(stitchesPerHour);
        Objects.requireNonNull(hoursPerWeek);
        if (!(stitchesPerHour.orElse(1) > 0) || !(hoursPerWeek.orElse(1) > 0 && hoursPerWeek.orElse(1) <= MOST_HOURS)) {
            throw new IllegalArgumentException("no such pace: " + stitchesPerHour + ", " + hoursPerWeek);
        }
    }
}
