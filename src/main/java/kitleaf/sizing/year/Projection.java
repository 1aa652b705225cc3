package kitleaf.sizing.year;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/**
 * When pieces are likely to be finished, by working the schedule through many years whose weeks are drawn with replacement from
 * the logged ones (the bootstrap: Efron and Tibshirani, An Introduction to the Bootstrap, 1993).
 *
 * <p>Assumptions, no source: weeks are alike the whole year and do not depend on one another; the stitches an hour do not vary;
 * the logged weeks are all the weeks there are, so that few of them show too little spread. Where hours a week are stated
 * as well, the logged weeks are scaled to have them as their mean.
 *
 * @param finishes of each turn of the schedule, in its order
 * @param chanceAll of all of them by their deadlines, 0 to 1
 * @param spread whether the weeks drawn from differ at all
 */
record Projection(List<Finish> finishes, double chanceAll, boolean spread) {

    /** Years drawn. A chance of one half is known to about 0.02 by them: twice sqrt(0.25 / 2000). */
    static final int RUNS = 2000;

    /** The seed where she gave none. */
    static final long USUAL_SEED = 20_270_101L;

    /**
     * When one piece is finished.
     *
     * @param p10 the day by which it is in one of ten years
     * @param p50 the day by which it is in one of two
     * @param p90 the day by which it is in nine of ten
     * @param chance to be finished by its deadline, 0 to 1
     */
    record Finish(LocalDate p10, LocalDate p50, LocalDate p90, double chance) { }

    Projection {
        finishes = List.copyOf(finishes);
    }

    /** Projects a schedule; equal arguments give equal results, bit for bit. */
    static Projection of(Schedule schedule, Work work, Days days, WeeklyPace pace, long seed) {
        return of(schedule, work, days, pace, 1, seed);
    }

    /** The same with so many times the hours in every week, above 0. */
    static Projection of(Schedule schedule, Work work, Days days, WeeklyPace pace, double times, long seed) {
        double[] drawn = Arrays.stream(weeks(pace)).map(hours -> hours * times).toArray();
        boolean spread = Arrays.stream(drawn).distinct().count() > 1;
        int runs = spread ? RUNS : 1;
        int pieces = schedule.turns().size();
        double[][] finished = new double[pieces][runs];
        int[] deadlines = schedule.turns().stream().mapToInt(turn -> days.day(turn.deadline())).toArray();
        int[] inTime = new int[pieces];
        int allInTime = 0;
        SplittableRandom random = new SplittableRandom(seed);
        for (int run = 0; run < runs; run++) {
            // A stream of its own, so that a run does not depend on how many weeks the runs before it took.
            SplittableRandom weeks = random.split();
            int[] day = work.finished(week -> drawn[weeks.nextInt(drawn.length)]);
            boolean all = true;
            for (int piece = 0; piece < pieces; piece++) {
                finished[piece][run] = day[piece];
                boolean punctual = day[piece] <= deadlines[piece];
                inTime[piece] += punctual ? 1 : 0;
                all &= punctual;
            }
            allInTime += all ? 1 : 0;
        }
        List<Finish> finishes = new ArrayList<>();
        for (int piece = 0; piece < pieces; piece++) {
            Arrays.sort(finished[piece]);
            finishes.add(new Finish(date(days, finished[piece], 0.1), date(days, finished[piece], 0.5),
                    date(days, finished[piece], 0.9), (double) inTime[piece] / runs));
        }
        return new Projection(finishes, (double) allInTime / runs, spread);
    }

    /** The weeks to draw from; the stated one alone where nothing is logged. */
    private static double[] weeks(WeeklyPace pace) {
        double perWeek = pace.hoursPerWeek().figure().orElseThrow();
        OptionalDouble mean = pace.meanHours();
        if (mean.isEmpty()) {
            return new double[] {perWeek};
        }
        double scale = pace.hoursPerWeek().from() == PaceFigure.From.STATED ? perWeek / mean.getAsDouble() : 1;
        return pace.weeks().stream().mapToDouble(week -> week.hours() * scale).toArray();
    }

    /** Between two days the later one: by then it is finished. */
    private static LocalDate date(Days days, double[] sorted, double p) {
        return days.date((int) Math.ceil(Quantiles.ofSorted(sorted, p)));
    }
}
