package kitleaf.sizing.year;

import java.util.Arrays;

/** Quantiles of a sample. */
final class Quantiles {

    private Quantiles() { }

    /**
     * The quantile of type 7: h = (n - 1) p, counted from 0, and straight between the values beside it (Hyndman and Fan,
     * Sample quantiles in statistical packages, The American Statistician 50, 1996, 361-365).
     *
     * @param values one or more, in any order
     * @param p 0 to 1
     * @throws IllegalArgumentException when there are no values, or p is outside 0 to 1
     */
    static double type7(double[] values, double p) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return ofSorted(sorted, p);
    }

    /** The same of values already in rising order. */
    static double ofSorted(double[] sorted, double p) {
        if (sorted.length == 0 || !(p >= 0 && p <= 1)) {
            throw new IllegalArgumentException("no quantile " + p + " of " + sorted.length + " values");
        }
        double h = (sorted.length - 1) * p;
        int low = (int) h;
        int high = Math.min(low + 1, sorted.length - 1);
        return sorted[low] + (h - low) * (sorted[high] - sorted[low]);
    }
}
