package kitleaf.sizing.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Random;
import kitleaf.basket.Goal;
import kitleaf.basket.Goals;
import kitleaf.basket.InHand;
import kitleaf.basket.Piece;
import kitleaf.basket.TimeOff;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** By hand: 10 stitches an hour and 7 hours a week, so that 10 stitches are a day's work. 2027 begins on a Friday. */
class ScheduleTests {

    private static Piece days(String id, int days, String due) {
        return Years.piece(id, 10 * days, due.isEmpty() ? Goal.NONE : Years.due(due));
    }

    private static YearReckoning reckon(double mainShare, String asOf, List<TimeOff> off, Piece... pieces) {
        String[] named = List.of(pieces).stream().map(Piece::id).toArray(String[]::new);
        return Years.reckon(Years.basket(Years.pace(10, 7), off, Years.goals(2027, OptionalInt.empty(), mainShare, named), List.of(pieces)), asOf);
    }

    private static List<String> order(YearReckoning year) {
        return year.chosen().stream().map(one -> one.id() + " " + one.place() + " " + one.finish()).toList();
    }

    /**
     * Before b, wanted on the 32nd day, 32 - 10 - 32/4 = 14 days are free; before a, on the 60th, 60 - 30 - 60/4 = 15: u of 5 fits,
     * v of 300 does not. Then the days add up: 5, 15, 35, 335.
     */
    @Test
    void dated_pieces_come_by_date_and_undated_ones_where_they_fit() {
        assertEquals(List.of("u FITS_BEFORE 2027-01-05", "b DUE 2027-01-15", "a DUE 2027-02-04", "v SHORTEST 2027-12-01"),
                order(reckon(1, "2027-01-01", List.of(), days("a", 20, "2027-03-01"), days("b", 10, "2027-02-01"), days("v", 300, ""), days("u", 5, ""))));
    }

    /** 32 days until b's date, 10 for itself, a quarter of 32 kept free: 13 days go before it; 15 would too, but for the quarter. */
    @Test
    void what_goes_before_a_dated_piece_leaves_a_quarter_free() {
        assertEquals(List.of("u FITS_BEFORE 2027-01-13", "b DUE 2027-01-23"),
                order(reckon(1, "2027-01-01", List.of(), days("b", 10, "2027-02-01"), days("u", 13, ""))));
        assertEquals(List.of("b DUE 2027-01-10", "u SHORTEST 2027-01-25"),
                order(reckon(1, "2027-01-01", List.of(), days("b", 10, "2027-02-01"), days("u", 15, ""))));
    }

    private static YearReckoning inHand(InHand hand, double mainShare, Piece... pieces) {
        Goals goals = new Goals(2027, OptionalInt.empty(), List.of(pieces).stream().map(Piece::id).toList(), Goals.By.NUMBER, mainShare,
                Optional.empty(), Optional.empty(), OptionalLong.empty(), hand);
        return Years.reckon(Years.basket(Years.pace(10, 7), List.of(), goals, List.of(pieces)), "2027-01-01");
    }

    /**
     * v takes the first 30 of the 32 days until a is wanted: a, which would have been done in ten, is eight days late. With 40 hours in
     * 32 days it is not: 8.75 a week, 1.75 more than 7. Nothing else is in its way but what she has in hand.
     */
    @Test
    void what_is_in_focus_goes_first_and_what_then_comes_late_is_told_with_what_would_save_it() {
        YearReckoning year = inHand(new InHand(Optional.of("v"), Optional.empty()), 1, days("a", 10, "2027-02-01"), days("u", 5, ""),
                days("v", 30, ""));
        assertEquals(List.of("v FOCUS 2027-01-30", "a LATE 2027-02-09", "u SHORTEST 2027-02-14"), order(year));
        assertEquals(8, year.chosen().get(1).lateDays());
        assertEquals(new Rescue(OptionalDouble.of(1.75), Optional.empty()), year.chosen().get(1).rescue().orElseThrow());
    }

    /**
     * w gets 0.6 of each hour and is done on the 17th day; v has 6 2/3 hours of ten by then, and at 0.6 an hour, now with u beside it,
     * the rest takes 5.6 days more. All 25 hours are done in 25 days.
     */
    @Test
    void what_lies_beside_it_is_worked_with_it() {
        assertEquals(List.of("w FOCUS 2027-01-17", "v BESIDE 2027-01-23", "u SHORTEST 2027-01-25"),
                order(inHand(new InHand(Optional.of("w"), Optional.of("v")), 0.6, days("u", 5, ""), days("v", 10, ""), days("w", 10, ""))));
    }

    @Test
    void where_only_the_one_beside_is_named_the_plans_own_first_is_in_focus() {
        assertEquals(List.of("u SHORTEST", "v BESIDE", "w SHORTEST"),
                order(inHand(new InHand(Optional.empty(), Optional.of("v")), 1, days("u", 5, ""), days("v", 30, ""), days("w", 6, ""))).stream()
                        .map(line -> line.substring(0, line.lastIndexOf(' '))).toList());
    }

