package kitleaf.sizing.thread;

/**
 * A figure nobody knows exactly.
 *
 * @param low what it is at its least, 0 or more
 * @param likely what to expect, {@code low} or more
 * @param high what to be ready for, {@code likely} or more
 */
public record Estimate(double low, double likely, double high) {

    /** Nothing, for certain. */
    public static final Estimate NONE = new Estimate(0, 0, 0);

    /** Refuses figures out of order, below 0 or without end. */
    public Estimate {
        if (!(low >= 0 && low <= likely && likely <= high && high < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no such estimate: " + low + ", " + likely + ", " + high);
        }
    }

    /** Both together, the low with the low and the high with the high: threads err together, since one hand works them. */
    public Estimate plus(Estimate other) {
        return new Estimate(low + other.low, likely + other.likely, high + other.high);
    }

    /**
     * So many times as much.
     *
     * @param times 0 or more
     */
    public Estimate times(double times) {
        return new Estimate(low * times, likely * times, high * times);
    }
}
