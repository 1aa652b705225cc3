package kitleaf.sheet.words;

import java.util.Locale;
import kitleaf.words.Words;

/** Where the words on the sheets are found. */
public final class SheetWords {

    private SheetWords() {
    }

    /** The words on the sheets, in one language. */
    public static Words in(Locale language) {
        return new Words("kitleaf.sheet.words.words", language);
    }
}
