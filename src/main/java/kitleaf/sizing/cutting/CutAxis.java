package kitleaf.sizing.cutting;

import java.util.Arrays;
import java.util.TreeSet;
import java.util.stream.LongStream;

/**
 * The lengths that matter along one side of the rectangle: sums of sides of pieces (the normal patterns of Herz, IBM Journal of
 * Research and Development 16(5), 1972, 462-469, and of Christofides and Whitlock, Operations Research 25(1), 1977,
 * 30-44; both from memory). What fits into a length fits into the longest such sum within it.
 *
 * <p>Where there are more than {@link #POINTS} of them, lengths are counted in coarser units, rounded down, and
 * each is a point. A piece then fits at least where it fitted before, so a bound reckoned on this axis still holds, it is only
 * less sharp. Of the units that may be taken, that one is which lets pieces lose least against the side.
 */
final class CutAxis {

    /** How many points there may be; the tables grow with the square of this, the work with the cube. */
    static final int POINTS = 100;

    private final long unit;
    private final long[] points;

    /** How far pieces can reach at most, in the job's units. */
    final long reach;

    /** @param length of the side @param sides of the lays along it, each within it @param kind of each lay @param most of each kind */
    CutAxis(long length, long[] sides, int[] kind, int[] most) {
        long common = Math.max(1, Arrays.stream(sides).reduce(0, CutJob::divisor));
        long[] exact = sums(length / common, scaled(sides, common), kind, most);
        boolean few = exact.length <= POINTS;
        unit = few ? common : coarse(length, sides);
        points = few ? exact : LongStream.rangeClosed(0, length / unit).toArray();
        reach = few ? exact[exact.length - 1] * common : length;
    }

    private static long[] scaled(long[] sides, long unit) {
        return Arrays.stream(sides).map(side -> side / unit).toArray();
    }

    private static long coarse(long length, long[] sides) {
        long best = 0;
        double sharpest = 0;
        for (int cells = POINTS / 2; cells < POINTS; cells++) {
            long candidate = length / (cells + 1) + 1;
            double sharp = Arrays.stream(sides).mapToDouble(side -> side / candidate).sum() / (length / candidate);
            if (best == 0 || sharp > sharpest) {
                best = candidate;
                sharpest = sharp;
            }
        }
        return best;
    }

    /** Sums of so many sides of each kind at most, rising from 0; no more than one above what may be taken. */
    private static long[] sums(long length, long[] sides, int[] kind, int[] most) {
        TreeSet<Long> sums = new TreeSet<>();
        sums.add(0L);
        for (int k = 0; k < most.length; k++) {
            TreeSet<Long> last = new TreeSet<>(sums);
            for (int times = 0; times < most[k] && !last.isEmpty(); times++) {
                TreeSet<Long> grown = new TreeSet<>();
                for (int lay = 0; lay < sides.length; lay++) {
                    if (kind[lay] == k) {
                        for (long sum : last.headSet(length - sides[lay], true)) {
                            grown.add(sum + sides[lay]);
                        }
                    }
                }
                grown.removeAll(sums);
                sums.addAll(grown);
                last = grown;
                if (sums.size() > POINTS) {
                    return sums.stream().limit(POINTS + 1).mapToLong(Long::longValue).toArray();
                }
            }
        }
        return sums.stream().mapToLong(Long::longValue).toArray();
    }

    int size() {
        return points.length;
    }

    /** A point's length in this axis's units. */
    long length(int point) {
        return points[point];
    }

    /** The last point within a length in this axis's units. */
    int within(long length) {
        int at = Arrays.binarySearch(points, length);
        return at >= 0 ? at : -at - 2;
    }

    /** The last point within a length in the job's units. */
    int pointOf(long length) {
        return within(length / unit);
    }

    /** A length in the job's units, rounded down to this axis's units. */
    long cells(long length) {
        return length / unit;
    }
}
