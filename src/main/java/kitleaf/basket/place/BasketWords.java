package kitleaf.basket.place;

import java.util.Locale;
import kitleaf.words.Words;

/** Where the words for what is wrong with a basket are found. */
public final class BasketWords {

    private BasketWords() {
    }

    /** The words of problems, in one language. */
    public static Words in(Locale language) {
        return new Words("kitleaf.basket.messages", language);
    }
}
