package kitleaf.sizing.cutting;

import java.util.Objects;
import java.util.function.BooleanSupplier;

/**
 * How long a search may go on: a number of steps, so that the same basket gives the same plan, and for a slow machine
 * a word from outside that time is up.
 */
public final class Patience {

    /** How many steps pass between two looks at the clock. */
    private static final long LOOK_EVERY = 4096;

    private final BooleanSupplier timeUp;
    private long steps;
    private long untilLook = LOOK_EVERY;
    private boolean cutShort;

    /**
     * @param steps how many steps it lasts, 0 or more
     * @param timeUp asked now and then; once it says yes, patience has ended
     */
    public Patience(long steps, BooleanSupplier timeUp) {
        this.steps = steps;
        this.timeUp = Objects.requireNonNull(timeUp);
    }

    /** Takes one step; false when there is none left to take. */
    public boolean step() {
        return steps(1);
    }

    /** Takes so many steps at once; false when patience has ended. */
    public boolean steps(long number) {
        if (cutShort || steps <= 0) {
            return false;
        }
        steps -= number;
        untilLook -= number;
        if (untilLook <= 0) {
            untilLook = LOOK_EVERY;
            cutShort = timeUp.getAsBoolean();
        }
        return !cutShort;
    }

    /** Whether it ended because time was up, so that another run may find something else. */
    public boolean cutShort() {
        return cutShort;
    }
}
