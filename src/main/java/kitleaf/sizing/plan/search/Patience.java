package kitleaf.sizing.plan.search;

/** How long a search may go on: a number of steps, never a time, so that the same basket gives the same plan on every machine. */
public final class Patience {

    private long steps;

    /** @param steps how many steps it lasts, 0 or more */
    public Patience(long steps) {
        this.steps = steps;
    }

    /** Takes one step; false when there is none left to take. */
    public boolean step() {
        return steps(1);
    }

    /** Takes so many steps at once; false when patience had ended before. */
    public boolean steps(long number) {
        if (ended()) {
            return false;
        }
        steps -= number;
        return true;
    }

    /** Whether no step is left. */
    public boolean ended() {
        return steps <= 0;
    }
}
