package kitleaf.sizing.year;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Something to know of a year's plan.
 *
 * @param kind what it is
 * @param pieces IDs of the pieces it is about; may be empty
 * @param figure what goes with the kind; empty where it says none
 */
public record YearWarning(Kind kind, List<String> pieces, OptionalDouble figure) {

    /** What there is to know. */
    public enum Kind {
        /** Nothing tells how many stitches she makes in an hour: no log with stitches, no stated pace. */
        NO_STITCHES_PER_HOUR,
        /** Nothing tells how many hours a week she has: no log, no stated pace. */
        NO_HOURS_PER_WEEK,
        /** The year ends before the first day planned. */
        YEAR_OVER,
        /** The must-haves alone take more hours than there are; the figure is how many more. */
        MUSTS_DO_NOT_FIT,
        /** There are more must-haves than pieces to choose; the figure is how many more. */
        MORE_MUSTS_THAN_CHOSEN,
        /** The pieces she named take more hours than there are; the figure is how many more. */
        NAMED_DO_NOT_FIT,
        /** She named pieces that are not there. */
        NAMED_MISSING,
        /** Must-haves that are not among the pieces she named, and so are left out. */
        MUSTS_NOT_NAMED,
        /** Pieces she named or must have that rest or are given up, and so are not chosen. */
        LAID_ASIDE,
        /** Pieces that come after their deadlines at her usual pace, the year's end among these; in the order of the plan. */
        LATE,
        /** Pieces that a drawn or the planned year does not finish within the horizon; the figure is its years. */
        BEYOND_HORIZON,
        /** All weeks are the same, so that dates have no spread: a stated pace without logs, or one logged week. */
        NO_SPREAD,
        /** Fewer than {@value YearReckoning#FEW_WEEKS} logged weeks tell little of her spread; the figure is how many. */
        FEW_WEEKS,
        /** Some logged weeks are far from the others; the figure is how many. They stay in every figure. */
        UNUSUAL_WEEKS,
        /** Pieces of which every cell counts as a stitch, for want of counts and coverage: their hours are likely too high. */
        CELLS_COUNTED
    }

    /** Copies the list. */
    public YearWarning {
        Objects.requireNonNull(kind);
        Objects.requireNonNull(figure);
        pieces = List.copyOf(pieces);
    }

    static YearWarning of(Kind kind, List<String> pieces) {
        return new YearWarning(kind, pieces, OptionalDouble.empty());
    }

    static YearWarning of(Kind kind, List<String> pieces, double figure) {
        return new YearWarning(kind, pieces, OptionalDouble.of(figure));
    }
}
