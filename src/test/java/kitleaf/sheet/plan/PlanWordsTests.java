package kitleaf.sheet.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import kitleaf.basket.Units;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sizing.plan.Proof;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanWordsTests {

    private final PlanWords words = new PlanWords(SheetWords.in(Locale.ENGLISH), Units.IN);

    private String proof(Proof proof) {
        return String.join(" ", words.proof(proof)).replace('\u00a0', ' ');
    }

    @Test
    void a_proved_plan_says_what_no_other_does_better() {
        assertEquals("Proved: no plan buys less, opens fewer cloths or leaves a larger rectangle, in this order of weight.",
                proof(new Proof(true, false, 14, 14, 1, 1, 400, 400)));
    }

    /** By hand: 14 less 12.5 is 10.71 % of 14, 500 less 400 is 20 % of 500; "at most" is rounded up. */
    @Test
    void a_plan_that_is_not_proved_says_how_far_at_most_it_is_from_the_best() {
        assertEquals("Not proved to be the best plan. At most 11 % of what has to be bought could be saved. It opens 3 cloths on hand; perhaps 2 would do. "
                + "The largest rectangle it leaves is at most 20 % smaller than the best plan's.", proof(new Proof(false, false, 14, 12.5, 3, 2, 400, 500)));
    }

    @Test
    void a_search_cut_short_says_that_another_may_find_better() {
        assertEquals("Not proved to be the best plan. The search ended before it was done: with more --plan-seconds it may find a better plan.",
                proof(new Proof(false, true, 0, 0, 1, 1, 400, 400)));
    }

    /** As columns of a table are lettered: Z is followed by AA, ZZ by AAA. */
    @ParameterizedTest
    @CsvSource({"0, A", "25, Z", "26, AA", "51, AZ", "52, BA", "701, ZZ", "702, AAA"})
    void what_is_left_has_letters(int place, String letter) {
        assertEquals(letter, PlanWords.letter(place));
    }

    @ParameterizedTest
    @CsvSource({"700, 500, 180, 140, 4", "700, 500, 180, 40, 15", "50, 40, 180, 140, 1", "20000, 1400, 180, 140, 120", "360, 100, 180, 140, 2"})
    void scales_are_round_and_as_large_as_fits(double width, double height, double roomWidth, double roomHeight, double one) {
        assertEquals(one, PlanScale.fitting(width, height, roomWidth, roomHeight, 1).one());
    }

    @Test
    void a_drawing_of_less_than_life_size_says_its_scale() {
        assertEquals(List.of("1 : 5", "1 : 2.5"), List.of(new PlanScale(5), new PlanScale(2.5)).stream().map(it -> words.scale(it).replace('\u00a0', ' ')).toList());
    }
}
