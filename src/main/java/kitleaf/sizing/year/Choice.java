package kitleaf.sizing.year;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import kitleaf.basket.Goals;

/**
 * Which pieces to finish.
 *
 * @param chosen must-haves and the best set beside them by ID, or the pieces she named in her order
 * @param tooLong those of the others that do not fit beside the must-haves even alone, by ID
 * @param others those that fit but are not in the best set, or were not named, by ID
 * @param hoursNeeded what the chosen pieces take of the year, 0 or more
 * @param hoursAvailable in the year, 0 or more
 */
record Choice(List<Candidate> chosen, List<Candidate> tooLong, List<Candidate> others, double hoursNeeded, double hoursAvailable) {

    /** Hours are compared to the billionth, so that sums do not depend on their order: 3.6 microseconds of stitching. */
    private static final double PARTS = 1e9;

    Choice {
        chosen = List.copyOf(chosen);
        tooLong = List.copyOf(tooLong);
        others = List.copyOf(others);
        if (!(hoursNeeded >= 0 && hoursAvailable >= 0)) {
            throw new IllegalArgumentException("hours must be 0 or more: " + hoursNeeded + ", " + hoursAvailable);
        }
    }

    /**
     * Must-haves first, whether they fit or not; then exactly the best set of the others within the hours left. By number: the most
     * pieces, then the most weight, then the fewest hours. By weight: the most weight, then the most pieces, then the fewest
     * hours. Sets equal in all that are told apart by ID: the one that has the first ID they differ in. All their hours
     * have to fit, as if none were done before the year: no piece is chosen in hope of days outside it.
     *
     * @param lead the days before the year, whose early pieces are not among the candidates
     * @param choose pieces at most, must-haves among them; as many as fit when empty
     */
    static Choice best(List<Candidate> candidates, double hoursAvailable, Lead lead, OptionalInt choose, Goals.By by) {
        List<Candidate> sorted = candidates.stream().sorted(Comparator.comparing(Candidate::id)).toList();
        List<Candidate> chosen = new ArrayList<>(sorted.stream().filter(Candidate::must).toList());
        List<Candidate> rest = sorted.stream().filter(candidate -> !candidate.must()).toList();
        double left = hoursAvailable - chosen.stream().mapToDouble(Candidate::hours).sum();
        // Where the must-haves are too much already, nothing is added, not even a piece that takes no time.
        int most = left * PARTS < -0.5 ? 0 : Math.max(0, choose.orElse(Integer.MAX_VALUE) - chosen.size());
        long capacity = Math.max(0, parts(left));
        List<Integer> best = BestSet.of(rest.stream().mapToLong(one -> parts(one.hours())).toArray(),
                rest.stream().mapToLong(Candidate::weight).toArray(), capacity, most, by == Goals.By.NUMBER);
        best.forEach(i -> chosen.add(rest.get(i)));
        chosen.sort(Comparator.comparing(Candidate::id));
        List<Candidate> passed = rest.stream().filter(one -> !chosen.contains(one)).toList();
        return new Choice(chosen, passed.stream().filter(one -> left < 0 || parts(one.hours()) > capacity).toList(),
                passed.stream().filter(one -> left >= 0 && parts(one.hours()) <= capacity).toList(),
                lead.yearHours(chosen), hoursAvailable);
    }

    /** Her own list, taken as it is. */
    static Choice named(List<Candidate> candidates, List<String> ids, double hoursAvailable, Lead lead) {
        List<Candidate> chosen = ids.stream().distinct()
                .flatMap(id -> candidates.stream().filter(candidate -> candidate.id().equals(id))).toList();
        return new Choice(chosen, List.of(), candidates.stream().filter(one -> !chosen.contains(one))
                .sorted(Comparator.comparing(Candidate::id)).toList(), lead.yearHours(chosen), hoursAvailable);
    }

    /** By how many hours the chosen pieces do not fit; 0 when they do. */
    double hoursShort() {
        return Math.max(0, hoursNeeded - hoursAvailable);
    }

    private static long parts(double hours) {
        // Saturates: what takes longer than 292 years of hours fits nowhere.
        return Math.round(hours * PARTS);
    }
}
