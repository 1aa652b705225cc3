package kitleaf.sizing.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import kitleaf.basket.Goal;
import kitleaf.basket.Pace;
import kitleaf.basket.Piece;
import org.junit.jupiter.api.Test;

/** What is said beside a plan. By hand: ten stitches an hour and seven hours a week, so that ten stitches are a day's work. */
class YearWarningTests {

    private static YearReckoning reckon(Pace pace, String asOf, Piece... pieces) {
        return Years.reckon(Years.basket(pace, List.of(), Years.goals(2027, pieces[0].id()), List.of(pieces)), asOf);
    }

    /** One day's work, by a pace that only the logs tell. */
    private static YearReckoning logging(double... weeks) {
        return reckon(Pace.UNSAID, "2027-01-01", Years.piece("a", 10, Goal.NONE), logged(weeks));
    }

    /** Weeks of so many hours each, one after the other, whose last ends before 2027. */
    private static Piece logged(double... weeks) {
        LocalDate first = LocalDate.parse("2026-12-28").minusWeeks(weeks.length);
        return Years.piece("log", 10, Goal.NONE, Years.log(IntStream.range(0, weeks.length).filter(i -> weeks[i] > 0)
                .mapToObj(i -> first.plusWeeks(i) + " " + weeks[i] + " " + Math.round(10 * weeks[i])).toArray(String[]::new)));
    }

    private static final YearWarning NO_SPREAD = YearWarning.of(YearWarning.Kind.NO_SPREAD, List.of());

    /** From New Year's Day 2027 to the last of 2047 are 21 years, five of them leap years: 7670 days. What takes them all is told of. */
    @Test
    void what_ends_twenty_years_later_or_never_is_told() {
        YearReckoning beyond = reckon(Years.pace(10, 7), "2027-01-01", Years.piece("a", 76_700, Goal.NONE));
        assertEquals(LocalDate.parse("2047-12-31"), beyond.horizon());
        assertEquals(List.of(YearWarning.of(YearWarning.Kind.NAMED_DO_NOT_FIT, List.of("a"), 7305),
                YearWarning.of(YearWarning.Kind.LATE, List.of("a")),
                YearWarning.of(YearWarning.Kind.BEYOND_HORIZON, List.of("a"), 20), NO_SPREAD), beyond.warnings());
        YearReckoning just = reckon(Years.pace(10, 7), "2027-01-01", Years.piece("a", 76_690, Goal.NONE));
        assertEquals(LocalDate.parse("2047-12-30"), just.chosen().get(0).finish());
        assertEquals(List.of(YearWarning.Kind.NAMED_DO_NOT_FIT, YearWarning.Kind.LATE, YearWarning.Kind.NO_SPREAD),
                just.warnings().stream().map(YearWarning::kind).toList());
    }

    @Test
    void the_horizon_goes_on_with_the_day_looked_from() {
        assertEquals(LocalDate.parse("2047-12-31"), reckon(Years.pace(10, 7), "2027-12-31", Years.piece("a", 10, Goal.NONE)).horizon());
        assertEquals(LocalDate.parse("2048-02-03"), reckon(Years.pace(10, 7), "2028-02-03", Years.piece("a", 10, Goal.NONE)).horizon());
    }

    /** Hours of 6 and 8 in turn: twelve weeks are a week short of a quarter of a year, thirteen are one. */
    @Test
    void few_logged_weeks_are_told_until_there_are_thirteen() {
        assertEquals(List.of(YearWarning.of(YearWarning.Kind.FEW_WEEKS, List.of(), 12)),
                logging(6, 8, 6, 8, 6, 8, 6, 8, 6, 8, 6, 8).warnings());
        assertEquals(List.of(), logging(6, 8, 6, 8, 6, 8, 6, 8, 6, 8, 6, 8, 6).warnings());
    }

    @Test
    void weeks_that_are_all_alike_have_no_spread() {
        for (YearReckoning year : List.of(logging(7), logging(7, 7, 7))) {
            assertEquals(List.of(NO_SPREAD), year.warnings());
            assertFalse(year.spread());
        }
        assertTrue(logging(6, 8).spread());
    }

    /** Weeks of 1 to 5 and 12 hours: quartiles 2.25 and 4.75, so 12 lies beyond 8.5. */
    @Test
    void unusual_weeks_are_counted() {
        assertEquals(List.of(YearWarning.of(YearWarning.Kind.FEW_WEEKS, List.of(), 6),
                YearWarning.of(YearWarning.Kind.UNUSUAL_WEEKS, List.of(), 1)), logging(1, 2, 3, 4, 5, 12).warnings());
    }

    /** A million cells at ten an hour and an hour a day are 100,000 days. */
    @Test
    void a_piece_of_which_every_cell_counts_is_told_of() {
        YearReckoning year = reckon(Years.pace(10, 7), "2027-01-01", Years.threaded("cells", List.of(), List.of()));
        assertEquals(YearWarning.of(YearWarning.Kind.CELLS_COUNTED, List.of("cells")), year.warnings().get(year.warnings().size() - 1));
        assertEquals(OptionalDouble.of(100_000), year.hoursNeeded());
    }
}
