package kitleaf.command;

import java.util.function.BooleanSupplier;
import kitleaf.sizing.plan.Stopwatch;

/**
 * A cloth plan's time by the computer's clock.
 *
 * @param seconds 0 or more
 */
record PlanTime(double seconds) implements Stopwatch {

    /** As the options write it. */
    static final String USUAL = "5";

    private static final double NANOS = 1e9;

    @Override
    public BooleanSupplier start() {
        long start = System.nanoTime();
        long allowed = (long) (seconds * NANOS);
        return () -> System.nanoTime() - start >= allowed;
    }

    /** Asked for by whoever reads the options; a record's own would be made at run time, for a hundredth of a second. */
    @Override
    public String toString() {
        return seconds + " s";
    }
}
