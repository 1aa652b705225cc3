package kitleaf.basket.place;

import java.util.Collection;
import kitleaf.words.NearMiss;
import kitleaf.words.Said;

/** What to say to a word that is not known. */
public final class Advice {

    private Advice() {
    }

    /** The near word, or all that may stand there. */
    public static Said on(String written, Collection<String> known) {
        return NearMiss.of(written, known).map(Advice::meant)
                .orElseGet(() -> known.size() == 1 ? Said.of("advice.only", known.iterator().next())
                        : Said.of("advice.among", String.join(", ", known)));
    }

    /** The word that was probably meant. */
    public static Said meant(String near) {
        return Said.of("advice.meant", near);
    }
}
