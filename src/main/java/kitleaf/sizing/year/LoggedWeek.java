package kitleaf.sizing.year;

import java.time.DayOfWeek;
import java.time.LocalDate;

/**
 * What the logs of all pieces say of one week.
 *
 * @param monday its first day
 * @param hours at the hoop, 0 or more
 */
public record LoggedWeek(LocalDate monday, double hours) {

    /** Refuses weeks that do not begin on a Monday and hours below 0. */
    public LoggedWeek {
        if (monday.getDayOfWeek() != DayOfWeek.MONDAY || !(hours >= 0)) {
            throw new IllegalArgumentException("no such week: " + monday + ", " + hours + " hours");
        }
    }
}
