package kitleaf.sizing.year;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.TreeMap;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Pace;
import kitleaf.basket.Piece;
import kitleaf.basket.TimeOff;
import kitleaf.sizing.StitchPace;

/**
 * Her pace: what she says of it, else what her logs tell.
 *
 * <p>Assumptions, without a source: a logged stitch counts as a plain cross; hours a week are the mean of the logged weeks,
 * since what a year adds up to follows the mean and not the median. The last logged week may not be over yet and counts
 * as it is. A week of which only some days were off counts as it is too; both err on the slow side.
 *
 * @param stitchesPerHour plain crosses an hour
 * @param hoursPerWeek hours in a week without time off
 * @param weeks from the first to the last logged week, those without an entry as 0 hours unless they were all time off
 * @param outliers those of them beyond 1.5 interquartile ranges from the quartiles (type 7); they stay in every figure
 * @param meanHours of {@code weeks}; empty without any
 * @param medianHours of {@code weeks}; empty without any
 */
public record WeeklyPace(PaceFigure stitchesPerHour, PaceFigure hoursPerWeek, List<LoggedWeek> weeks, List<LoggedWeek> outliers,
                         OptionalDouble meanHours, OptionalDouble medianHours) {

    private static final double FENCE = 1.5;

    /** Copies the lists. */
    public WeeklyPace {
        Objects.requireNonNull(stitchesPerHour);
        Objects.requireNonNull(hoursPerWeek);
        Objects.requireNonNull(meanHours);
        Objects.requireNonNull(medianHours);
        weeks = List.copyOf(weeks);
        outliers = List.copyOf(outliers);
    }

    /** The pace as known on a day: entries after it are not looked at. */
    static WeeklyPace of(Pace said, List<Piece> pieces, List<TimeOff> timeOff, LocalDate asOf) {
        // Sums of doubles depend on their order; the order of the pieces must not.
        List<LogEntry> entries = pieces.stream().flatMap(piece -> piece.progress().log().stream())
                .filter(entry -> !entry.on().isAfter(asOf))
                .sorted(Comparator.comparing(LogEntry::on).thenComparing(entry -> entry.hours().orElse(0))).toList();
        List<LoggedWeek> weeks = weeks(entries, timeOff);
        OptionalDouble mean = weeks.stream().mapToDouble(LoggedWeek::hours).average();
        double[] hours = weeks.stream().mapToDouble(LoggedWeek::hours).toArray();
        OptionalDouble median = weeks.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Quantiles.type7(hours, 0.5));
        return new WeeklyPace(stitches(said, entries), hours(said, mean), weeks, outliers(weeks, hours), mean, median);
    }

    /** The Monday of a day's week. */
    static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    private static PaceFigure stitches(Pace said, List<LogEntry> entries) {
        if (said.stitchesPerHour().isPresent()) {
            return PaceFigure.of(said.stitchesPerHour().getAsDouble(), PaceFigure.From.STATED);
        }
        OptionalDouble learned = StitchPace.learned(entries);
        return learned.isPresent() ? PaceFigure.of(learned.getAsDouble(), PaceFigure.From.LOGGED)
                : PaceFigure.none(entries.isEmpty() ? PaceFigure.From.NO_LOG : PaceFigure.From.NO_STITCHES);
    }

    private static PaceFigure hours(Pace said, OptionalDouble mean) {
        if (said.hoursPerWeek().isPresent()) {
            return PaceFigure.of(said.hoursPerWeek().getAsDouble(), PaceFigure.From.STATED);
        }
        return mean.isPresent() ? PaceFigure.of(mean.getAsDouble(), PaceFigure.From.LOGGED)
                : PaceFigure.none(PaceFigure.From.NO_LOG);
    }

    private static List<LoggedWeek> weeks(List<LogEntry> entries, List<TimeOff> timeOff) {
        if (entries.isEmpty()) {
            return List.of();
        }
        TreeMap<LocalDate, Double> logged = new TreeMap<>();
        entries.forEach(entry -> logged.merge(monday(entry.on()), entry.hours().orElse(Double.NaN), Double::sum));
        List<LoggedWeek> weeks = new ArrayList<>();
        for (LocalDate week = logged.firstKey(); !week.isAfter(logged.lastKey()); week = week.plusWeeks(1)) {
            double hours = logged.getOrDefault(week, 0.0);
            // A week with a sitting nobody timed tells no hours; what it held is not known.
            if (hours > 0) {
                weeks.add(new LoggedWeek(week, hours));
            } else if (!logged.containsKey(week) && Days.off(week, timeOff) < Days.WEEK) {
                weeks.add(new LoggedWeek(week, 0));
            }
        }
        return weeks;
    }

    private static List<LoggedWeek> outliers(List<LoggedWeek> weeks, double[] hours) {
        if (weeks.isEmpty()) {
            return List.of();
        }
        double low = Quantiles.type7(hours, 0.25);
        double high = Quantiles.type7(hours, 0.75);
        double far = FENCE * (high - low);
        return weeks.stream().filter(week -> week.hours() < low - far || week.hours() > high + far).toList();
    }
}
