package kitleaf.sizing.cutting;

import java.util.Arrays;
import java.util.function.LongPredicate;

/**
 * The most that could still be cut from the rectangle outside a block that lies in one of its corners.
 *
 * <p>Two tables, on the points of both axes. The first has the most that can be cut from a rectangle of each size, by
 * the dynamic programme of Gilmore and Gomory (The theory and computation of knapsack functions, Operations Research
 * 14(6), 1966, 1045-1074) for as many of each piece as one likes. The second has what can be added around a block of
 * each size by putting another beside or below it again and again (Viswanathan and Bagchi, Best-first search methods for
 * constrained two-dimensional cutting stock problems, Operations Research 41(4), 1993, 768-776). That only so
 * many of each are wanted comes in through the area: no entry of either table may be more than {@link CutFilling} allows
 * (so do Hifi, Computers and Operations Research 24(8), 1997, 727-736, and Cung, Hifi and Le Cun, International
 * Transactions in Operational Research 7(3), 2000, 185-210, at the root). All from memory.
 */
final class CutBound {

    /** Entries of a table looked at for one step of patience: about a microsecond's work. */
    private static final int LOOKS_A_STEP = 256;

    private final CutJob job;
    private final CutAxis across;
    private final CutAxis down;
    /** Each lay's width and height in the units of the axes. */
    private final long[] wideCells;
    private final long[] highCells;
    /** How many of each kind the tables reckon with. */
    private final int[] most;
    /** What pieces so thin that they vanish in coarse lengths are worth together: they are always thought to fit. */
    private final double thin;
    private final CutFilling cells;
    private final CutFilling filling;
    private final double[][] inside;
    private final double[][] around;
    private boolean reckoned;

    CutBound(CutJob job) {
        this.job = job;
        across = new CutAxis(job.width, job.wide, job.kind, job.most);
        down = new CutAxis(job.height, job.high, job.kind, job.most);
        wideCells = Arrays.stream(job.wide).map(across::cells).toArray();
        highCells = Arrays.stream(job.high).map(down::cells).toArray();
        double[] area = new double[job.kinds()];
        Arrays.fill(area, Double.POSITIVE_INFINITY);
        for (int lay = 0; lay < job.lays(); lay++) {
            area[job.kind[lay]] = Math.min(area[job.kind[lay]], (double) wideCells[lay] * highCells[lay]);
        }
        most = job.most.clone();
        double vanishing = 0;
        for (int kind = 0; kind < most.length; kind++) {
            if (area[kind] == 0) {
                vanishing += most[kind] * job.value[kind];
                most[kind] = 0;
            }
        }
        thin = vanishing;
        cells = new CutFilling(job.value, area);
        filling = new CutFilling(job.value, job.area);
        inside = new double[across.size()][down.size()];
        around = new double[across.size()][down.size()];
    }

    /**
     * Reckons the tables; false when patience ended before they were done, so that areas are all there is to go by.
     *
     * @param spend takes so many steps; false when patience has ended
     */
    boolean reckon(LongPredicate spend) {
        reckoned = reckonInside(spend) && reckonAround(spend);
        return reckoned;
    }

    private boolean reckonInside(LongPredicate spend) {
        int[][] restAcross = rests(across);
        int[][] restDown = rests(down);
        for (int x = 1; x < across.size(); x++) {
            // Two quick looks at each lay, for each entry, are half a look at the tables.
            if (!spend.test(1 + (long) down.size() * (x + down.size() + job.lays() / 2) / LOOKS_A_STEP)) {
                return false;
            }
            for (int y = 1; y < down.size(); y++) {
                double value = Math.max(inside[x - 1][y], inside[x][y - 1]);
                for (int u = 1; 2 * across.length(u) <= across.length(x); u++) {
                    value = Math.max(value, inside[u][y] + inside[restAcross[x][u]][y]);
                }
                for (int u = 1; 2 * down.length(u) <= down.length(y); u++) {
                    value = Math.max(value, inside[x][u] + inside[x][restDown[y][u]]);
                }
                inside[x][y] = Math.min(Math.max(value, alone(x, y)), filled(x, y));
            }
        }
        return true;
    }

