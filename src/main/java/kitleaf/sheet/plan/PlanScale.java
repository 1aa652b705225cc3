package kitleaf.sheet.plan;

import java.util.Arrays;
import java.util.List;

/**
 * A round scale to draw cloth at.
 *
 * @param one millimetre on paper stands for so many on cloth, 1 or more
 */
record PlanScale(double one) {

    private static final double[] ROUND = {1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100, 120, 150, 200, 250,
            300, 400, 500};

    /** The largest round scale at which a cloth fits into a room; never larger than life. */
    static PlanScale fitting(double widthMm, double heightMm, double roomWidthMm, double roomHeightMm) {
        double least = Math.max(1, Math.max(widthMm / roomWidthMm, heightMm / roomHeightMm));
        return Arrays.stream(ROUND).filter(round -> round >= least).mapToObj(PlanScale::new).findFirst()
                .orElseGet(() -> new PlanScale(Math.ceil(least / 100) * 100));
    }

    /** This scale and the round ones below it, down to a part of its size; beyond the round ones in steps of a fifth. */
    List<PlanScale> downTo(double part) {
        double[] more = one < ROUND[ROUND.length - 1] ? ROUND : new double[] {one, one * 1.2, one * 1.5, one * 2};
        return Arrays.stream(more).filter(round -> round >= one && round <= one / part).mapToObj(PlanScale::new).toList();
    }

    /** A length of cloth on paper. */
    double onPaper(double mm) {
        return mm / one;
    }
}
