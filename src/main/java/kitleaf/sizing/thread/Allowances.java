package kitleaf.sizing.thread;

/**
 * What a stitcher needs beyond the drawn path of her stitches. All figures given here are common practice or
 * assumptions, without a source.
 *
 * @param takeUp thread lost in rising through the cloth and going round other thread, a fraction of the path, 0 or more
 * @param workingMm the length cut for the needle, above {@code tailsMm}
 * @param tailsMm what of it is spent on beginning and ending and on what is too short to stitch with, 0 or more
 * @param unpicking thread stitched twice because it was taken out once, a fraction, 0 or more
 */
public record Allowances(double takeUp, double workingMm, double tailsMm, double unpicking) {

    /** The likely case: 10 % take-up, 45 cm in the needle, 8 cm of tails, 10 % unpicked. */
    public static final Allowances LIKELY = new Allowances(0.10, 450, 80, 0.10);

    /** The sparing case: 5 % take-up in a thin thread, and nothing unpicked. */
    public static final Allowances LOW = new Allowances(0.05, 450, 80, 0);

    /** The spending case: 15 % take-up, a short 35 cm in the needle, as for threads that wear, and 20 % unpicked. */
    public static final Allowances HIGH = new Allowances(0.15, 350, 80, 0.20);

    /** Refuses lengths that leave nothing to stitch with and fractions below 0. */
    public Allowances {
        if (!(takeUp >= 0 && takeUp < 10) || !(unpicking >= 0 && unpicking < 10) || !(tailsMm >= 0)
                || !(workingMm > tailsMm && workingMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no such allowances: " + takeUp + ", " + workingMm + ", " + tailsMm + ", " + unpicking);
        }
    }

    /** What a path is multiplied by, 1 or more: (1 + take-up) x working / (working - tails) x (1 + unpicking). */
    public double factor() {
        return (1 + takeUp) * workingMm / (workingMm - tailsMm) * (1 + unpicking);
    }

    /** A path with the allowances of all three cases, in millimetres. */
    static Estimate estimateMm(double pathMm) {
        return new Estimate(pathMm * LOW.factor(), pathMm * LIKELY.factor(), pathMm * HIGH.factor());
    }
}
