package kitleaf.sizing.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** By hand: ten days from Friday, 1 January 2027; off until the 2nd, having begun the year before, and from the 9th to beyond the last. */
class DaysTests {

    private final Days days = new Days(LocalDate.parse("2027-01-01"), LocalDate.parse("2027-01-10"),
            List.of(Years.off("2026-12-30", "2027-01-02"), Years.off("2027-01-09", "2027-02-01")));

    @Test
    void time_off_may_begin_before_the_first_day_and_end_after_the_last() {
        assertEquals(10, days.count());
        assertFalse(days.working(1));
        assertTrue(days.working(2));
        assertTrue(days.working(7));
        assertFalse(days.working(8));
        assertEquals(6, days.between(0, 9));
        assertEquals(1, days.between(2, 2));
        assertEquals(0, days.between(3, 2));
    }

    @Test
    void dates_before_the_first_day_are_none_and_those_after_the_last_are_the_last() {
        assertEquals(-1, days.day(LocalDate.parse("2026-06-01")));
        assertEquals(0, days.day(LocalDate.parse("2027-01-01")));
        assertEquals(9, days.day(LocalDate.parse("2027-01-10")));
        assertEquals(9, days.day(LocalDate.parse("2030-01-01")));
    }

    /** Three days of the first week, all seven of the second. */
    @Test
    void weeks_begin_on_mondays() {
        assertEquals(2, days.weeks());
        assertEquals(0, days.week(2));
        assertEquals(1, days.week(3));
        assertEquals(LocalDate.parse("2026-12-28"), days.monday(0));
        assertEquals(LocalDate.parse("2027-01-04"), days.monday(1));
    }
}