    /** As above: 14 days are just what is free. */
    @Test
    void what_fits_to_the_last_hour_goes_before() {
        assertEquals(List.of("u FITS_BEFORE 2027-01-14", "b DUE 2027-01-24"),
                order(reckon(1, "2027-01-01", List.of(), days("b", 10, "2027-02-01"), days("u", 14, ""))));
    }

    /** Wanted today: 24 hours are day and night, 168 a week, so 161 more; 25 are too many. */
    @Test
    void no_week_has_more_hours_than_it_has() {
        YearReckoning year = reckon(1, "2027-01-01", List.of(), days("a", 24, "2027-01-01"));
        assertEquals(161, year.chosen().get(0).rescue().orElseThrow().moreHoursPerWeek().orElseThrow(), 1e-9);
        YearReckoning more = reckon(1, "2027-01-01", List.of(), days("a", 25, "2027-01-01"));
        assertTrue(more.chosen().get(0).rescue().orElseThrow().moreHoursPerWeek().isEmpty());
    }

    @Test
    void undated_pieces_alone_go_shortest_first_and_by_id_where_equal() {
        assertEquals(List.of("c SHORTEST 2027-01-03", "a SHORTEST 2027-01-08", "b SHORTEST 2027-01-13"),
                order(reckon(1, "2027-01-01", List.of(), days("b", 5, ""), days("a", 5, ""), days("c", 3, ""))));
    }

    /**
     * The Moore-Hodgson example of M. Pinedo, Scheduling, in days: 1 and 2 stand back, and end on days 23 and 31, both 14 too late.
     * To save 1: 7 + 4 + 6 + 6 = 23 days by the 21st, 2/21 faster; or 3 dropped: 7, 13 and 19 days by the 9th, 19th and 21st.
     * To save 2: 24 by the 21st, 3/21 faster; or 3 dropped: 8, 14 and 20.
     */
    @Test
    void late_pieces_are_named_with_what_would_save_them() {
        YearReckoning year = reckon(1, "2027-01-01", List.of(), days("1", 7, "2027-01-09"), days("2", 8, "2027-01-17"),
                days("3", 4, "2027-01-18"), days("4", 6, "2027-01-19"), days("5", 6, "2027-01-21"));
        assertEquals(List.of("3 DUE 2027-01-04", "4 DUE 2027-01-10", "5 DUE 2027-01-16", "1 LATE 2027-01-23", "2 LATE 2027-01-31"), order(year));
        assertEquals(List.of(0L, 0L, 0L, 14L, 14L), year.chosen().stream().map(PlannedPiece::lateDays).toList());
        Rescue first = year.chosen().get(3).rescue().orElseThrow();
        assertEquals(2.0 / 3, first.moreHoursPerWeek().orElseThrow(), 1e-9);
        assertEquals(Optional.of("3"), first.instead());
        assertEquals(1, year.chosen().get(4).rescue().orElseThrow().moreHoursPerWeek().orElseThrow(), 1e-9);
        assertEquals(List.of("1", "2"), year.warnings().stream().filter(it -> it.kind() == YearWarning.Kind.LATE).findFirst().orElseThrow().pieces());
    }

    /**
     * 2 and 6 days by the 5th and 11th are in time, 10 more by the 12th are not: 18 days in 12. Without the 2 there are 16, still too many;
     * without the 6 there are 12.
     */
    @Test
    void what_is_offered_to_be_dropped_is_enough() {
        YearReckoning year = reckon(1, "2027-01-01", List.of(), days("x", 2, "2027-01-05"), days("y", 6, "2027-01-11"),
                days("z", 10, "2027-01-12"));
        assertEquals(List.of("x DUE 2027-01-02", "y DUE 2027-01-08", "z LATE 2027-01-18"), order(year));
        Rescue rescue = year.chosen().get(2).rescue().orElseThrow();
        assertEquals(3.5, rescue.moreHoursPerWeek().orElseThrow(), 1e-9);
        assertEquals(Optional.of("y"), rescue.instead());
    }

    @Test
    void a_must_have_is_never_offered_to_be_dropped() {
        Goal must = new Goal(true, Optional.of(LocalDate.parse("2027-01-05")), 1);
        YearReckoning year = reckon(1, "2027-01-01", List.of(), Years.piece("a", 40, must), days("b", 6, "2027-01-06"));
        assertEquals(List.of("a DUE 2027-01-04", "b LATE 2027-01-10"), order(year));
        assertEquals(Optional.empty(), year.chosen().get(1).rescue().orElseThrow().instead());
    }

    @Test
    void a_date_gone_by_cannot_be_saved() {
        YearReckoning year = reckon(1, "2027-02-01", List.of(), days("a", 4, "2027-01-20"));
        assertEquals(List.of("a LATE 2027-02-04"), order(year));
        assertEquals(15, year.chosen().get(0).lateDays());
        assertTrue(year.chosen().get(0).rescue().orElseThrow().moreHoursPerWeek().isEmpty());
    }

