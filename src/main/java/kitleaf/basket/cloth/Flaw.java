package kitleaf.basket.cloth;

import java.util.Objects;

/**
 * A strip of a cloth, from edge to edge, that no piece may lie on: a stain, a hole, a fold that stays.
 *
 * @param run which way the strip runs
 * @param fromMm where it begins, 0 or more: from the left edge if it runs down, from the top if it runs across
 * @param wideMm how wide it is, above 0
 */
public record Flaw(Run run, double fromMm, double wideMm) {

    /** A strip of 6.6 in from 3.3 in ends on a cloth of 9.9 in, though adding doubles may put it a hair beyond. */
    private static final double ROUNDING_MM = 1e-6;

    /** Which way a strip runs, whatever the warp does. */
    public enum Run {
        /** The whole height of the cloth. */
        DOWN,
        /** The whole width of the cloth. */
        ACROSS
    }

    /** Refuses strips that begin before the cloth or have no width. */
    public Flaw {
        Objects.requireNonNull(run);
        if (!(fromMm >= 0 && wideMm > 0 && Double.isFinite(fromMm + wideMm))) {
            throw new IllegalArgumentException("no such flaw: from " + fromMm + ", wide " + wideMm);
        }
    }

    /** Where it ends, from the same edge. */
    public double toMm() {
        return fromMm + wideMm;
    }

    /**
     * Whether it lies inside a cloth.
     *
     * @param clothMm the cloth's width for a strip that runs down, its height for one that runs across
     */
    public boolean within(double clothMm) {
        return toMm() <= clothMm + ROUNDING_MM;
    }
}
