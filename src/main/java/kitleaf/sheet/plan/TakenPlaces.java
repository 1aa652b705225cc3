package kitleaf.sheet.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitleaf.sheet.page.Box;

/**
 * Places in a drawing that something stands on, by the squares of a grid they touch: whether a place is free is asked some hundred
 * times for each cut, and only what stands near it is looked at.
 */
final class TakenPlaces {

    /** A side of a square: about as long as a label. */
    private static final double SQUARE_MM = 6;

    private final double clearMm;
    private final Map<Square, List<Box>> squares = new HashMap<>();
    private long looks;

    private record Square(long across, long down) { }

    /** @param clearMm what stays free around each, 0 or more */
    TakenPlaces(double clearMm) {
        this.clearMm = clearMm;
    }

    void add(Box box) {
        for (long across = square(box.xMm()); across <= square(box.rightMm()); across++) {
            for (long down = square(box.yMm()); down <= square(box.bottomMm()); down++) {
                squares.computeIfAbsent(new Square(across, down), square -> new ArrayList<>(2)).add(box);
            }
        }
    }

    /** Whether nothing is there yet. */
    boolean free(Box box) {
        for (long across = square(box.xMm() - clearMm); across <= square(box.rightMm() + clearMm); across++) {
            for (long down = square(box.yMm() - clearMm); down <= square(box.bottomMm() + clearMm); down++) {
                for (Box other : squares.getOrDefault(new Square(across, down), List.of())) {
                    looks++;
                    if (touches(box, other)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    private boolean touches(Box box, Box other) {
        return box.xMm() < other.rightMm() + clearMm && other.xMm() < box.rightMm() + clearMm
                && box.yMm() < other.bottomMm() + clearMm && other.yMm() < box.bottomMm() + clearMm;
    }

    /** How often a place was held against another. */
    long looks() {
        return looks;
    }

    private static long square(double mm) {
        return (long) Math.floor(mm / SQUARE_MM);
    }
}
