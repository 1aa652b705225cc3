package kitleaf.basket.place;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * A place with the line it stands on, to be kept when the rest of its file is let go.
 *
 * @param file the name to call it by
 * @param line from 1
 * @param column from 1, in characters
 * @param length characters to mark, 1 or more
 * @param text the line; empty past the file's end
 */
public record Spot(Path file, int line, int column, int length, String text) {

    public Spot {
        Objects.requireNonNull(file);
        Objects.requireNonNull(text);
    }

    /** The problem of something being wrong here. */
    public Problem problem(Fault fault) {
        return new Problem(file, line, column, length, fault.wrong(), fault.write(), Optional.of(text));
    }
}
