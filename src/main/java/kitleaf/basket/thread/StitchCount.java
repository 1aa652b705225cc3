package kitleaf.basket.thread;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * So many stitches of one kind in one thread.
 *
 * @param kind the stitch
 * @param count how many, 0 or more
 * @param worked how crosses are worked; only for {@link StitchKind#CROSS}
 * @param span cloth threads each one spans; only for {@link StitchKind#SATIN}
 * @param eachMm thread each one takes, in millimetres; for {@link StitchKind#OTHER}, and only there
 */
public record StitchCount(StitchKind kind, int count, Optional<Worked> worked, OptionalInt span, OptionalDouble eachMm) {

    /** How crosses are worked. */
    public enum Worked {
        /** All first legs of a row, then all second legs coming back. */
        ROWS,
        /** Each cross finished before the next. */
        SINGLY
    }

    /** Refuses a negative count and details that do not belong to the kind. */
    public StitchCount {
        Objects.requireNonNull(kind);
        if (count < 0) {
            throw new IllegalArgumentException("count must be 0 or more: " + count);
        }
        if ((worked.isPresent() && kind != StitchKind.CROSS)
                || (span.isPresent() && kind != StitchKind.SATIN)
                || (eachMm.isPresent() != (kind == StitchKind.OTHER))) {
            throw new IllegalArgumentException("detail does not belong to " + kind);
        }
    }

    /** So many plain stitches of a kind other than {@link StitchKind#OTHER}. */
    public static StitchCount of(StitchKind kind, int count) {
        return new StitchCount(kind, count, Optional.empty(), OptionalInt.empty(), OptionalDouble.empty());
    }
}
