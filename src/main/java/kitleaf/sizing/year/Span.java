package kitleaf.sizing.year;

import java.time.LocalDate;
import java.time.YearMonth;

/**
 * Days to look back on: a month, a quarter or a year.
 *
 * @param from the first
 * @param to the last, not before it
 */
public record Span(LocalDate from, LocalDate to) {

    private static final int MONTHS_IN_QUARTER = 3;

    /** Refuses days the wrong way round. */
    public Span {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException(to + " is before " + from);
        }
    }

    /** A calendar year. */
    public static Span year(int year) {
        return new Span(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31));
    }

    /** A quarter of a year, 1 to 4. */
    public static Span quarter(int year, int quarter) {
        YearMonth last = YearMonth.of(year, MONTHS_IN_QUARTER * quarter);
        return new Span(last.minusMonths(MONTHS_IN_QUARTER - 1).atDay(1), last.atEndOfMonth());
    }

    /** A month. */
    public static Span month(YearMonth month) {
        return new Span(month.atDay(1), month.atEndOfMonth());
    }
}
