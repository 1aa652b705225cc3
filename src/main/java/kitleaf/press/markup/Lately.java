package kitleaf.press.markup;

import java.util.HashMap;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Remembers what was asked for lately: at least the last so many things, at most twice as many. What is asked for again stays; the rest
 * is let go soon, while it is still cheap to collect.
 */
public final class Lately<K, V> {

    private final int most;
    private final UnaryOperator<K> kept;
    private Map<K, V> young = new HashMap<>();
    private Map<K, V> old = Map.of();

    /** A memory of the last so many. */
    public Lately(int most) {
        this(most, UnaryOperator.identity());
    }

    /** A memory whose keys are used again by those who ask, so that it keeps keys of its own. */
    public Lately(int most, UnaryOperator<K> kept) {
        this.most = most;
        this.kept = kept;
    }

    /** What is known; null if nothing is. */
    public V get(K key) {
        V value = young.get(key);
        if (value == null) {
            value = old.get(key);
            if (value != null) {
                put(key, value);
            }
        }
        return value;
    }

    public void put(K key, V value) {
        if (young.size() == most) {
            old = young;
            young = new HashMap<>();
        }
        young.put(kept.apply(key), value);
    }
}
