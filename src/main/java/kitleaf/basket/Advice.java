package kitleaf.basket;

import java.util.Collection;
import kitleaf.words.NearMiss;

/** What to say to a word that is not known. */
final class Advice {

    private Advice() {
    }

    /** The near word, or all that may stand there. */
    static String on(String written, Collection<String> known) {
        return NearMiss.of(written, known).map(near -> "did you mean " + near + "?")
                .orElseGet(() -> known.size() == 1 ? "write " + known.iterator().next()
                        : "write one of: " + String.join(", ", known));
    }
}
