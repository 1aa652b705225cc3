package kitleaf.basket;

import java.util.Objects;
import java.util.Optional;

/**
 * Where a piece and what belongs to it are kept.
 *
 * @param source where its chart is: a book and a page, a folder
 * @param bag which bag it lies in
 */
public record Keeping(Optional<String> source, Optional<String> bag) {

    /** Nothing is said. */
    public static final Keeping UNSAID = new Keeping(Optional.empty(), Optional.empty());

    /** Refuses a missing part. */
    public Keeping {
        Objects.requireNonNull(source);
        Objects.requireNonNull(bag);
    }
}
