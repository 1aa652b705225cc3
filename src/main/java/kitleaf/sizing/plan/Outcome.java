package kitleaf.sizing.plan;

import java.util.Arrays;

/**
 * How good it is to cut something from the cloths on hand: the fewer are opened the better; then the larger the largest
 * usable rectangle is that any of them leaves, opened or not; then the next largest, and so on.
 *
 * @param cloths how many are opened
 * @param remnants the largest usable rectangle of each cloth, the largest first
 */
record Outcome(int cloths, double[] remnants) {

    static final Outcome NOTHING = new Outcome(0, new double[0]);

    /** This, and one more cloth. */
    Outcome with(boolean opened, double remnantMm2) {
        double[] more = Arrays.copyOf(remnants, remnants.length + 1);
        int at = remnants.length;
        while (at > 0 && more[at - 1] < remnantMm2) {
            more[at] = more[at - 1];
            at--;
        }
        more[at] = remnantMm2;
        return new Outcome(cloths + (opened ? 1 : 0), more);
    }

    /** Whether this is better than another for as many cloths. */
    boolean betterThan(Outcome other) {
        return cloths != other.cloths ? cloths < other.cloths : Arrays.compare(remnants, other.remnants) > 0;
    }

    /** The largest rectangle left, 0 if there is none. */
    double largestMm2() {
        return remnants.length == 0 ? 0 : remnants[0];
    }
}
