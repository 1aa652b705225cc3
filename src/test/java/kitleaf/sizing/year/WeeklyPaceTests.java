package kitleaf.sizing.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import kitleaf.basket.Goal;
import kitleaf.basket.Pace;
import kitleaf.basket.Piece;
import kitleaf.basket.TimeOff;
import org.junit.jupiter.api.Test;

/** By hand; 2026-01-05 is a Monday. */
class WeeklyPaceTests {

    private static Piece logged(String id, String... entries) {
        return Years.piece(id, 10_000, Goal.NONE, Years.log(entries));
    }

    private static WeeklyPace pace(List<Piece> pieces, TimeOff... off) {
        return WeeklyPace.of(Pace.UNSAID, pieces, List.of(off), LocalDate.parse("2026-12-31"));
    }

    private static List<Double> hours(WeeklyPace pace) {
        return pace.weeks().stream().map(LoggedWeek::hours).toList();
    }

    @Test
    void weeks_run_from_monday_to_sunday_over_all_pieces_and_empty_ones_count() {
        WeeklyPace pace = pace(List.of(logged("a", "2026-01-05 2 100", "2026-01-12 1 50"), logged("b", "2026-01-11 3 350", "2026-01-26 6 0")));
        assertEquals(List.of(5.0, 1.0, 0.0, 6.0), hours(pace));
        assertEquals(LocalDate.parse("2026-01-05"), pace.weeks().get(0).monday());
        assertEquals(3, pace.meanHours().orElseThrow());
        assertEquals(3, pace.medianHours().orElseThrow());
        assertEquals(3, pace.hoursPerWeek().figure().orElseThrow());
        // 500 stitches in the 6 hours that tell stitches; the last 6 hours do not.
        assertEquals(500 / 6.0, pace.stitchesPerHour().figure().orElseThrow(), 1e-12);
        assertEquals(PaceFigure.From.LOGGED, pace.stitchesPerHour().from());
    }

    @Test
    void an_empty_week_all_off_is_no_week_and_a_day_short_of_it_is_one() {
        Piece piece = logged("a", "2026-01-05 2 100", "2026-01-19 4 100");
        assertEquals(List.of(2.0, 4.0), hours(pace(List.of(piece), Years.off("2026-01-12", "2026-01-18"))));
        assertEquals(List.of(2.0, 0.0, 4.0), hours(pace(List.of(piece), Years.off("2026-01-12", "2026-01-17"))));
        assertEquals(List.of(2.0, 4.0), hours(pace(List.of(piece), Years.off("2026-01-10", "2026-01-14"), Years.off("2026-01-15", "2026-01-31"))));
    }

    @Test
    void entries_after_the_day_looked_from_are_not_known_yet() {
        Piece piece = logged("a", "2026-01-05 2 100", "2026-01-19 4 900");
        WeeklyPace pace = WeeklyPace.of(Pace.UNSAID, List.of(piece), List.of(), LocalDate.parse("2026-01-18"));
        assertEquals(List.of(2.0), hours(pace));
        assertEquals(50, pace.stitchesPerHour().figure().orElseThrow());
    }

    @Test
    void what_she_says_goes_before_what_is_logged() {
        Pace said = new Pace(OptionalDouble.empty(), OptionalDouble.of(9));
        WeeklyPace pace = WeeklyPace.of(said, List.of(logged("a", "2026-01-05 2 100")), List.of(), LocalDate.parse("2026-12-31"));
        assertEquals(PaceFigure.of(9, PaceFigure.From.STATED), pace.hoursPerWeek());
        assertEquals(PaceFigure.of(50, PaceFigure.From.LOGGED), pace.stitchesPerHour());
    }

    @Test
    void without_either_the_reason_is_given() {
        assertEquals(PaceFigure.none(PaceFigure.From.NO_LOG), pace(List.of()).hoursPerWeek());
        assertEquals(PaceFigure.none(PaceFigure.From.NO_LOG), pace(List.of()).stitchesPerHour());
        WeeklyPace pace = pace(List.of(logged("a", "2026-01-05 2 0")));
        assertEquals(PaceFigure.none(PaceFigure.From.NO_STITCHES), pace.stitchesPerHour());
        assertEquals(2, pace.hoursPerWeek().figure().orElseThrow());
    }

    private static List<Double> outliers(double... hours) {
        String[] entries = IntStream.range(0, hours.length)
                .mapToObj(i -> LocalDate.parse("2026-01-05").plusWeeks(i) + " " + hours[i] + " 10").toArray(String[]::new);
        return pace(List.of(logged("a", entries))).outliers().stream().map(LoggedWeek::hours).toList();
    }

    /** Of 1 to 5 the fence above is at 8.5, as below; of 11 to 15 and a small one quartiles are 11.25 and 13.75, the fence below at 7.5. */
    @Test
    void a_week_on_the_fence_is_not_beyond_it() {
        assertEquals(List.of(), outliers(1, 2, 3, 4, 5, 8.5));
        assertEquals(List.of(), outliers(7.5, 11, 12, 13, 14, 15));
        assertEquals(List.of(7.25), outliers(7.25, 11, 12, 13, 14, 15));
    }

    /** Weeks of 1 2 3 4 5 and 12 hours: quartiles 2.25 and 4.75, fences -1.5 and 8.5. */
    @Test
    void a_week_beyond_the_fence_is_listed_and_stays_in() {
        String[] entries = IntStream.range(0, 6).mapToObj(i -> LocalDate.parse("2026-01-05").plusWeeks(i) + " " + (i == 5 ? 12 : i + 1) + " 10")
                .toArray(String[]::new);
        WeeklyPace pace = pace(List.of(logged("a", entries)));
        assertEquals(List.of(new LoggedWeek(LocalDate.parse("2026-02-09"), 12)), pace.outliers());
        assertEquals(27 / 6.0, pace.meanHours().orElseThrow(), 1e-12);
        assertTrue(pace.weeks().contains(pace.outliers().get(0)));
    }
}
