package kitleaf.sizing.cloth;

import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Shrink;

/**
 * The distance from thread to thread of a cloth under an upright design, in both of its states.
 *
 * <p>Counting across the design's width meets the threads that run down its height: with the warp
 * running down, the width is reckoned from the warp count and shrinks by the weft's loss of length
 * (the weft threads are the ones that lie across and get shorter).
 *
 * @param acrossPitchMm from thread to thread counted across the width, at the hoop
 * @param downPitchMm from thread to thread counted down the height, at the hoop
 * @param acrossShrink the part of its width the cloth loses between table and hoop, 0 or more, under 1
 * @param downShrink the part of its height it loses
 */
public record Weave(double acrossPitchMm, double downPitchMm, double acrossShrink, double downShrink) {

    /** One inch: 25.4 mm exactly, by the International Yard and Pound Agreement of 1959. */
    public static final double INCH_MM = 25.4;

    /** The weave of a cloth as it lies under the design. */
    public static Weave of(Cloth cloth) {
        Count count = cloth.count();
        Shrink shrink = cloth.shrinkBeforeStitching();
        boolean before = cloth.counted() == Cloth.Counted.BEFORE;
        // Warp threads lie beside each other along the weft, so it is the weft's shrinking that draws them together.
        double warpPitchMm = INCH_MM / count.warpPerInch() * (before ? 1 - shrink.weft() : 1);
        double weftPitchMm = INCH_MM / count.weftPerInch() * (before ? 1 - shrink.warp() : 1);
        return cloth.warp() == Cloth.WarpRun.DOWN
                ? new Weave(warpPitchMm, weftPitchMm, shrink.weft(), shrink.warp())
                : new Weave(weftPitchMm, warpPitchMm, shrink.warp(), shrink.weft());
    }
}
