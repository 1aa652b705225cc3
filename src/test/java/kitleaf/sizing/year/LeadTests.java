package kitleaf.sizing.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import kitleaf.basket.Goal;
import kitleaf.basket.Goals;
import kitleaf.basket.Piece;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/**
 * The days between the one looked from and the goals' year. By hand, where nothing else is said: 10 stitches an hour and 7 hours a week, so
 * that 10 stitches are a day's work, looked at on 22 December, ten days before 2027; all hours go to the main piece.
 */
class LeadTests {

    private static final Goal MUST = new Goal(true, Optional.empty(), 1);

    private static Piece days(String id, int days, String due) {
        return Years.piece(id, 10 * days, due.isEmpty() ? Goal.NONE : Years.due(due));
    }

    /** So many days left of a piece that was begun on 1 December with ten stitches. */
    private static Piece begun(String id, int days, Goal goal) {
        return Years.piece(id, 10 * days + 10, goal, Years.log("2026-12-01 1 10"));
    }

    private static YearReckoning reckon(Goals goals, String asOf, Piece... pieces) {
        return Years.reckon(Years.basket(Years.pace(10, 7), List.of(), goals, List.of(pieces)), asOf);
    }

    private static YearReckoning named(Piece... pieces) {
        return reckon(Years.goals(2027, OptionalInt.empty(), 1, List.of(pieces).stream().map(Piece::id).toArray(String[]::new)), "2026-12-22", pieces);
    }

    private static List<String> order(YearReckoning year) {
        return year.chosen().stream().map(one -> one.id() + " " + one.place() + " " + one.finish()).toList();
    }

    private static boolean warned(YearReckoning year, YearWarning.Kind kind) {
        return year.warnings().stream().anyMatch(it -> it.kind() == kind);
    }

    /** 10 hours at 9 a week are 7.8 days: the eighth from 22 November is the 29th. The year keeps all its 365 days: 365 x 9/7 hours. */
    @Test
    void a_gift_due_before_the_year_is_stitched_before_it() {
        YearReckoning year = Years.reckon(Years.basket(Years.pace(10, 9), List.of(), Years.goals(2027), List.of(days("gift", 10, "2026-12-20"))), "2026-11-22");
        PlannedPiece gift = year.chosen().get(0);
        assertEquals(List.of("gift DUE 2026-11-29"), order(year));
        assertEquals(0, gift.lateDays());
        assertEquals(1, gift.chance());
        assertEquals(LocalDate.parse("2026-11-29"), gift.p90());
        assertEquals(LocalDate.parse("2026-11-16"), gift.firstWeek());
        assertEquals(LocalDate.parse("2026-11-23"), gift.lastWeek());
        assertEquals(365 * 9 / 7.0, year.hoursAvailable().orElseThrow(), 1e-9);
        assertEquals(0, year.hoursNeeded().orElseThrow(), 1e-9);
        assertTrue(!warned(year, YearWarning.Kind.LATE));
    }

    /**
     * Four of the ten days are the gift's, the other six begin b's twenty; u, the shorter, has New Year's Day to 5 January, and b's
     * other fourteen end on the 19th. So 5 + 14 days fall to the year; they are two pieces, the gift being none of its choice.
     */
    @Test
    void then_begun_pieces_have_the_hours_and_others_wait_for_the_year() {
        YearReckoning year = reckon(Years.goals(2027, OptionalInt.of(2), 1), "2026-12-22", days("gift", 4, "2026-12-31"), begun("b", 20, Goal.NONE),
                days("u", 5, ""), days("w", 300, ""));
        assertEquals(List.of("gift DUE 2026-12-25", "u SHORTEST 2027-01-05", "b SHORTEST 2027-01-19"), order(year));
        assertEquals(19, year.hoursNeeded().orElseThrow(), 1e-6);
        assertEquals(1, year.early());
        assertEquals(LocalDate.parse("2026-12-21"), year.chosen().get(2).firstWeek());
        assertEquals(List.of("w"), year.notChosen().stream().map(it -> it.reckoning().piece().id()).toList());
    }

