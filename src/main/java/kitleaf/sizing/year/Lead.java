package kitleaf.sizing.year;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The days from the one looked from until the goals' year begins. Their hours go to pieces wanted before the year first, then to begun
 * ones; what is neither waits for the year.
 *
 * @param begins the day the year begins, counted from 0; 0 when it has begun, and then there is no lead
 * @param newYear its date
 * @param early wanted before the year and finished by then at her usual pace: they take nothing of the year, and are no choice of it
 * @param hours what the early ones leave, 0 or more
 * @param begun IDs of the begun pieces
 */
record Lead(int begins, LocalDate newYear, List<Candidate> early, double hours, Set<String> begun) {

    Lead {
        early = List.copyOf(early);
        begun = Set.copyOf(begun);
    }

    /**
     * The lead to a year.
     *
     * @param hoursPerWeek in a week without time off, above 0
     * @param lastDay the last day of the year
     */
    static Lead of(List<Candidate> candidates, Set<String> begun, Days days, double hoursPerWeek, LocalDate lastDay) {
        LocalDate newYear = lastDay.withDayOfYear(1);
        int begins = Math.max(0, days.day(newYear));
        double hours = hoursPerWeek / Days.WEEK * days.between(0, begins - 1);
        List<Candidate> early = new ArrayList<>();
        List<Candidate> wanted = candidates.stream().filter(one -> begins > 0 && one.wantedBefore(newYear)).toList();
        for (Schedule.Turn turn : Schedule.of(wanted, days, hoursPerWeek, lastDay).turns()) {
            if (turn.candidate().hours() <= hours + LateJobs.SAME_HOURS) {
                early.add(turn.candidate());
                hours = Math.max(0, hours - turn.candidate().hours());
            }
        }
        return new Lead(begins, newYear, early, hours, begun);
    }

    /** What pieces take of the year itself: their hours without what the lead has for those of them it serves. */
    double yearHours(Collection<Candidate> pieces) {
        return sum(pieces, one -> true) - Math.min(hours, sum(pieces, this::serves));
    }

    /** Whether a piece may be worked before the year begins. */
    boolean serves(Candidate piece) {
        return piece.wantedBefore(newYear) || begun.contains(piece.id());
    }

    private static double sum(Collection<Candidate> pieces, Predicate<Candidate> which) {
        // Added in the order of IDs, so that the sum is the same in whatever order they come.
        return pieces.stream().filter(which).sorted(Comparator.comparing(Candidate::id)).mapToDouble(Candidate::hours).sum();
    }
}
