package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Judges rectangles that are said to be cut from one stock: inside it, apart from each other, and to be had by cuts from edge to edge.
 * It knows rectangles alone, nothing of how they were found.
 */
public final class CutVerifier {

    /** Lengths within this are equal. */
    private static final double EQUAL_MM = 2e-6;

    /** One rectangle, its corner nearest to the origin first. */
    public record Placed(double xMm, double yMm, double widthMm, double heightMm) {
        double rightMm() {
            return xMm + widthMm;
        }

        double bottomMm() {
            return yMm + heightMm;
        }
    }

    private CutVerifier() {
    }

    /** What is wrong with the cut; empty when nothing is. */
    public static Optional<String> fault(double stockWidthMm, double stockHeightMm, List<Placed> placed) {
        for (Placed one : placed) {
            if (!inside(one, stockWidthMm, stockHeightMm)) {
                return Optional.of("sticks out: " + one);
            }
        }
        for (int i = 0; i < placed.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (overlap(placed.get(i), placed.get(j))) {
                    return Optional.of("overlap: " + placed.get(j) + ", " + placed.get(i));
                }
            }
        }
        return separable(placed) ? Optional.empty() : Optional.of("no cut from edge to edge: " + placed);
    }

    public static boolean inside(Placed one, double stockWidthMm, double stockHeightMm) {
        return one.xMm() >= -EQUAL_MM && one.yMm() >= -EQUAL_MM
                && one.rightMm() <= stockWidthMm + EQUAL_MM && one.bottomMm() <= stockHeightMm + EQUAL_MM;
    }

    public static boolean overlap(Placed one, Placed other) {
        return one.xMm() < other.rightMm() - EQUAL_MM && other.xMm() < one.rightMm() - EQUAL_MM
                && one.yMm() < other.bottomMm() - EQUAL_MM && other.yMm() < one.bottomMm() - EQUAL_MM;
    }

    /**
     * Whether cuts from edge to edge can part them. Any cut that goes through none of them may be made first: what a
     * way to part them all does to some of them parts those.
     */
    public static boolean separable(List<Placed> placed) {
        if (placed.size() < 2) {
            return true;
        }
        int down = firstGap(placed, Placed::xMm, Placed::rightMm);
        int across = down > 0 ? 0 : firstGap(placed, Placed::yMm, Placed::bottomMm);
        if (down == 0 && across == 0) {
            return false;
        }
        List<Placed> sorted = new ArrayList<>(placed);
        sorted.sort(Comparator.comparingDouble(down > 0 ? Placed::xMm : Placed::yMm));
        int cut = Math.max(down, across);
        return separable(sorted.subList(0, cut)) && separable(sorted.subList(cut, sorted.size()));
    }

    /** How many lie before the first place where a line meets none of them; 0 when there is no such place. */
    private static int firstGap(List<Placed> placed, ToDoubleFunction<Placed> start, ToDoubleFunction<Placed> end) {
        List<Placed> sorted = new ArrayList<>(placed);
        sorted.sort(Comparator.comparingDouble(start));
        double reached = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < sorted.size(); i++) {
            if (i > 0 && start.applyAsDouble(sorted.get(i)) >= reached - EQUAL_MM) {
                return i;
            }
            reached = Math.max(reached, end.applyAsDouble(sorted.get(i)));
        }
        return 0;
    }
}
