package kitleaf.sizing.thread;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A block of n x n cells stitched hole by hole in working order, knowing nothing of the formulas: the needle is moved from
 * hole to hole, the thread between is sampled, and the samples' distances are added up. Up is positive.
 */
final class WorkedBlock {

    private static final int SAMPLES = 7;

    /** Where the needle went through; legs on the front and behind take turns. */
    private final List<double[]> holes = new ArrayList<>();
    private final Set<String> fronts = new HashSet<>();
    private final double a;
    private final double b;

    private WorkedBlock(double a, double b) {
        this.a = a;
        this.b = b;
    }

    /** One leg on the front, between corners counted in half cells; whatever is needed behind follows from where it starts. */
    private void front(int fromX, int fromY, int toX, int toY) {
        holes.add(new double[] {fromX * a / 2, fromY * b / 2});
        holes.add(new double[] {toX * a / 2, toY * b / 2});
        fronts.add(Math.min(fromX, toX) + "," + Math.min(fromY, toY) + ((toX - fromX) * (toY - fromY) > 0 ? "/" : "\\")
                + Math.abs(toX - fromX) + Math.abs(toY - fromY));
    }

    /** The legs lying on the front, each place and slant once. */
    int frontLegs() {
        return fronts.size();
    }

    double lengthMm() {
        double sumMm = 0;
        for (int i = 1; i < holes.size(); i++) {
            double[] from = holes.get(i - 1);
            double[] to = holes.get(i);
            double lastX = from[0];
            double lastY = from[1];
            for (int k = 1; k <= SAMPLES; k++) {
                double x = from[0] + (to[0] - from[0]) * k / SAMPLES;
                double y = from[1] + (to[1] - from[1]) * k / SAMPLES;
                sumMm += Math.sqrt((x - lastX) * (x - lastX) + (y - lastY) * (y - lastY));
                lastX = x;
                lastY = y;
            }
        }
        return sumMm;
    }

    /** Row by row upwards: all / of a row from left to right, then all \ from right to left. */
    static WorkedBlock crossesInRows(int n, double a, double b) {
        WorkedBlock block = new WorkedBlock(a, b);
        for (int row = 0; row < n; row++) {
            for (int x = 0; x < n; x++) {
                block.front(2 * x, 2 * row, 2 * x + 2, 2 * row + 2);
            }
            for (int x = n - 1; x >= 0; x--) {
                block.front(2 * x + 2, 2 * row, 2 * x, 2 * row + 2);
            }
        }
        return block;
    }

    /** Each cross at once; one row from left to right, the next back from right to left with the cloth turned in mind. */
    static WorkedBlock crossesSingly(int n, double a, double b) {
        WorkedBlock block = new WorkedBlock(a, b);
        for (int row = 0; row < n; row++) {
            for (int i = 0; i < n; i++) {
                int x = row % 2 == 0 ? i : n - 1 - i;
                if (row % 2 == 0) {
                    block.front(2 * x, 2 * row, 2 * x + 2, 2 * row + 2);
                    block.front(2 * x + 2, 2 * row, 2 * x, 2 * row + 2);
                } else {
                    block.front(2 * x + 2, 2 * row + 2, 2 * x, 2 * row);
                    block.front(2 * x, 2 * row + 2, 2 * x + 2, 2 * row);
                }
            }
        }
        return block;
    }

    /** One / a cell, rows from left to right and back, going up. */
    static WorkedBlock halves(int n, double a, double b) {
        WorkedBlock block = new WorkedBlock(a, b);
        for (int row = 0; row < n; row++) {
            for (int i = 0; i < n; i++) {
                if (row % 2 == 0) {
                    block.front(2 * i, 2 * row, 2 * i + 2, 2 * row + 2);
                } else {
                    int x = n - 1 - i;
                    block.front(2 * x + 2, 2 * row + 2, 2 * x, 2 * row);
                }
            }
        }
        return block;
    }

    /** One / a cell, from right to left, each begun at its lower left; the next row up is worked back, begun at the upper right. */
    static WorkedBlock tents(int n, double a, double b) {
        WorkedBlock block = new WorkedBlock(a, b);
        for (int row = 0; row < n; row++) {
            for (int i = 0; i < n; i++) {
                if (row % 2 == 0) {
                    int x = n - 1 - i;
                    block.front(2 * x, 2 * row, 2 * x + 2, 2 * row + 2);
                } else {
                    block.front(2 * i + 2, 2 * row + 2, 2 * i, 2 * row);
                }
            }
        }
        return block;
    }

    /** From the lower left corner of each cell to its middle; every row from left to right, then a long way back behind. */
    static WorkedBlock quarters(int n, double a, double b) {
        WorkedBlock block = new WorkedBlock(a, b);
        for (int row = 0; row < n; row++) {
            for (int x = 0; x < n; x++) {
                block.front(2 * x, 2 * row, 2 * x + 1, 2 * row + 1);
            }
        }
        return block;
    }

    /** In each cell / from corner to corner and then a quarter from the lower right corner to the middle. */
    static WorkedBlock threeQuarters(int n, double a, double b) {
        WorkedBlock block = new WorkedBlock(a, b);
        for (int row = 0; row < n; row++) {
            for (int x = 0; x < n; x++) {
                block.front(2 * x, 2 * row, 2 * x + 2, 2 * row + 2);
                block.front(2 * x + 2, 2 * row, 2 * x + 1, 2 * row + 1);
            }
        }
        return block;
    }

    /** A line of n edges from left to right, each stitched backwards from its far end. */
    static WorkedBlock backStitches(int n, double a) {
        WorkedBlock block = new WorkedBlock(a, a);
        for (int x = 0; x < n; x++) {
            block.front(2 * x + 2, 0, 2 * x, 0);
        }
        return block;
    }

    /** A line of n edges: every second one going, the others coming back. */
    static WorkedBlock doubleRunning(int n, double a) {
        WorkedBlock block = new WorkedBlock(a, a);
        for (int x = 0; x < n; x += 2) {
            block.front(2 * x, 0, 2 * x + 2, 0);
        }
        for (int x = n % 2 == 0 ? n - 1 : n - 2; x >= 0; x -= 2) {
            block.front(2 * x + 2, 0, 2 * x, 0);
        }
        return block;
    }

    /** n upright stitches over so many threads, side by side, one thread apart. */
    static WorkedBlock satin(int n, double threadMm, int span) {
        WorkedBlock block = new WorkedBlock(threadMm, threadMm);
        for (int x = 0; x < n; x++) {
            block.front(2 * x, 0, 2 * x, 2 * span);
        }
        return block;
    }

    /** n knots in a line, one edge from where one went down to where the next comes up; each turned as a polygon of many sides. */
    static double knotsMm(int n, double threadMm, double edgeMm, int turns, double acrossMm) {
        double sumMm = 0;
        int sides = 720;
        for (int knot = 0; knot < n; knot++) {
            for (int k = 1; k <= turns * sides; k++) {
                double t0 = 2 * Math.PI * (k - 1) / sides;
                double t1 = 2 * Math.PI * k / sides;
                sumMm += Math.hypot(acrossMm / 2 * (Math.cos(t1) - Math.cos(t0)), acrossMm / 2 * (Math.sin(t1) - Math.sin(t0)));
            }
            sumMm += threadMm + (knot < n - 1 ? edgeMm : 0);
        }
        return sumMm;
    }
}
