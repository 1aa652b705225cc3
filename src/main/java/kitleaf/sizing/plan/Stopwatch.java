package kitleaf.sizing.plan;

import java.util.function.BooleanSupplier;

/** How long a plan may be searched for. */
public interface Stopwatch {

    /** One that never ends: the search stops by the number of its steps alone, and gives the same plan on any machine. */
    Stopwatch ENDLESS = () -> () -> false;

    /** Starts it; what it gives says whether time is up. */
    BooleanSupplier start();
}
