package kitleaf.basket.cloth;

/**
 * How many threads (or blocks, on block cloth) a cloth has to the inch.
 *
 * @param warpPerInch warp threads (ends) met per inch when counting across the warp, {@value #LEAST} to {@value #MOST}
 * @param weftPerInch weft threads (picks) met per inch when counting across the weft, {@value #LEAST} to {@value #MOST}
 */
public record Count(double warpPerInch, double weftPerInch) {

    /** The coarsest count taken: rug canvas. */
    public static final double LEAST = 3;

    /** The finest count taken: silk gauze. */
    public static final double MOST = 120;

    /** Refuses counts outside {@value #LEAST} to {@value #MOST}. */
    public Count {
        if (!(warpPerInch >= LEAST && warpPerInch <= MOST && weftPerInch >= LEAST && weftPerInch <= MOST)) {
            throw new IllegalArgumentException(
                    "count must be " + LEAST + " to " + MOST + ": " + warpPerInch + ", " + weftPerInch);
        }
    }

    /** Two ways of writing one count, such as 71 in 2 in and 35.5, may differ by what dividing doubles adds. */
    private static final double ROUNDING = 1e-9;

    /** Whether another count is this one, however it was written. */
    public boolean same(Count other) {
        return Math.abs(warpPerInch - other.warpPerInch) <= ROUNDING && Math.abs(weftPerInch - other.weftPerInch) <= ROUNDING;
    }

    /** Whether warp and weft have the same count. */
    public boolean even() {
        return warpPerInch == weftPerInch;
    }
}
