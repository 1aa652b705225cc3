package kitleaf.sizing.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What each figure of a year may be and may not, at its limits. */
class YearFiguresTests {

    private static final LocalDate MONDAY = LocalDate.parse("2027-01-04");

    private static void refused(Executable made) {
        assertThrows(IllegalArgumentException.class, made);
    }

    @Test
    void an_effort_has_stitches_worth_something_and_may_be_done() {
        assertEquals(0, new Effort(0.1, 0, true).crossesLeft());
        refused(() -> new Effort(0, 1, true));
        refused(() -> new Effort(1, -0.1, true));
    }

    @Test
    void a_pace_is_above_nothing_and_knows_where_it_is_from() {
        refused(() -> PaceFigure.of(0, PaceFigure.From.STATED));
        refused(() -> PaceFigure.of(1, PaceFigure.From.NO_LOG));
        refused(() -> PaceFigure.none(PaceFigure.From.LOGGED));
    }

    @Test
    void weeks_begin_on_mondays_and_have_no_hours_below_nothing() {
        assertEquals(0, new LoggedWeek(MONDAY, 0).hours());
        refused(() -> new LoggedWeek(MONDAY, -1));
        refused(() -> new LoggedWeek(MONDAY.plusDays(1), 1));
        assertEquals(1, new PlannedWeek(MONDAY, 0, 1, List.of()).timeOff());
        refused(() -> new PlannedWeek(MONDAY.plusDays(1), 1, 0, List.of()));
        refused(() -> new PlannedWeek(MONDAY, -1, 0, List.of()));
        refused(() -> new PlannedWeek(MONDAY, 1, -0.1, List.of()));
        refused(() -> new PlannedWeek(MONDAY, 1, 1.1, List.of()));
        refused(() -> new PlannedWeek.Share("a", 0, true));
    }

    @Test
    void a_candidate_takes_hours_somebody_has_and_weighs_something() {
        assertEquals(0, new Candidate("a", 0, 1, false, Optional.empty()).hours());
        refused(() -> new Candidate("a", -1, 1, false, Optional.empty()));
        refused(() -> new Candidate("a", Double.POSITIVE_INFINITY, 1, false, Optional.empty()));
        refused(() -> new Candidate("a", 1, 0, false, Optional.empty()));
    }

    @Test
    void a_rescue_takes_no_hours_away() {
        assertEquals(0, new Rescue(OptionalDouble.of(0), Optional.empty()).moreHoursPerWeek().orElseThrow());
        refused(() -> new Rescue(OptionalDouble.of(-1), Optional.empty()));
    }

    @Test
    void a_choice_has_no_hours_below_nothing() {
        assertEquals(0, new Choice(List.of(), List.of(), List.of(), 0, 0).hoursShort());
        refused(() -> new Choice(List.of(), List.of(), List.of(), -1, 0));
        refused(() -> new Choice(List.of(), List.of(), List.of(), 0, -1));
    }
}