    /**
     * Nothing is begun, so the ten days pass. The week of 28 December has three days of the year, all u's; what is there is 1 January to
     * 3.
     */
    @Test
    void what_is_not_begun_waits_for_the_year() {
        YearReckoning year = named(days("u", 5, ""));
        assertEquals(List.of("u SHORTEST 2027-01-05"), order(year));
        assertEquals(5, year.hoursNeeded().orElseThrow(), 1e-9);
        PlannedWeek week = year.weeks().get(0);
        assertEquals(LocalDate.parse("2026-12-28"), week.monday());
        assertEquals(3, week.hours(), 1e-9);
        assertEquals(3, week.shares().get(0).hours(), 1e-9);
        assertEquals(0, year.early());
    }

    /** Six days from 22 December end on the 27th. It is chosen all the same, as a piece that has no date before the year. */
    @Test
    void a_begun_piece_may_be_finished_before_the_year() {
        YearReckoning year = named(begun("b", 6, Goal.NONE), days("u", 1, ""));
        assertEquals(List.of("b SHORTEST 2026-12-27", "u SHORTEST 2027-01-01"), order(year));
        assertEquals(1, year.hoursNeeded().orElseThrow(), 1e-6);
        assertEquals(0, year.early());
    }

    /** By date, then the shortest: d of 4 days ends on the 25th, c of 3 on the 28th, and 3 of b's 5 are done; it ends on 2 January. */
    @Test
    void begun_pieces_come_by_date_and_then_the_shortest_first() {
        YearReckoning year = named(begun("b", 5, Goal.NONE), begun("c", 3, Goal.NONE), begun("d", 4, Years.due("2027-06-01")));
        assertEquals(List.of("b 2027-01-02", "c 2026-12-28", "d 2026-12-25"),
                year.chosen().stream().map(it -> it.id() + " " + it.finish()).sorted().toList());
    }

    /** 370 days are 5 more than the year has, but ten come before it: done on the 360th day of the year, 26 December. */
    @Test
    void whether_pieces_fit_counts_what_is_done_before_the_year() {
        for (YearReckoning year : List.of(named(begun("b", 370, Goal.NONE)),
                reckon(Years.goals(2027, OptionalInt.of(1), 1), "2026-12-22", begun("b", 370, MUST)))) {
            assertEquals(LocalDate.parse("2027-12-26"), year.chosen().get(0).finish());
            assertEquals(360, year.hoursNeeded().orElseThrow(), 1e-6);
            assertTrue(!warned(year, YearWarning.Kind.NAMED_DO_NOT_FIT) && !warned(year, YearWarning.Kind.MUSTS_DO_NOT_FIT));
            assertEquals(0, year.hoursShort());
        }
        YearReckoning unbegun = named(days("b", 370, ""));
        assertEquals(370, unbegun.hoursNeeded().orElseThrow(), 1e-9);
        assertTrue(warned(unbegun, YearWarning.Kind.NAMED_DO_NOT_FIT));
    }

    /** 366 days do not fit the year's 365, begun or not: what could be done before is no reason to choose a piece. */
    @Test
    void the_choice_counts_on_the_year_alone() {
        YearReckoning year = reckon(Years.goals(2027), "2026-12-22", begun("b", 366, Goal.NONE), begun("c", 365, Goal.NONE));
        assertEquals(List.of("c"), year.chosen().stream().map(PlannedPiece::id).toList());
        assertEquals(List.of(PassedOver.Why.DOES_NOT_FIT), year.notChosen().stream().map(PassedOver::why).toList());
        // Nor does a must-have's work before the year make room for another: 360 and 6 are a day too many.
        YearReckoning beside = reckon(Years.goals(2027), "2026-12-22", begun("b", 360, MUST), days("u", 6, ""));
        assertEquals(List.of("b"), beside.chosen().stream().map(PlannedPiece::id).toList());
    }

    /**
     * Four days wanted by the second day cannot be in time, and stand back for g, which is: six days to the 27th, then four to the 31st,
     * eight late.
     * To save it: 4 days in 2 and 10 in 10, so twice the pace, 7 hours a week more.
     */
    @Test
    void what_comes_late_before_the_year_is_told_with_what_would_save_it() {
        YearReckoning year = reckon(Years.goals(2027, OptionalInt.empty(), 1), "2026-12-22", days("f", 4, "2026-12-23"), days("g", 6, "2026-12-31"));
        assertEquals(List.of("g DUE 2026-12-27", "f LATE 2026-12-31"), order(year));
        assertEquals(8, year.chosen().get(1).lateDays());
        assertEquals(7, year.chosen().get(1).rescue().orElseThrow().moreHoursPerWeek().orElseThrow(), 1e-9);
        assertEquals(2, year.early());
    }

