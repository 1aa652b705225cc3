package kitleaf.press;

import java.util.Collection;
import java.util.TreeSet;
import kitleaf.words.NearMiss;

/** The tail of a message about a mistyped word. */
final class Hint {

    private Hint() {
    }

    /** {@code ; did you mean "rect"?} or nothing. */
    static String of(String word, Collection<String> known) {
        return NearMiss.of(word, new TreeSet<>(known)).map(near -> "; did you mean \"" + near + "\"?").orElse("");
    }
}
