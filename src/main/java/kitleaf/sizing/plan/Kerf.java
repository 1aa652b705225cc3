package kitleaf.sizing.plan;

import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Cutting;
import kitleaf.sizing.cloth.Weave;

/**
 * What a cut takes away: the one thread that is drawn for it, and what frays. On cloth that lies with its warp down, a
 * cut that runs down draws a warp thread, one that runs across a weft thread.
 *
 * <p>Searches do without it: with the kerf added to both sides of every piece and of the cloth, pieces that touch are
 * parted by one kerf, and the last one needs none behind it.
 *
 * @param besideMm between two pieces side by side
 * @param belowMm between two pieces one below the other
 * @param usableMm the shorter side from which a remnant is worth keeping
 */
record Kerf(double besideMm, double belowMm, double usableMm) {

    static Kerf of(Count count, Cutting cutting) {
        return new Kerf(Weave.INCH_MM / count.warpPerInch() + cutting.frayMm(),
                Weave.INCH_MM / count.weftPerInch() + cutting.frayMm(), cutting.usableMm());
    }

    /** What a cut takes away that runs so. */
    double along(EdgeCut.Run run) {
        return run.side(besideMm, belowMm);
    }

    /**
     * The area of a remnant, rounded to hundredths of a square millimetre so that the last bits of doubles decide nothing.
     *
     * @param widthMm its width with the kerf
     * @param heightMm its height with the kerf
     * @return 0 if it is not worth keeping
     */
    double usableMm2(double widthMm, double heightMm) {
        double width = widthMm - besideMm;
        double height = heightMm - belowMm;
        return width > Stock.SLACK_MM && height > Stock.SLACK_MM && usable(width, height) ? Math.rint(width * height * 100) / 100 : 0;
    }

    /** Whether a remnant of these sides, without the kerf, is worth keeping. */
    boolean usable(double widthMm, double heightMm) {
        return Math.min(widthMm, heightMm) >= usableMm - Stock.SLACK_MM;
    }
}
