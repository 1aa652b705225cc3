package kitleaf.sizing.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitleaf.basket.Goal;
import kitleaf.basket.Pace;
import kitleaf.basket.Piece;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Pieces;
import org.junit.jupiter.api.Test;

/**
 * Pieces planned in time and yet likelier late, and what would make their chance even. By hand: ten stitches an hour, looked at on
 * Monday, 4 January 2027, with a piece wanted on the Sunday after. Two standard errors of a third in 2000 years are 0.021.
 */
class CloseCallTests {

    private static final String MONDAY = "2027-01-04";
    private static final String SUNDAY = "2027-01-10";

    /** Weeks of so many hours, one after the other from 2 November, each worked evenly on its seven days. */
    private static Piece logged(double... weeks) {
        List<String> entries = new ArrayList<>();
        for (int day = 0; day < 7 * weeks.length; day++) {
            if (weeks[day / 7] > 0) {
                entries.add(LocalDate.parse("2026-11-02").plusDays(day) + " " + weeks[day / 7] / 7 + " 0");
            }
        }
        return Years.piece("log", 10, Goal.NONE, Years.log(entries.toArray(String[]::new)));
    }

    private static PlannedPiece planned(OptionalDouble perWeek, Piece wanted, double... weeks) {
        return Years.reckon(Years.basket(new Pace(OptionalDouble.of(10), perWeek), List.of(), Years.goals(2027, wanted.id()),
                List.of(wanted, logged(weeks))), MONDAY).chosen().get(0);
    }

    private static PlannedPiece planned(int stitches, double... weeks) {
        return planned(OptionalDouble.empty(), Years.piece("a", stitches, Years.due(SUNDAY)), weeks);
    }

    private static void cannotBeSaved(PlannedPiece piece) {
        assertTrue(piece.close());
        assertEquals(Optional.of(new Rescue(OptionalDouble.empty(), Optional.empty())), piece.rescue());
    }

    /**
     * Weeks of 1.75, 1.75, 1.75 and 22.75 hours are 7 on average, so 7 hours are planned to the Sunday. Only one week in four has them.
     * Four times the pace, 28 hours a week, makes 7 of the small ones: 21 more. Half an hour less leaves them short.
     */
    @Test
    void a_piece_likelier_late_is_told_with_the_hours_that_make_its_chance_even() {
        PlannedPiece piece = planned(70, 1.75, 1.75, 1.75, 22.75);
        assertEquals(LocalDate.parse(SUNDAY), piece.finish());
        assertEquals(0.25, piece.chance(), 0.021);
        assertTrue(piece.close());
        assertEquals(21, piece.rescue().orElseThrow().moreHoursPerWeek().orElseThrow());
        assertEquals(Optional.empty(), piece.rescue().orElseThrow().instead());
    }

    /** Weeks of 6.5, 6.5 and 8 are 7 on average, and 7 x 7 / 6.5 is 7.54: half an hour more is too little, a whole one enough. */
    @Test
    void hours_are_told_in_halves() {
        assertEquals(1, planned(70, 6.5, 6.5, 8).rescue().orElseThrow().moreHoursPerWeek().orElseThrow());
        // 6.75, 6.75 and 7.5: 7 x 7 / 6.75 is 7.26, for which 7.5 is enough.
        assertEquals(0.5, planned(70, 6.75, 6.75, 7.5).rescue().orElseThrow().moreHoursPerWeek().orElseThrow());
    }

    /** Weeks of 10.5, 10.5 and 105 are 42 on average; four times that are the 168 hours of a week, and make 42 of the small ones. */
    @Test
    void no_more_hours_are_told_than_a_week_has() {
        PlannedPiece all = planned(420, 10.5, 10.5, 105);
        assertEquals(1 / 3.0, all.chance(), 0.021);
        assertEquals(126, all.rescue().orElseThrow().moreHoursPerWeek().orElseThrow());
        // Of 10.4, 10.4 and 105.2 it would take 42 x 42 / 10.4, almost 170.
        cannotBeSaved(planned(420, 10.4, 10.4, 105.2));
    }

    /** A stated 168 hours a week, a third of them in one week and none in the next: nothing can be added. */
    @Test
    void who_stitches_day_and_night_is_told_of_no_more_hours() {
        cannotBeSaved(planned(OptionalDouble.of(168), Years.piece("a", 1680, Years.due(SUNDAY)), 10.5, 10.5, 105));
    }

    /** Four weeks of six are empty, and stay so at any pace. */
    @Test
    void weeks_without_hours_cannot_be_raised() {
        PlannedPiece piece = planned(OptionalDouble.of(7), Years.piece("a", 70, Years.due(SUNDAY)), 14, 0, 0, 0, 0, 14);
        assertEquals(1 / 3.0, piece.chance(), 0.021);
        cannotBeSaved(piece);
    }

    /** A day earlier, on the Saturday, 7 hours are planned late: 6 days of the pace, which 7/6 of it would make enough. */
    @Test
    void a_piece_planned_late_is_told_of_as_such() {
        PlannedPiece late = planned(OptionalDouble.empty(), Years.piece("a", 70, Years.due("2027-01-09")), 1.75, 1.75, 1.75, 22.75);
        assertEquals(1, late.lateDays());
        assertFalse(late.close());
        assertEquals(7 / 6.0, late.rescue().orElseThrow().moreHoursPerWeek().orElseThrow(), 1e-9);
    }

    private static boolean close(PlannedPiece it, PieceReckoning reckoning, double chance, long lateDays) {
        return new PlannedPiece(reckoning, it.effort(), it.hoursLeft(), it.firstWeek(), it.mainWeek(), it.lastWeek(), it.stitched(),
                it.finish(), it.p10(), it.p50(), it.p90(), it.deadline(), chance, lateDays, it.place(), Optional.empty()).close();
    }

    @Test
    void only_less_than_an_even_chance_of_a_date_of_its_own_is_a_close_call() {
        PlannedPiece dated = planned(70, 1.75, 1.75, 1.75, 22.75);
        PlannedPiece undated = planned(OptionalDouble.empty(), Years.piece("a", 70, Goal.NONE), 7, 7);
        assertTrue(close(dated, dated.reckoning(), 0.49, 0));
        assertFalse(close(dated, dated.reckoning(), 0.5, 0));
        assertFalse(close(dated, dated.reckoning(), 0.49, 1));
        assertFalse(close(undated, undated.reckoning(), 0.49, 0));
    }
}