    /** From Monday: 0.7 h a day end 7 h on the tenth day, with 3 of the other's 70 h done beside; 67 days more. */
    @Test
    void a_second_piece_gets_the_rest_of_the_main_ones_hours() {
        YearReckoning year = reckon(0.7, "2027-01-04", List.of(), days("a", 7, ""), days("b", 70, ""));
        assertEquals(List.of("a SHORTEST 2027-01-13", "b SHORTEST 2027-03-21"), order(year));
        PlannedPiece second = year.chosen().get(1);
        assertEquals(LocalDate.parse("2027-01-04"), second.firstWeek());
        assertEquals(LocalDate.parse("2027-01-11"), second.mainWeek());
        assertEquals(LocalDate.parse("2027-03-15"), second.lastWeek());
        PlannedWeek week = year.weeks().get(1);
        assertEquals(1, week.number());
        assertEquals(7, week.hours(), 1e-9);
        assertEquals(4.9, week.shares().get(0).hours(), 1e-9);
        assertEquals(2.1, week.shares().get(1).hours(), 1e-9);
    }

    @Test
    void the_second_piece_waits_where_the_main_ones_date_is_at_stake() {
        YearReckoning year = reckon(0.7, "2027-01-04", List.of(), days("a", 10, "2027-01-13"), days("b", 50, ""));
        assertEquals(List.of("a DUE 2027-01-13", "b SHORTEST 2027-03-04"), order(year));
        assertEquals(LocalDate.parse("2027-01-11"), year.chosen().get(1).firstWeek());
    }

    /**
     * Until 1 June are 149 days, of which a needs 7: b of 130 does not fit before it, and has 0.3 of each day beside it. Seven days at
     * 0.7 are ten, to
     * the 13th, with 3 of b's done; all 137 days end on 20 May.
     */
    @Test
    void a_second_piece_gets_its_share_beside_a_main_one_whose_date_is_far() {
        YearReckoning year = reckon(0.7, "2027-01-04", List.of(), days("a", 7, "2027-06-01"), days("b", 130, ""));
        assertEquals(List.of("a DUE 2027-01-13", "b SHORTEST 2027-05-20"), order(year));
        assertEquals(List.of(4.9, 2.1), year.weeks().get(1).shares().stream().map(share -> Math.rint(share.hours() * 1e6) / 1e6).toList());
    }

    /**
     * Twelve days for ten of work: what is spare, two, goes beside by 0.3 a day for six days and 0.2 on the seventh, all in the first
     * week.
     */
    @Test
    void a_second_piece_gets_no_more_than_the_date_leaves() {
        YearReckoning year = reckon(0.7, "2027-01-04", List.of(), days("a", 10, "2027-01-15"), days("b", 50, ""));
        assertEquals(List.of("a DUE 2027-01-15", "b SHORTEST 2027-03-04"), order(year));
        assertEquals(List.of(5.0, 2.0), year.weeks().get(1).shares().stream().map(share -> Math.rint(share.hours() * 1e6) / 1e6).toList());
    }

    /** The week of 4 January is off: the piece's 7 days are 1 to 3 and 11 to 14 January. */
    @Test
    void nothing_is_done_on_days_off() {
        YearReckoning year = reckon(1, "2027-01-01", List.of(Years.off("2027-01-04", "2027-01-10")), days("a", 7, ""));
        assertEquals(List.of("a SHORTEST 2027-01-14"), order(year));
        assertEquals(358, year.hoursAvailable().orElseThrow(), 1e-9);
        assertEquals(List.of(3.0, 0.0, 7.0), year.weeks().stream().limit(3).map(PlannedWeek::hours).toList());
        assertEquals(List.of(0.0, 1.0, 0.0), year.weeks().stream().limit(3).map(PlannedWeek::timeOff).toList());
        assertTrue(year.weeks().get(1).shares().isEmpty());
    }

    /** What can be in time one after another stays so with a second piece beside; and a year's work is no less for being split. */
    @Property(tries = 1000, seed = "1955")
    void what_has_its_date_keeps_it(@ForAll long mix, @ForAll @IntRange(min = 1, max = 12) int pieces, @ForAll @IntRange(min = 51, max = 100) int percent) {
        Random random = new Random(mix);
        List<Piece> basket = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            String due = random.nextInt(3) == 0 ? "" : LocalDate.parse("2027-01-01").plusDays(random.nextInt(300)).toString();
            basket.add(days("p" + i, 1 + random.nextInt(60), due));
        }
        YearReckoning year = reckon(percent / 100.0, "2027-01-01", List.of(Years.off("2027-03-03", "2027-03-12")), basket.toArray(Piece[]::new));
        for (PlannedPiece piece : year.chosen()) {
            assertTrue(piece.place() != Place.DUE || piece.lateDays() == 0, piece.id());
        }
        double spread = year.chosen().stream().mapToDouble(PlannedPiece::hoursLeft).sum();
        LocalDate end = year.chosen().stream().map(PlannedPiece::finish).max(LocalDate::compareTo).orElseThrow();
        long working = LocalDate.parse("2027-01-01").datesUntil(end.plusDays(1))
                .filter(day -> day.isBefore(LocalDate.parse("2027-03-03")) || day.isAfter(LocalDate.parse("2027-03-12"))).count();
        assertEquals(spread, working, 1e-6);
    }
}
