package kitleaf.sizing.year;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import kitleaf.basket.Basket;
import kitleaf.sizing.PieceReckoning;

/**
 * All that is reckoned of a year.
 *
 * @param year which one
 * @param asOf the day it is looked from, and the first day planned
 * @param pace hers
 * @param hoursAvailable in the year, from {@code asOf} on, both counted, time off taken off; empty without hours a week
 * @param hoursNeeded in the year for the chosen pieces, without what is done before it begins; empty where no plan can be made
 * @param chosen in the order of the plan; the first are those wanted before the year and finished by then, which are no choice of hers
 * @param finished pieces finished in the year, by day and ID; they count towards the number of pieces to choose
 * @param notChosen all others by ID, but the pieces she named first and in her order
 * @param chanceAll of all chosen pieces by their deadlines, 0 to 1; empty when none is chosen
 * @param horizon the last day looked at; finish dates on it mean then or later
 * @param weeks every ISO week with a day in the year, in order; without hours where no plan can be made
 * @param warnings the gravest first
 */
public record YearReckoning(int year, LocalDate asOf, WeeklyPace pace, OptionalDouble hoursAvailable,
                            OptionalDouble hoursNeeded, List<PlannedPiece> chosen, List<PieceReckoning> finished,
                            List<PassedOver> notChosen, OptionalDouble chanceAll, LocalDate horizon, List<PlannedWeek> weeks,
                            List<YearWarning> warnings) {

    /** Fewer logged weeks than these are few: a quarter of a year, an assumption, no source. */
    public static final int FEW_WEEKS = 13;

    /** How far beyond the year, or beyond the day looked from, is looked: who needs longer hears so. */
    public static final int HORIZON_YEARS = 20;

    /** Copies the lists. */
    public YearReckoning {
        Objects.requireNonNull(asOf);
        Objects.requireNonNull(pace);
        Objects.requireNonNull(hoursAvailable);
        Objects.requireNonNull(hoursNeeded);
        Objects.requireNonNull(chanceAll);
        Objects.requireNonNull(horizon);
        chosen = List.copyOf(chosen);
        finished = List.copyOf(finished);
        notChosen = List.copyOf(notChosen);
        weeks = List.copyOf(weeks);
        warnings = List.copyOf(warnings);
    }

    /**
     * Reckons the goals of a basket. The same basket gives the same result, bit for bit, whatever the order of its pieces.
     *
     * @param pieces what is reckoned of each piece of the basket
     * @param asOf the day it is looked from; log entries after it do not count towards the pace
     * @throws IllegalArgumentException when the basket has no goals
     */
    public static YearReckoning of(Basket basket, List<PieceReckoning> pieces, LocalDate asOf) {
        return new YearPlan(basket, pieces, asOf).reckon();
    }

    /** Plain crosses an hour; {@link #pace()} tells where from. */
    public OptionalDouble stitchesPerHour() {
        return pace.stitchesPerHour().figure();
    }

    /** Hours in a week without time off; {@link #pace()} tells where from. */
    public OptionalDouble hoursPerWeek() {
        return pace.hoursPerWeek().figure();
    }

    /** How many of the chosen pieces, the first ones, are wanted before the year and finished by then. */
    public long early() {
        return chosen.stream().filter(one -> one.deadline().getYear() < year && one.finish().getYear() < year).count();
    }

    /** By how many hours the chosen pieces do not fit; 0 when they do. */
    public double hoursShort() {
        return Math.max(0, hoursNeeded.orElse(0) - hoursAvailable.orElse(0));
    }

    /**
     * Whether dates and chances come from weeks that differ. Where they do not, every drawn year is the same: what is said then is what
     * comes of one pace, and no chance.
     */
    public boolean spread() {
        return warnings.stream().noneMatch(warning -> warning.kind() == YearWarning.Kind.NO_SPREAD);
    }

    /** The last day of the year. */
    public LocalDate lastDay() {
        return LocalDate.of(year, 12, 31);
    }
}
