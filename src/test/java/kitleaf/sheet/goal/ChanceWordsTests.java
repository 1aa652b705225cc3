package kitleaf.sheet.goal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import kitleaf.sheet.words.SheetWords;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChanceWordsTests {

    @ParameterizedTest
    @CsvSource({"0, hardly a chance", "0.049, hardly a chance", "0.05, one in ten", "0.19, one in five", "0.3, one in three", "0.5, an even chance",
        "0.41, two in five", "0.61, three in five", "0.64, two in three", "0.72, three in four", "0.86, nine in ten", "0.951, almost surely", "1, almost surely"})
    void a_chance_is_said_as_the_nearest_plain_fraction(double chance, String words) {
        assertEquals(words, SheetWords.in(Locale.ENGLISH).say(ChanceWords.key(chance)));
    }
}
