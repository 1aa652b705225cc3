package kitleaf.sizing.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import kitleaf.basket.Basket;
import kitleaf.basket.Goal;
import kitleaf.basket.Goals;
import kitleaf.basket.Pace;
import kitleaf.basket.Piece;
import kitleaf.sizing.Reckoning;
import org.junit.jupiter.api.Test;

/** By hand: 10 stitches an hour and 7 hours a week, so that 10 stitches are a day's work; 365 of them in 2027. */
class YearReckoningTests {

    private static final Pace PACE = Years.pace(10, 7);

    private static Piece days(String id, int days) {
        return Years.piece(id, 10 * days, Goal.NONE);
    }

    private static YearReckoning reckon(Goals goals, String asOf, Piece... pieces) {
        return Years.reckon(Years.basket(PACE, List.of(), goals, List.of(pieces)), asOf);
    }

    private static List<String> passed(YearReckoning year) {
        return year.notChosen().stream().map(one -> one.reckoning().piece().id() + " " + one.why()).toList();
    }

    private static List<String> chosen(YearReckoning year) {
        return year.chosen().stream().map(PlannedPiece::id).toList();
    }

    private static Optional<YearWarning> warning(YearReckoning year, YearWarning.Kind kind) {
        return year.warnings().stream().filter(it -> it.kind() == kind).findFirst();
    }

    @Test
    void hours_run_from_the_day_looked_from_to_the_years_end_both_counted() {
        assertEquals(365, reckon(Years.goals(2027), "2026-11-01").hoursAvailable().orElseThrow(), 1e-9);
        assertEquals(31, reckon(Years.goals(2027), "2027-12-01").hoursAvailable().orElseThrow(), 1e-9);
        assertEquals(1, reckon(Years.goals(2027), "2027-12-31").hoursAvailable().orElseThrow(), 1e-9);
        YearReckoning over = reckon(Years.goals(2027), "2028-01-01", days("a", 1));
        assertEquals(0, over.hoursAvailable().orElseThrow());
        assertTrue(warning(over, YearWarning.Kind.YEAR_OVER).isPresent());
        assertEquals(List.of("a DOES_NOT_FIT"), passed(over));
    }

    @Test
    void every_piece_stands_in_one_place_with_its_reason() {
        YearReckoning year = reckon(Years.goals(2027, OptionalInt.of(2), 0.7), "2027-03-01", days("big", 400), days("one", 10), days("two", 20),
                Years.piece("now", 100, Goal.NONE, Years.finished("2027-02-03")), Years.piece("then", 100, Goal.NONE, Years.finished("2026-02-03")));
        // One of the two is finished already: one more.
        assertEquals(List.of("one"), chosen(year));
        assertEquals(List.of("now"), year.finished().stream().map(it -> it.piece().id()).toList());
        assertEquals(List.of("big DOES_NOT_FIT", "then FINISHED", "two NOT_AMONG_BEST"), passed(year));
        assertEquals(10, year.hoursNeeded().orElseThrow(), 1e-9);
    }

    /** Finished in the year: by day. Finished in another: passed over, with nothing left to do. */
    @Test
    void finished_pieces_stand_by_the_day_they_were_finished_on() {
        YearReckoning year = reckon(Years.goals(2027), "2027-06-01", Years.piece("a", 100, Goal.NONE, Years.finished("2027-05-03")),
                Years.piece("b", 100, Goal.NONE, Years.finished("2027-02-03")),
                Years.piece("then", 100, Goal.NONE, Years.finished("2026-02-03")));
        assertEquals(List.of("b", "a"), year.finished().stream().map(it -> it.piece().id()).toList());
        assertEquals(OptionalDouble.of(0), year.notChosen().get(0).hoursLeft());
    }

