package kitleaf.sizing.cutting;

import java.util.List;

/**
 * A kind of piece that may be cut: the ways it may lie, how many of it are wanted at most, and what each is worth.
 *
 * @param shapes at least one
 * @param most 0 or more
 * @param value of each, 0 or more; what is worth nothing is never cut
 */
public record CutType(List<Shape> shapes, int most, double value) {

    /** Refuses a kind that cannot lie in any way, and values that cannot be added up. */
    public CutType {
        shapes = List.copyOf(shapes);
        if (shapes.isEmpty() || most < 0 || !(value >= 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException("no such type: " + shapes + ", " + most + " of " + value);
        }
    }
}
