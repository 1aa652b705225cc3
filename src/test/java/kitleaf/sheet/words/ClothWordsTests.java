package kitleaf.sheet.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Optional;
import kitleaf.basket.Units;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;
import kitleaf.words.Words;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cloth by name and kind; a kind is said once. */
class ClothWordsTests {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"en|Sea-mist|LINEN|Sea-mist linen", "en|Natural linen|LINEN|Natural linen",
        "en|Cream block|BLOCK|Cream block cloth", "en|Block cloth, cream|BLOCK|Block cloth, cream",
        "en|Sunblock|BLOCK|Sunblock block cloth",
        "en|Block|BLOCK|Block cloth", "de|Naturleinen|LINEN|Naturleinen", "de|Seenebel|LINEN|Seenebel (Leinen)"})
    void a_kind_that_the_name_says_is_not_said_again(String language, String name, Cloth.Kind kind, String said) {
        Words words = SheetWords.in(Locale.forLanguageTag(language));
        String cloth = new ClothWords(words, new Figures(Units.IN, words)).cloth(Optional.of(name), kind, new Count(14, 14));
        assertEquals(said, cloth.substring(0, cloth.lastIndexOf(", ")));
    }
}