    /** The last point within what one point leaves of another. */
    private static int[][] rests(CutAxis axis) {
        int[][] rests = new int[axis.size()][];
        for (int p = 0; p < rests.length; p++) {
            rests[p] = new int[p + 1];
            for (int u = 0; u <= p; u++) {
                rests[p][u] = axis.within(axis.length(p) - axis.length(u));
            }
        }
        return rests;
    }

    private double alone(int x, int y) {
        double value = 0;
        for (int lay = 0; lay < job.lays(); lay++) {
            if (most[job.kind[lay]] > 0 && fits(lay, x, y)) {
                value = Math.max(value, job.value[job.kind[lay]]);
            }
        }
        return value;
    }

    private double filled(int x, int y) {
        boolean[] fits = new boolean[job.kinds()];
        for (int lay = 0; lay < job.lays(); lay++) {
            fits[job.kind[lay]] |= fits(lay, x, y);
        }
        return cells.most((double) across.length(x) * down.length(y), kind -> fits[kind] ? most[kind] : 0);
    }

    private boolean fits(int lay, int x, int y) {
        return wideCells[lay] <= across.length(x) && highCells[lay] <= down.length(y);
    }

    private boolean reckonAround(LongPredicate spend) {
        int[][] sumAcross = sums(across);
        int[][] sumDown = sums(down);
        double all = (double) across.length(across.size() - 1) * down.length(down.size() - 1);
        for (int x = across.size() - 1; x >= 0; x--) {
            if (!spend.test(1 + (long) down.size() * (across.size() - x + down.size()) / LOOKS_A_STEP)) {
                return false;
            }
            for (int y = down.size() - 1; y >= 0; y--) {
                double value = Math.max(x + 1 < across.size() ? around[x + 1][y] : 0, y + 1 < down.size() ? around[x][y + 1] : 0);
                for (int u = 1; u < sumAcross[x].length; u++) {
                    if (sumAcross[x][u] > 0) {
                        value = Math.max(value, around[sumAcross[x][u]][y] + inside[u][y]);
                    }
                }
                for (int u = 1; u < sumDown[y].length; u++) {
                    if (sumDown[y][u] > 0) {
                        value = Math.max(value, around[x][sumDown[y][u]] + inside[x][u]);
                    }
                }
                around[x][y] = Math.min(value, cells.most(all - (double) across.length(x) * down.length(y), kind -> most[kind]));
            }
        }
        return true;
    }

    /** The points that are the sum of two, as far as the side goes; 0 where the sum is no point, so that no pieces come to it. */
    private static int[][] sums(CutAxis axis) {
        int[][] sums = new int[axis.size()][];
        for (int p = 0; p < sums.length; p++) {
            sums[p] = new int[1 + axis.within(axis.length(axis.size() - 1) - axis.length(p))];
            for (int u = 1; u < sums[p].length; u++) {
                int sum = axis.within(axis.length(p) + axis.length(u));
                sums[p][u] = axis.length(sum) == axis.length(p) + axis.length(u) ? sum : 0;
            }
        }
        return sums;
    }

    /** The most that can be cut from the whole rectangle. */
    double whole() {
        double filled = filling.most((double) across.reach * down.reach, kind -> job.most[kind]);
        return reckoned ? Math.min(filled, thin + inside[across.size() - 1][down.size() - 1]) : filled;
    }

    /** The most that can be added around a block of this size, looked up. */
    double around(long width, long height) {
        return thin + around[across.pointOf(width)][down.pointOf(height)];
    }

    /**
     * The most that can be added around a block of this size by what is left: only what fits beside it or below, and no
     * more of it than there is area.
     */
    double left(long width, long height, CutFilling.Left left) {
        boolean[] fits = new boolean[job.kinds()];
        for (int lay = 0; lay < job.lays(); lay++) {
            fits[job.kind[lay]] |= job.wide[lay] <= across.reach - width || job.high[lay] <= down.reach - height;
        }
        double room = (double) across.reach * down.reach - (double) width * height;
        return filling.most(room, kind -> fits[kind] ? left.of(kind) : 0);
    }
}
