package kitleaf.sizing.year;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.List;
import java.util.Objects;

/**
 * One week of the year as planned at her usual pace.
 *
 * @param monday its first day; may lie in the year before
 * @param hours there are in it, of the days of the year from the one looked from, time off taken off
 * @param timeOff the part of its seven days that is off, 0 to 1
 * @param shares who gets the week's hours, in the order of the plan, only pieces that get any; in the year's first and last weeks
 *        their days in the years beside it are in them too
 */
public record PlannedWeek(LocalDate monday, double hours, double timeOff, List<Share> shares) {

    /**
     * What one piece gets of a week.
     *
     * @param id the piece's
     * @param hours above 0
     * @param main whether it is the main piece on at least one of the week's days
     */
    public record Share(String id, double hours, boolean main) {

        /** Refuses nothing at all. */
        public Share {
            Objects.requireNonNull(id);
            if (!(hours > 0)) {
                throw new IllegalArgumentException("a share must be above 0: " + hours);
            }
        }
    }

    /** Copies the list; refuses weeks that do not begin on a Monday. */
    public PlannedWeek {
        shares = List.copyOf(shares);
        if (monday.getDayOfWeek() != DayOfWeek.MONDAY || !(hours >= 0) || !(timeOff >= 0 && timeOff <= 1)) {
            throw new IllegalArgumentException("no such week: " + monday + ", " + hours + ", " + timeOff);
        }
    }

    /** Its number by ISO 8601, 1 to 53: the week with the year's first Thursday is 1. */
    public int number() {
        return monday.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
    }
}
