package kitleaf.basket;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The pieces she works before all others.
 *
 * @param focus the ID of the one in focus, where she named one
 * @param beside the ID of the one that lies beside it, where she named one
 */
public record InHand(Optional<String> focus, Optional<String> beside) {

    /** She named none. */
    public static final InHand NONE = new InHand(Optional.empty(), Optional.empty());

    /** Refuses a missing part. */
    public InHand {
        Objects.requireNonNull(focus);
        Objects.requireNonNull(beside);
    }

    /** Their IDs, the one in focus first. */
    public List<String> ids() {
        return Stream.of(focus, beside).flatMap(Optional::stream).toList();
    }
}
