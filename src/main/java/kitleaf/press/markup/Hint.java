package kitleaf.press.markup;

import java.util.Collection;
import java.util.Optional;
import java.util.TreeSet;
import kitleaf.words.NearMiss;
import kitleaf.words.Said;

/** What to say of a mistyped word. */
final class Hint {

    private Hint() {
    }

    /**
     * One of two phrases, both with the word in slot 0 and what it stands in in slot 2.
     *
     * @param plain when no known word is near
     * @param near when one is, which goes to slot 1
     */
    static Said of(String plain, String near, String word, Collection<String> known, String place) {
        Optional<String> meant = NearMiss.of(word, new TreeSet<>(known));
        return Said.of(meant.isPresent() ? near : plain, word, meant.orElse(""), place);
    }
}
