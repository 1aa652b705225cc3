package kitleaf.sizing.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Seeds are fixed, so that no run differs from another; tolerances are still those of chance. */
class ProjectionTests {

    private static final LocalDate MONDAY = LocalDate.parse("2027-01-04");
    private static final LocalDate YEAR_END = LocalDate.parse("2027-12-31");
    private static final Days DAYS = new Days(MONDAY, LocalDate.parse("2047-12-31"), List.of());

    private static WeeklyPace pace(double... hours) {
        double mean = Arrays.stream(hours).average().orElseThrow();
        return new WeeklyPace(PaceFigure.of(1, PaceFigure.From.STATED), PaceFigure.of(mean, PaceFigure.From.LOGGED), IntStream.range(0, hours.length)
                .mapToObj(i -> new LoggedWeek(MONDAY.minusWeeks(hours.length - i), hours[i])).toList(), List.of(),
                OptionalDouble.of(mean), OptionalDouble.empty());
    }

    private static Projection project(WeeklyPace pace, long seed, Candidate... pieces) {
        double perWeek = pace.hoursPerWeek().figure().orElseThrow();
        Schedule schedule = Schedule.of(List.of(pieces), DAYS, perWeek, YEAR_END);
        return Projection.of(schedule, new Work(schedule, DAYS, perWeek, 0.7), DAYS, pace, seed);
    }

    private static Candidate piece(String id, double hours, String due) {
        return new Candidate(id, hours, 1, false, due.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(due)));
    }

    /**
     * Weeks of 14, 0 and 14 hours, a piece of 14: it ends with the first week that is not empty, on Sunday. In time after 1, 2
     * and 3 weeks with 2/3, 8/9 and 26/27. Two standard errors of 8/9 in 2000 years are 0.014.
     */
    @Test
    void chances_and_dates_are_those_of_the_weeks_drawn() {
        Projection.Finish finish = project(pace(14, 0, 14), 1, piece("a", 14, "2027-01-17")).finishes().get(0);
        assertEquals(8.0 / 9, finish.chance(), 0.014);
        assertEquals(LocalDate.parse("2027-01-10"), finish.p10());
        assertEquals(LocalDate.parse("2027-01-10"), finish.p50());
        assertEquals(LocalDate.parse("2027-01-24"), finish.p90());
    }

    /**
     * Treated mice of Efron and Tibshirani, An Introduction to the Bootstrap, 1993, table 2.1, as hours of seven weeks: a piece of 7 x m hours
     * is finished in seven weeks when the mean of the seven drawn is m or more. Of all 7^7 samples, 95 % have means from 43.43 to
     * 134.43; every chance here is counted over all of them. Three standard errors in 2000 years are at most 0.034.
     */
    @ParameterizedTest
    @ValueSource(doubles = {43.43, 60, 86.86, 110, 134.43})
    void means_of_weeks_drawn_spread_as_all_samples_do(double mean) {
        int[] mice = {94, 197, 16, 38, 99, 141, 23};
        int samples = 823_543;
        int enough = 0;
        for (int sample = 0; sample < samples; sample++) {
            int sum = 0;
            for (int rest = sample, i = 0; i < 7; i++, rest /= 7) {
                sum += mice[rest % 7];
            }
            enough += sum >= 7 * mean ? 1 : 0;
        }
        double exact = (double) enough / samples;
        double chance = project(pace(Arrays.stream(mice).asDoubleStream().toArray()), 7, piece("a", 7 * mean, "2027-02-21")).finishes().get(0).chance();
        assertEquals(exact, chance, 3 * Math.sqrt(exact * (1 - exact) / Projection.RUNS) + 1e-9);
        // The limits published for the whole distribution; a sample weighs far less than a thousandth.
        if (mean == 43.43 || mean == 134.43) {
            assertEquals(mean == 43.43 ? 0.975 : 0.025, exact, 0.001);
        }
    }

    /**
     * Stitchers whose weeks are known: none to eight hours, each as likely. Each logs 260 weeks; then her true next weeks are drawn from the
     * same. A piece of 104 hours takes 26 weeks, so that what 260 logged weeks do not tell widens the truth by sqrt(1 + 26/260), and
     * the middle 80 % of the logged weeks hold 1.2816 / 1.0488 = 1.222 standard deviations: 77.8 %. In 400 trials two
     * standard errors of that are 4.2 %; whole days at both ends add about 1 %.
     */
    @Test
    void four_in_five_finishes_lie_between_p10_and_p90() {
        int trials = 400;
        Random truth = new Random(2027);
        int held = 0;
        for (int trial = 0; trial < trials; trial++) {
            double[] logged = truth.ints(260, 0, 9).asDoubleStream().toArray();
            WeeklyPace pace = pace(logged);
            Candidate piece = piece("a", 104, "");
            Projection.Finish finish = project(pace, trial, piece).finishes().get(0);
            double left = 104;
            int day = -1;
            for (int week = 0; left > 1e-9; week++) {
                double perDay = truth.nextInt(9) / 7.0;
                for (int i = 0; i < 7 && left > 1e-9; i++) {
                    left -= perDay;
                    day = 7 * week + i;
                }
            }
            LocalDate end = MONDAY.plusDays(day);
            held += !end.isBefore(finish.p10()) && !end.isAfter(finish.p90()) ? 1 : 0;
        }
        assertEquals(0.778, (double) held / trials, 0.052);
    }

    @Test
    void the_same_seed_gives_the_same_and_another_does_not() {
        Candidate[] pieces = {piece("a", 50, "2027-06-01"), piece("b", 60, "")};
        WeeklyPace pace = pace(1, 7, 2, 9, 4, 0, 3);
        assertEquals(project(pace, 5, pieces), project(pace, 5, pieces));
        assertNotEquals(project(pace, 5, pieces), project(pace, 6, pieces));
    }

    @Test
    void all_in_time_is_no_likelier_than_any() {
        Projection projection = project(pace(1, 7, 2, 9, 4, 0, 3), 5, piece("a", 50, "2027-04-01"), piece("b", 130, ""));
        double least = projection.finishes().stream().mapToDouble(Projection.Finish::chance).min().orElseThrow();
        assertTrue(projection.chanceAll() <= least);
        assertTrue(projection.chanceAll() > 0 && projection.chanceAll() < 1, "" + projection.chanceAll());
    }

    @Test
    void a_stated_pace_alone_has_no_spread() {
        WeeklyPace said = new WeeklyPace(PaceFigure.of(1, PaceFigure.From.STATED), PaceFigure.of(7, PaceFigure.From.STATED), List.of(), List.of(),
                OptionalDouble.empty(), OptionalDouble.empty());
        Projection projection = project(said, 1, piece("a", 10, ""));
        assertFalse(projection.spread());
        assertEquals(projection.finishes().get(0).p10(), projection.finishes().get(0).p90());
    }

    /** Logged weeks of 14, 0 and 14 hours under a stated 14 a week, 3/2 of their mean: 21, 0 and 21, of which one ends 21 hours. */
    @Test
    void logged_weeks_are_scaled_to_a_stated_pace() {
        WeeklyPace logged = pace(14, 0, 14);
        WeeklyPace said = new WeeklyPace(logged.stitchesPerHour(), PaceFigure.of(14, PaceFigure.From.STATED), logged.weeks(), List.of(),
                logged.meanHours(), OptionalDouble.empty());
        assertEquals(8.0 / 9, project(said, 1, piece("a", 21, "2027-01-17")).finishes().get(0).chance(), 0.014);
    }
}
