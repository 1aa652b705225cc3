package kitleaf.sizing.thread;

import kitleaf.sizing.cloth.Weave;

/**
 * The tapestry needle that goes through the cloth without spreading it. Sizes are even numbers; the greater the number, the
 * finer the needle. Common practice, no source, and a matter of taste by one size either way.
 *
 * <p>What decides is the room a hole gives, told in stitches to the inch. A stitch over two threads has the room two threads
 * give way to; over three or four the holes stay where they are and the needle no thicker, so that
 * {@code max(stitches to the inch, holes to the inch / 2)} is looked up. On block cloth there is a hole a stitch.
 *
 * <pre>
 *   stitches to the inch   up to   6.5   8.5   11.5   14.5   20   above
 *   one to three strands            18    20     22     24   26      28
 * </pre>
 *
 * From four strands on a needle one size larger is taken, from seven on two sizes, for the eye to hold them.
 */
public final class Needle {

    /** The finest size given. */
    public static final int FINEST = 28;

    private static final double[] UP_TO = {6.5, 8.5, 11.5, 14.5, 20};
    private static final int COARSEST_IN_TABLE = 18;
    private static final int STEP = 2;

    private Needle() { }

    /**
     * The size for a stitch of a cell and a thread.
     *
     * @param strands in the needle, 1 or more
     */
    static int size(Cell cell, int strands) {
        return size(Weave.INCH_MM / Math.min(cell.edgeMm(), 2 * cell.threadMm()), strands);
    }

    /**
     * The size for stitches of one or two threads, or blocks, and a thread.
     *
     * @param stitchesPerInch above 0
     * @param strands in the needle, 1 or more
     */
    public static int size(double stitchesPerInch, int strands) {
        if (!(stitchesPerInch > 0) || strands < 1) {
            throw new IllegalArgumentException("no needle for " + stitchesPerInch + " to the inch, " + strands + " strands");
        }
        int size = COARSEST_IN_TABLE;
        for (double upTo : UP_TO) {
            size += stitchesPerInch > upTo ? STEP : 0;
        }
        return size - (strands >= 7 ? 2 * STEP : strands >= 4 ? STEP : 0);
    }
}
