package kitleaf.sizing.cutting;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The most value that pieces could have that together take no more than an area, the last of them cut to measure: the
 * bound of a knapsack by the fractional filling (Dantzig, Operations Research 5(2), 1957; from memory). It knows
 * how many of each kind are wanted at most, and nothing of how they lie.
 */
final class CutFilling {

    private final int[] order;
    private final double[] value;
    private final double[] area;

    /** @param value of each kind @param area of each kind; one that has none is left out */
    CutFilling(double[] value, double[] area) {
        this.value = value;
        this.area = area;
        order = IntStream.range(0, value.length).filter(kind -> area[kind] > 0).boxed()
                .sorted(Comparator.comparingDouble(kind -> -value[kind] / area[kind])).mapToInt(Integer::intValue).toArray();
    }

    /** How many of a kind are left to be used. */
    interface Left {
        int of(int kind);
    }

    /** The bound, for so much room. */
    double most(double room, Left left) {
        double sum = 0;
        double rest = room;
        for (int kind : order) {
            int number = left.of(kind);
            if (number > 0) {
                if (number * area[kind] > rest) {
                    return sum + value[kind] * (rest / area[kind]);
                }
                sum += number * value[kind];
                rest -= number * area[kind];
            }
        }
        return sum;
    }
}
