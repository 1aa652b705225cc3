package kitleaf.sizing.year;

import java.util.Objects;
import java.util.OptionalDouble;
import kitleaf.sizing.PieceReckoning;

/**
 * A piece that was not chosen.
 *
 * @param reckoning what is reckoned of it
 * @param hoursLeft what is still to do; empty without a pace
 * @param why it was not
 */
public record PassedOver(PieceReckoning reckoning, OptionalDouble hoursLeft, Why why) {

    /** Why a piece was not chosen. */
    public enum Why {
        /** It takes more hours than are left beside the must-haves. */
        DOES_NOT_FIT,
        /** It fits, but other pieces make more of the hours, or as many as she wanted are chosen. */
        NOT_AMONG_BEST,
        /** She named her pieces, and it is not one of them. */
        NOT_NAMED,
        /** Nothing tells how many stitches she makes in an hour, or how many hours a week she has. */
        HOURS_UNKNOWN,
        /** It rests. */
        RESTING,
        /** It is given up. */
        GIVEN_UP,
        /** It was finished before the year, or after it. */
        FINISHED
    }

    /** Refuses a missing part. */
    public PassedOver {
        Objects.requireNonNull(reckoning);
        Objects.requireNonNull(hoursLeft);
        Objects.requireNonNull(why);
    }
}