    /**
     * Thirty days wanted by the fourth day are no early piece: named, it has all ten days before the year and twenty in it, to 20
     * January, 26
     * days late. 30/4 of the pace would save it, 45.5 hours a week more. What is begun has its five days after it.
     */
    @Test
    void what_cannot_be_finished_before_the_year_goes_on_into_it() {
        YearReckoning year = named(begun("b", 5, Goal.NONE), days("a", 30, "2026-12-25"));
        assertEquals(List.of("a LATE 2027-01-20", "b SHORTEST 2027-01-25"), order(year));
        assertEquals(26, year.chosen().get(0).lateDays());
        assertEquals(LocalDate.parse("2026-12-21"), year.chosen().get(0).firstWeek());
        assertEquals(45.5, year.chosen().get(0).rescue().orElseThrow().moreHoursPerWeek().orElseThrow(), 1e-9);
        assertEquals(25, year.hoursNeeded().orElseThrow(), 1e-6);
        assertEquals(0, year.early());
    }

    @Test
    void what_goes_before_the_year_need_not_be_named() {
        Goal gift = new Goal(true, Optional.of(LocalDate.parse("2026-12-31")), 1);
        YearReckoning year = reckon(Years.goals(2027, "u"), "2026-12-22", Years.piece("gift", 40, gift), days("u", 5, ""));
        assertEquals(List.of("gift DUE 2026-12-25", "u SHORTEST 2027-01-05"), order(year));
        assertTrue(!warned(year, YearWarning.Kind.MUSTS_NOT_NAMED));
    }

    /** Ten days of work in the ten days before the year, wanted on the last of them. */
    @Test
    void a_gift_may_take_every_day_before_the_year() {
        YearReckoning year = named(days("gift", 10, "2026-12-31"));
        assertEquals(List.of("gift DUE 2026-12-31"), order(year));
        assertEquals(1, year.early());
        assertEquals(10, year.stitchesPerHour().orElseThrow());
        assertEquals(7, year.hoursPerWeek().orElseThrow());
    }

    /** In the year itself there are no days before it: a date gone by is late, as it always was. */
    @Test
    void from_new_years_day_on_there_is_no_lead() {
        YearReckoning year = reckon(Years.goals(2027, "gift"), "2027-01-01", days("gift", 4, "2026-12-31"));
        assertEquals(List.of("gift LATE 2027-01-04"), order(year));
        assertEquals(4, year.hoursNeeded().orElseThrow(), 1e-9);
    }

    /**
     * Whatever the pieces: what has its date keeps it, and the year's own weeks hold the hours it is said to need. 2029 begins on a
     * Monday, so
     * that no week has days of two years; up to twelve pieces of sixty days at two a day end in it.
     */
    @Property(tries = 1000, seed = "2029")
    void dates_are_kept_and_the_years_weeks_add_up(@ForAll long mix, @ForAll @IntRange(min = 1, max = 12) int pieces,
                                                   @ForAll @IntRange(min = 51, max = 100) int percent, @ForAll @IntRange(min = 1, max = 60) int before) {
        Random random = new Random(mix);
        LocalDate asOf = LocalDate.parse("2029-01-01").minusDays(before);
        List<Piece> basket = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            Goal goal = random.nextInt(3) == 0 ? Goal.NONE : Years.due(asOf.plusDays(random.nextInt(300)).toString());
            int stitches = 10 * (1 + random.nextInt(60));
            basket.add(random.nextBoolean() ? Years.piece("p" + i, stitches, goal)
                    : Years.piece("p" + i, stitches + 10, goal, Years.log(asOf.minusDays(9) + " 1 10")));
        }
        Goals goals = Years.goals(2029, OptionalInt.empty(), percent / 100.0, basket.stream().map(Piece::id).toArray(String[]::new));
        YearReckoning year = Years.reckon(Years.basket(Years.pace(10, 14), List.of(Years.off("2028-12-24", "2028-12-26")), goals, basket), asOf.toString());
        for (PlannedPiece piece : year.chosen()) {
            assertTrue(piece.place() != Place.DUE || piece.lateDays() == 0, piece.id());
            assertTrue(piece.finish().getYear() < 2030, piece.id());
        }
        assertEquals(year.hoursNeeded().orElseThrow(),
                year.weeks().stream().flatMap(week -> week.shares().stream()).mapToDouble(PlannedWeek.Share::hours).sum(), 1e-6);
        assertEquals(pieces, year.chosen().size());
    }
}
