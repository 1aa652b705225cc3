package kitleaf.sizing.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class LateJobsTests {

    private static List<LateJobs.Job> jobs(List<Integer> hours, List<Integer> wanted) {
        return IntStream.range(0, Math.min(hours.size(), wanted.size()))
                .mapToObj(i -> new LateJobs.Job(String.format(Locale.ROOT, "%02d", i + 1), hours.get(i), wanted.get(i))).toList();
    }

    private static int late(List<LateJobs.Job> order) {
        double hours = 0;
        int late = 0;
        for (LateJobs.Job job : order) {
            hours += job.hours();
            late += hours > job.wanted() ? 1 : 0;
        }
        return late;
    }

    private static double lateness(List<LateJobs.Job> order) {
        double hours = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (LateJobs.Job job : order) {
            hours += job.hours();
            most = Math.max(most, hours - job.wanted());
        }
        return most;
    }

    private static List<List<LateJobs.Job>> orders(List<LateJobs.Job> jobs) {
        if (jobs.isEmpty()) {
            return List.of(List.of());
        }
        List<List<LateJobs.Job>> orders = new ArrayList<>();
        for (LateJobs.Job first : jobs) {
            for (List<LateJobs.Job> rest : orders(jobs.stream().filter(job -> job != first).toList())) {
                List<LateJobs.Job> order = new ArrayList<>(List.of(first));
                order.addAll(rest);
                orders.add(order);
            }
        }
        return orders;
    }

    private static List<LateJobs.Job> kept(List<LateJobs.Job> jobs, Set<String> late) {
        return jobs.stream().filter(job -> !late.contains(job.id())).sorted(LateJobs.EARLIEST).toList();
    }

    /** M. Pinedo, Scheduling, the Moore-Hodgson example: 2 late, in time 3 4 5; by date alone 3 are late. */
    @Test
    void the_book_example_has_two_late() {
        List<LateJobs.Job> jobs = jobs(List.of(7, 8, 4, 6, 6), List.of(9, 17, 18, 19, 21));
        assertEquals(Set.of("01", "02"), LateJobs.fewest(jobs));
        assertEquals(3, late(jobs));
    }

    /** Two of five hours by the fifth and the sixth: either could go, and the last does. */
    @Test
    void of_equally_long_jobs_the_last_is_given_up() {
        assertEquals(Set.of("02"), LateJobs.fewest(jobs(List.of(5, 5), List.of(5, 6))));
    }

    /** Ten-job exercise of a university lecture, its answer found by trying all orders: 2 late; by date alone 4. */
    @Test
    void the_ten_job_exercise_has_two_late() {
        List<LateJobs.Job> jobs = jobs(List.of(19, 23, 5, 31, 17, 8, 32, 41, 26, 18), List.of(48, 75, 170, 215, 205, 240, 85, 67, 100, 95));
        Set<String> late = LateJobs.fewest(jobs);
        assertEquals(2, late.size());
        assertEquals(0, late(kept(jobs, late)));
        assertEquals(4, late(jobs.stream().sorted(LateJobs.EARLIEST).toList()));
    }

    @Property(tries = 300, seed = "1968")
    void no_order_has_fewer_late(@ForAll @Size(min = 1, max = 7) List<@IntRange(max = 12) Integer> hours,
                                 @ForAll @Size(min = 7, max = 7) List<@IntRange(max = 45) Integer> wanted) {
        List<LateJobs.Job> jobs = jobs(hours, wanted);
        Set<String> late = LateJobs.fewest(jobs);
        assertEquals(0, late(kept(jobs, late)));
        assertEquals(orders(jobs).stream().mapToInt(LateJobsTests::late).min().orElseThrow(), late.size());
    }

    /** Eight jobs, all 40,320 orders; fewer tries for the time they take. */
    @Property(tries = 12, seed = "1968")
    void no_order_of_eight_has_fewer_late(@ForAll @Size(8) List<@IntRange(min = 1, max = 12) Integer> hours,
                                          @ForAll @Size(8) List<@IntRange(max = 60) Integer> wanted) {
        List<LateJobs.Job> jobs = jobs(hours, wanted);
        assertEquals(orders(jobs).stream().mapToInt(LateJobsTests::late).min().orElseThrow(), LateJobs.fewest(jobs).size());
    }

    /** Jackson 1955. */
    @Property(tries = 200, seed = "1955")
    void no_order_has_a_smaller_greatest_lateness_than_that_by_date(@ForAll @Size(min = 1, max = 6) List<@IntRange(max = 12) Integer> hours,
                                                                  @ForAll @Size(min = 6, max = 6) List<@IntRange(max = 60) Integer> wanted) {
        List<LateJobs.Job> jobs = jobs(hours, wanted);
        List<LateJobs.Job> byDate = jobs.stream().sorted(LateJobs.EARLIEST).toList();
        assertEquals(orders(jobs).stream().mapToDouble(LateJobsTests::lateness).min().orElseThrow(), lateness(byDate));
    }

    /** At the speed given all are in time; a hundredth slower and one is not. */
    @Property(tries = 500, seed = "1955")
    void the_speed_is_just_enough(@ForAll @Size(min = 1, max = 8) List<@IntRange(min = 1, max = 12) Integer> hours,
                                  @ForAll @Size(min = 8, max = 8) List<@IntRange(min = 1, max = 60) Integer> wanted) {
        List<LateJobs.Job> jobs = jobs(hours, wanted);
        double speed = LateJobs.speed(jobs, 0).orElseThrow();
        Assume.that(speed > 0);
        assertTrue(LateJobs.fewest(faster(jobs, speed)).isEmpty());
        assertTrue(!LateJobs.fewest(faster(jobs, speed * 0.99)).isEmpty());
    }

    private static List<LateJobs.Job> faster(List<LateJobs.Job> jobs, double speed) {
        return jobs.stream().map(job -> new LateJobs.Job(job.id(), job.hours(), job.wanted() * speed)).toList();
    }

    @Test
    void no_speed_brings_in_what_was_wanted_before_now() {
        assertTrue(LateJobs.speed(jobs(List.of(1), List.of(0)), 0).isEmpty());
        assertEquals(0, LateJobs.speed(jobs(List.of(0), List.of(0)), 0).orElseThrow());
    }
}
