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

    @Test
    void a_proved_plan_says_what_no_other_does_better() {
        assertEquals("Proved: no plan buys less, opens fewer cloths or leaves a larger rectangle, in this order of weight.",
                words.proof(new Proof(true, 14, 1, 400)));
    }

    @Test
    void a_plan_that_is_not_proved_says_so() {
        assertEquals("Not proved to be the best plan.", words.proof(new Proof(false, 14, 3, 400)));
        assertEquals("Nicht als bester Plan bewiesen.", new PlanWords(SheetWords.in(Locale.GERMAN), Units.CM).proof(new Proof(false, 14, 3, 400)));
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
        assertEquals(one, PlanScale.fitting(width, height, roomWidth, roomHeight).one());
    }

    @Test
    void a_drawing_of_less_than_life_size_says_its_scale() {
        assertEquals(List.of("1 : 5", "1 : 2.5"), List.of(new PlanScale(5), new PlanScale(2.5)).stream().map(it -> words.scale(it).replace('\u00a0', ' ')).toList());
    }
}
