package kitleaf.words;

import java.util.List;
import java.util.Objects;

/**
 * A phrase not yet spoken: which one, and what fills its slots. It gets its language when {@link Words} say it.
 *
 * @param key of the phrase in its bundle
 * @param slots texts and numbers, which are written as they stand, and phrases, which are spoken in the same language
 */
public record Said(String key, List<Object> slots) {

    /** Refuses an empty key and what cannot be said. */
    public Said {
        slots = List.copyOf(slots);
        if (Objects.requireNonNull(key).isEmpty()) {
            throw new IllegalArgumentException("a phrase has a key");
        }
        for (Object slot : slots) {
            if (!(slot instanceof String || slot instanceof Integer || slot instanceof Long || slot instanceof Said)) {
                throw new IllegalArgumentException(key + " cannot say a " + slot.getClass().getSimpleName());
            }
        }
    }

    /** A phrase with what fills its slots. */
    public static Said of(String key, Object... slots) {
        return new Said(key, List.of(slots));
    }
}
