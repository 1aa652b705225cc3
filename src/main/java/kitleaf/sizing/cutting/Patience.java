package kitleaf.sizing.cutting;

/**
 * How long a search may go on: a number of steps, never a time, so that the same basket gives the same plan on every machine. A part of
 * it may be given to a search within the search; what that spends, the whole has spent.
 */
public final class Patience {

    private final Patience whole;
    private final long fine;
    private long steps;
    /** Fine steps the whole has not been charged for yet. */
    private long unpaid;

    /** @param steps how many steps it lasts, 0 or more, each about a microsecond's work of an ordinary computer */
    public Patience(long steps) {
        this(steps, null, 1);
    }

    private Patience(long steps, Patience whole, long fine) {
        this.steps = steps;
        this.whole = whole;
        this.fine = fine;
    }

    /** A part of this: so many steps of the same size, if the whole lasts so long. */
    public Patience part(long some) {
        return part(some, 1);
    }

    /**
     * A part of this with smaller steps.
     *
     * @param some how many steps it lasts, if the whole lasts so long
     * @param size how many of them make one of the whole's, 1 or more
     */
    public Patience part(long some, long size) {
        return new Patience(some, this, size);
    }

    /** Takes one step; false when there is none left to take. */
    public boolean step() {
        return steps(1);
    }

    /** Takes so many steps at once; false when patience has ended. */
    public boolean steps(long number) {
        if (ended()) {
            return false;
        }
        steps -= number;
        if (whole == null) {
            return true;
        }
        unpaid += number;
        if (unpaid >= fine) {
            whole.steps(unpaid / fine);
            unpaid %= fine;
        }
        return !whole.ended();
    }

    /** Whether no step is left, of its own or of the whole. */
    public boolean ended() {
        return steps <= 0 || whole != null && whole.ended();
    }
}
