package kitleaf.sizing.year;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One figure of her pace, and where it comes from.
 *
 * @param figure above 0; empty when nothing tells it
 * @param from where it comes from, or why there is none
 */
public record PaceFigure(OptionalDouble figure, From from) {

    /** Where a figure comes from, or why there is none. */
    public enum From {
        /** She said so. */
        STATED,
        /** Reckoned from the logs. */
        LOGGED,
        /** Not said, and no piece has a log up to the day looked from. */
        NO_LOG,
        /** Not said, and the logs tell hours but never stitches. */
        NO_STITCHES
    }

    /** Refuses a figure without a source and a source without a figure. */
    public PaceFigure {
        Objects.requireNonNull(from);
        if (figure.isPresent() != (from == From.STATED || from == From.LOGGED) || !(figure.orElse(1) > 0)) {
            throw new IllegalArgumentException("no such figure: " + figure + ", " + from);
        }
    }

    static PaceFigure none(From why) {
        return new PaceFigure(OptionalDouble.empty(), why);
    }

    static PaceFigure of(double figure, From from) {
        return new PaceFigure(OptionalDouble.of(figure), from);
    }
}
