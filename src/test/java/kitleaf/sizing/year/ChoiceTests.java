package kitleaf.sizing.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kitleaf.basket.Goals;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChoiceTests {

    private static final OptionalInt ALL = OptionalInt.empty();

    private static final Lead NO_LEAD = new Lead(0, LocalDate.parse("2027-01-01"), List.of(), 0, Set.of());

    private static Choice best(List<Candidate> candidates, double hours, OptionalInt choose, Goals.By by) {
        return Choice.best(candidates, hours, NO_LEAD, choose, by);
    }

    private static String id(int i) {
        return String.format(Locale.ROOT, "p%03d", i);
    }

    private static Candidate piece(String id, double hours, long weight) {
        return new Candidate(id, hours, weight, false, Optional.empty());
    }

    private static Candidate must(String id, double hours, long weight) {
        return new Candidate(id, hours, weight, true, Optional.empty());
    }

    private static List<String> ids(List<Candidate> candidates) {
        return candidates.stream().map(Candidate::id).toList();
    }

    private static long weight(List<Candidate> candidates) {
        return candidates.stream().mapToLong(Candidate::weight).sum();
    }

    private static double hours(List<Candidate> candidates) {
        return candidates.stream().mapToDouble(Candidate::hours).sum();
    }

    /**
     * KNAPSACK_01 data set (J. Burkardt, Florida State University), P07 and P08 after Kreher and Stinson, Combinatorial Algorithms
     * (1999): capacity, weights, profits, optimum, the set. Weights are hours here, profits weights.
     */
    @ParameterizedTest
    @CsvSource({
        "165,23 31 29 44 53 38 63 85 89 82,92 57 49 68 60 43 67 84 87 72,309,1111010000",
        "26,12 7 11 8 9,24 13 23 15 16,51,01110",
        "190,56 59 80 64 75 17,50 50 64 46 50 5,150,110010",
        "50,31 10 20 19 4 3 6,70 20 39 37 7 5 10,107,1001000",
        "104,25 35 45 5 25 3 2 2,350 400 450 20 70 8 5 5,900,10111011",
        "170,41 50 49 59 55 57 60,442 525 511 593 546 564 617,1735,0101001",
        "750,70 73 77 80 82 87 90 94 98 106 110 113 115 118 120,"
            + "135 139 149 150 156 163 173 184 192 201 210 214 221 229 240,1458,101010111000011",
        "6404180,382745 799601 909247 729069 467902 44328 34610 698150 823460 903959 853665 551830 610856 670702 488960 951111 "
            + "323046 446298 931161 31385 496951 264724 224916 169684,825594 1677009 1676628 1523970 943972 97426 69666 1296457 "
            + "1679693 1902996 1844992 1049289 1252836 1319836 953277 2067538 675367 853655 1826027 65731 901489 577243 466257 "
            + "369261,13549094,110111000110100100000111"})
    void published_knapsacks_are_packed_to_their_optimum(double capacity, String sizes, String profits, long optimum, String set) {
        String[] hours = sizes.split(" ");
        String[] weights = profits.split(" ");
        List<Candidate> candidates = IntStream.range(0, hours.length)
                .mapToObj(i -> piece(id(i), Double.parseDouble(hours[i]), Long.parseLong(weights[i]))).toList();
        Choice choice = best(candidates, capacity, ALL, Goals.By.WEIGHT);
        assertEquals(optimum, weight(choice.chosen()));
        assertTrue(choice.hoursNeeded() <= capacity);
        assertEquals(IntStream.range(0, set.length()).filter(i -> set.charAt(i) == '1').mapToObj(ChoiceTests::id).toList(),
                ids(choice.chosen()));
    }

    /** Every subset of the others tried; better by the two figures asked for, then by hours, then by the first ID they differ in. */
    private static List<Candidate> tried(List<Candidate> candidates, int hours, int most, Goals.By by) {
        List<Candidate> best = null;
        for (int set = 0; set < 1 << candidates.size(); set++) {
            List<Candidate> trial = new ArrayList<>();
            for (int i = 0; i < candidates.size(); i++) {
                if ((set >>> i & 1) == 1) {
                    trial.add(candidates.get(i));
                }
            }
            if (trial.size() <= most && hours(trial) <= hours && (best == null || better(trial, best, by))) {
                best = trial;
            }
        }
        return best;
    }

    private static boolean better(List<Candidate> one, List<Candidate> other, Goals.By by) {
        long number = Long.compare(one.size(), other.size());
        long weight = Long.compare(weight(one), weight(other));
        long first = by == Goals.By.NUMBER ? number : weight;
        long second = by == Goals.By.NUMBER ? weight : number;
        double third = hours(other) - hours(one);
        if (first != 0 || second != 0 || third != 0) {
            return first != 0 ? first > 0 : second != 0 ? second > 0 : third > 0;
        }
        for (int i = 0; i < one.size(); i++) {
            int order = one.get(i).id().compareTo(other.get(i).id());
            if (order != 0) {
                return order < 0;
            }
        }
        return false;
    }

    @Property(tries = 2000, seed = "20270101")
    void no_set_of_up_to_twelve_is_better(@ForAll @Size(max = 12) List<@IntRange(max = 30) Integer> sizes, @ForAll @IntRange(min = 1, max = 9) int spread,
                                          @ForAll long mix, @ForAll @IntRange(max = 120) int hours, @ForAll @IntRange(max = 12) int most,
                                          @ForAll Goals.By by) {
        Random random = new Random(mix);
        List<Candidate> candidates = IntStream.range(0, sizes.size()).mapToObj(i -> piece(id(i), sizes.get(i), 1 + random.nextInt(spread))).toList();
        OptionalInt choose = most == 0 ? ALL : OptionalInt.of(most);
        assertEquals(ids(tried(candidates, hours, choose.orElse(99), by)), ids(best(candidates, hours, choose, by).chosen()));
    }

    @Test
    void must_haves_are_in_before_all_others_even_where_they_do_not_fit() {
        List<Candidate> candidates = List.of(piece("a", 1, 9), must("b", 30, 1), must("c", 20, 1), piece("d", 0, 5));
        assertEquals(List.of("b", "c"), ids(best(candidates, 40, ALL, Goals.By.NUMBER).chosen()));
        assertEquals(10, best(candidates, 40, ALL, Goals.By.NUMBER).hoursShort());
        assertEquals(List.of("b", "c"), ids(best(candidates, 60, OptionalInt.of(1), Goals.By.NUMBER).chosen()));
        // 50 of 60 hours are gone: the one of an hour and the one of none both fit.
        assertEquals(List.of("a", "b", "c", "d"), ids(best(candidates, 60, ALL, Goals.By.NUMBER).chosen()));
    }

    @Test
    void a_must_have_is_chosen_once_however_often_it_fits() {
        assertEquals(List.of("a", "b"), ids(best(List.of(piece("a", 5, 1), must("b", 5, 1)), 40, ALL, Goals.By.NUMBER).chosen()));
    }

    /** Ten hours fit in ten; and where a must-have takes all of them, what takes none still fits. */
    @Test
    void what_fits_to_the_last_hour_is_not_too_long() {
        Choice room = best(List.of(piece("a", 5, 1), piece("b", 10, 1)), 10, OptionalInt.of(1), Goals.By.NUMBER);
        assertEquals(List.of("b"), ids(room.others()));
        assertEquals(List.of(), room.tooLong());
        Choice none = best(List.of(must("a", 10, 1), piece("b", 0, 1)), 10, OptionalInt.of(1), Goals.By.NUMBER);
        assertEquals(List.of("b"), ids(none.others()));
        assertEquals(List.of(), none.tooLong());
    }

    @Test
    void those_left_out_are_told_apart_by_whether_they_fit_at_all() {
        Choice choice = best(List.of(piece("a", 5, 1), piece("b", 6, 1), piece("c", 11, 1)), 10, OptionalInt.of(1), Goals.By.NUMBER);
        assertEquals(List.of("a"), ids(choice.chosen()));
        assertEquals(List.of("b"), ids(choice.others()));
        assertEquals(List.of("c"), ids(choice.tooLong()));
    }

    @Test
    void her_own_list_is_taken_as_it_is_and_judged() {
        Choice choice = Choice.named(List.of(piece("a", 5, 1), piece("b", 6, 1), piece("c", 11, 1)), List.of("c", "a"), 10, NO_LEAD);
        assertEquals(List.of("c", "a"), ids(choice.chosen()));
        assertEquals(6, choice.hoursShort());
        assertEquals(List.of("b"), ids(choice.others()));
    }

    @Test
    void the_order_they_come_in_changes_nothing() {
        List<Candidate> candidates = IntStream.range(0, 40).mapToObj(i -> piece(id(i), 1 + i % 3, 1 + i % 2)).toList();
        List<Candidate> turned = Stream.iterate(39, i -> i >= 0, i -> i - 1).map(candidates::get).toList();
        assertEquals(best(candidates, 20, ALL, Goals.By.WEIGHT), best(turned, 20, ALL, Goals.By.WEIGHT));
    }
}
