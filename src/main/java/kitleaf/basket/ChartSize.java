package kitleaf.basket;

/**
 * The size of a chart, counted in stitches.
 *
 * @param wide stitches across, 1 to {@value #MOST}
 * @param high stitches down, 1 to {@value #MOST}
 */
public record ChartSize(int wide, int high) {

    /** The longest side a chart may have; well past any chart on paper, it catches slips of the pen. */
    public static final int MOST = 5000;

    /** Refuses sides outside 1 to {@value #MOST}. */
    public ChartSize {
        if (wide < 1 || wide > MOST || high < 1 || high > MOST) {
            throw new IllegalArgumentException("chart sides must be 1 to " + MOST + ": " + wide + " x " + high);
        }
    }

    /** The number of cells in the chart, stitched or bare. */
    public long cells() {
        return (long) wide * high;
    }
}