    @Test
    void named_pieces_are_planned_and_judged() {
        YearReckoning year = reckon(Years.goals(2027, "b", "a", "gone"), "2027-01-01", days("a", 300), days("b", 100), days("c", 1),
                Years.piece("d", 10, new Goal(true, Optional.empty(), 1)));
        assertEquals(List.of("b", "a"), chosen(year));
        assertEquals(35, warning(year, YearWarning.Kind.NAMED_DO_NOT_FIT).orElseThrow().figure().orElseThrow(), 1e-9);
        assertEquals(35, year.hoursShort(), 1e-9);
        assertEquals(List.of("gone"), warning(year, YearWarning.Kind.NAMED_MISSING).orElseThrow().pieces());
        assertEquals(List.of("d"), warning(year, YearWarning.Kind.MUSTS_NOT_NAMED).orElseThrow().pieces());
        assertEquals(List.of("c NOT_NAMED", "d NOT_NAMED"), passed(year));
        // 400 days from New Year's Day: 4 February of the next year, 35 days late, and by chance as certain as the pace is.
        assertEquals(LocalDate.parse("2028-02-04"), year.chosen().get(1).finish());
        assertEquals(35, year.chosen().get(1).lateDays());
        assertEquals(0, year.chanceAll().orElseThrow());
    }

    @Test
    void must_haves_that_do_not_fit_are_told_of() {
        Goal must = new Goal(true, Optional.empty(), 1);
        YearReckoning year = reckon(Years.goals(2027, OptionalInt.of(1), 0.7), "2027-01-01", Years.piece("a", 2000, must), Years.piece("b", 2000, must));
        assertEquals(List.of("a", "b"), chosen(year));
        assertEquals(35, warning(year, YearWarning.Kind.MUSTS_DO_NOT_FIT).orElseThrow().figure().orElseThrow(), 1e-9);
        assertEquals(1, warning(year, YearWarning.Kind.MORE_MUSTS_THAN_CHOSEN).orElseThrow().figure().orElseThrow());
    }

    /** As many must-haves as there are to choose are none too many. */
    @Test
    void must_haves_may_be_all_there_is_to_choose() {
        Goal must = new Goal(true, Optional.empty(), 1);
        YearReckoning year = reckon(Years.goals(2027, OptionalInt.of(2), 0.7), "2027-01-01", Years.piece("a", 20, must),
                Years.piece("b", 20, must));
        assertEquals(List.of("a", "b"), chosen(year));
        assertTrue(warning(year, YearWarning.Kind.MORE_MUSTS_THAN_CHOSEN).isEmpty());
    }

    @Test
    void a_date_after_the_year_counts_as_its_end() {
        YearReckoning year = reckon(Years.goals(2027), "2027-01-01", Years.piece("a", 100, Years.due("2028-05-01")));
        assertEquals(year.lastDay(), year.chosen().get(0).deadline());
        assertEquals(Place.DUE, year.chosen().get(0).place());
    }

    @Test
    void without_a_pace_nothing_is_made_up() {
        Basket basket = Years.basket(Pace.UNSAID, List.of(), Years.goals(2027), List.of(days("a", 3)));
        YearReckoning year = Years.reckon(basket, "2027-01-01");
        assertTrue(year.chosen().isEmpty() && year.hoursAvailable().isEmpty() && year.hoursNeeded().isEmpty() && year.chanceAll().isEmpty());
        assertEquals(List.of("a HOURS_UNKNOWN"), passed(year));
        assertEquals(List.of(YearWarning.Kind.NO_STITCHES_PER_HOUR, YearWarning.Kind.NO_HOURS_PER_WEEK),
                year.warnings().stream().map(YearWarning::kind).toList());
        Basket hours = Years.basket(new Pace(OptionalDouble.empty(), OptionalDouble.of(7)), List.of(), Years.goals(2027), List.of(days("a", 3)));
        assertEquals(365, Years.reckon(hours, "2027-01-01").hoursAvailable().orElseThrow(), 1e-9);
    }

