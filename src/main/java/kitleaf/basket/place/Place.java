package kitleaf.basket.place;

import java.util.Objects;

/**
 * Where something stands in a file.
 *
 * @param source the file
 * @param line from 1
 * @param column from 1, in characters
 * @param length characters to mark, 1 or more
 */
public record Place(Source source, int line, int column, int length) {

    public Place {
        Objects.requireNonNull(source);
    }

    /** The same place, for keeping: it holds its own line and lets the rest of the file go. */
    public Spot spot() {
        return new Spot(source.name(), line, column, length, source.line(line).orElse(""));
    }

    /** The problem of something being wrong here. */
    public Problem problem(Fault fault) {
        return new Problem(source.name(), line, column, length, fault.wrong(), fault.write(), source.line(line));
    }
}
