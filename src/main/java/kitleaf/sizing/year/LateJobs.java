package kitleaf.sizing.year;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Jobs done one after another, each wanted by a time.
 */
final class LateJobs {

    /** How much later than wanted is still in time: rounding of sums, far below a second of stitching. */
    static final double SAME_HOURS = 1e-6;

    /**
     * A job.
     *
     * @param id tells it from others
     * @param hours it takes, 0 or more
     * @param wanted hours from now until it is wanted, 0 or more
     */
    record Job(String id, double hours, double wanted) { }

    /** The earliest wanted first, then by ID. */
    static final Comparator<Job> EARLIEST = Comparator.comparingDouble(Job::wanted).thenComparing(Job::id);

    private LateJobs() { }

    /**
     * The fewest jobs that have to be late for all others to be in time: jobs are added, the earliest wanted first, and
     * whenever one comes out late, the longest so far is given up (Moore, Management Science 15(1), 1968, 102-109, in Hodgson's form).
     * Of equally long ones the last by date and ID is given up.
     *
     * @return the IDs of those given up
     */
    static Set<String> fewest(List<Job> jobs) {
        List<Job> kept = new ArrayList<>();
        Set<String> late = new HashSet<>();
        double hours = 0;
        for (Job job : jobs.stream().sorted(EARLIEST).toList()) {
            kept.add(job);
            hours += job.hours();
            if (hours > job.wanted() + SAME_HOURS) {
                Job longest = kept.stream().reduce((one, other) -> other.hours() >= one.hours() ? other : one).orElseThrow();
                kept.remove(longest);
                late.add(longest.id());
                hours -= longest.hours();
            }
        }
        return late;
    }

    /**
     * How many times faster all jobs would have to be done for all to be in time, the earliest wanted first, which is the order that
     * keeps the greatest lateness least (Jackson 1955); 1 or less when they are already. Empty when no speed is enough.
     *
     * @param before hours of what is done before all of them, 0 or more
     */
    static OptionalDouble speed(List<Job> jobs, double before) {
        double hours = before;
        double speed = 0;
        for (Job job : jobs.stream().sorted(EARLIEST).toList()) {
            hours += job.hours();
            if (hours > SAME_HOURS) {
                if (job.wanted() <= 0) {
                    return OptionalDouble.empty();
                }
                speed = Math.max(speed, hours / job.wanted());
            }
        }
        return OptionalDouble.of(speed);
    }
}