    @Test
    void without_a_pace_names_are_looked_at_all_the_same() {
        List<Piece> pieces = List.of(days("a", 3), days("b", 3));
        YearReckoning year = Years.reckon(Years.basket(Pace.UNSAID, List.of(), Years.goals(2027, "b", "gone"), pieces), "2027-01-01");
        assertEquals(List.of("b HOURS_UNKNOWN", "a NOT_NAMED"), passed(year));
        assertEquals(List.of("gone"), warning(year, YearWarning.Kind.NAMED_MISSING).orElseThrow().pieces());
    }

    /** ISO 8601: 2026 has 53 weeks; 2027 begins in the last of them, and its own 52 follow. */
    @Test
    void weeks_are_those_of_iso_8601_with_a_day_in_the_year() {
        List<Integer> numbers = reckon(Years.goals(2027), "2027-01-01").weeks().stream().map(PlannedWeek::number).toList();
        assertEquals(53, numbers.size());
        assertEquals(List.of(53, 1, 2), numbers.subList(0, 3));
        assertEquals(52, numbers.get(52));
    }

    @Test
    void the_weeks_add_up_to_the_year() {
        YearReckoning year = reckon(Years.goals(2027, "a", "b"), "2027-02-10", days("a", 100), days("b", 150));
        assertEquals(year.hoursAvailable().orElseThrow(), year.weeks().stream().mapToDouble(PlannedWeek::hours).sum(), 1e-9);
        assertEquals(250, year.weeks().stream().flatMap(week -> week.shares().stream()).mapToDouble(PlannedWeek.Share::hours).sum(), 1e-6);
    }

    @Test
    void a_piece_with_nothing_left_is_finished_on_the_first_day() {
        YearReckoning year = reckon(Years.goals(2027), "2027-03-03", Years.piece("a", 100, Goal.NONE, Years.log("2027-03-02 2 100")), days("b", 5));
        PlannedPiece done = year.chosen().get(0);
        assertEquals(List.of("a", "b"), chosen(year));
        assertEquals(0, done.hoursLeft());
        assertEquals(LocalDate.parse("2027-03-03"), done.finish());
        assertEquals(LocalDate.parse("2027-03-03"), done.p90());
        assertEquals(1, done.chance());
    }

    @Test
    void the_order_of_the_pieces_changes_nothing() {
        Random random = new Random(1);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            String[] log = random.ints(12, 0, 300).mapToObj(day -> LocalDate.parse("2026-01-01").plusDays(day) + " " + (1 + random.nextInt(40)) / 10.0
                    + " " + random.nextInt(90)).toArray(String[]::new);
            pieces.add(Years.piece("p" + i, 1200 + random.nextInt(4000), i % 4 == 0 ? Years.due("2027-0" + (1 + i % 9) + "-15") : Goal.NONE, Years.log(log)));
        }
        YearReckoning one = Years.reckon(Years.basket(Pace.UNSAID, List.of(), Years.goals(2027), pieces), "2026-12-01");
        Collections.shuffle(pieces, random);
        assertEquals(one, Years.reckon(Years.basket(Pace.UNSAID, List.of(), Years.goals(2027), pieces), "2026-12-01"));
        assertTrue(one.chosen().size() > 3 && one.chanceAll().orElseThrow() > 0 && one.chanceAll().orElseThrow() < 1, one.chanceAll().toString());
    }

    @Test
    void a_basket_without_goals_has_no_year() {
        Basket with = Years.basket(PACE, List.of(), Years.goals(2027), List.of());
        Basket without = new Basket(with.title(), with.language(), with.paper(), with.units(), with.largePrint(), with.printer(), with.cutStepMm(), with.putUps(), with.stash(), with.prices(),
                with.labelStock(), with.tags(), with.clothSupply(), with.pace(), with.timeOff(), Optional.empty(), with.pieces());
        assertTrue(Reckoning.of(without).year(LocalDate.EPOCH).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> YearReckoning.of(without, List.of(), LocalDate.EPOCH));
    }
}
