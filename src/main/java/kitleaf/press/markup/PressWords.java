package kitleaf.press.markup;

import java.util.Locale;
import kitleaf.words.Words;

/** Where the words for warnings and for what is wrong in page markup are found. */
public final class PressWords {

    private PressWords() {
    }

    /** The words of the press, in one language. */
    public static Words in(Locale language) {
        return Words.spoken("kitleaf.press.messages", language);
    }
}
