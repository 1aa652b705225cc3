package kitleaf.basket;

/**
 * How a printer stretches paper: what she measured on the 100 mm bars of a sheet printed without correction.
 *
 * @param measuredAcrossMm length of the bar across, {@value #LEAST_MM} to {@value #MOST_MM} mm
 * @param measuredDownMm length of the bar down, {@value #LEAST_MM} to {@value #MOST_MM} mm
 */
public record Printer(double measuredAcrossMm, double measuredDownMm) {

    /** The true length of the bars. */
    public static final double BAR_MM = 100;

    /** Below this the printer is set to shrink pages, which is mended in its dialog, not here. */
    public static final double LEAST_MM = 95;

    /** Above this the printer is set to enlarge pages. */
    public static final double MOST_MM = 105;

    /** A printer that prints true. */
    public static final Printer TRUE = new Printer(BAR_MM, BAR_MM);

    /** Refuses lengths outside {@value #LEAST_MM} to {@value #MOST_MM} mm. */
    public Printer {
        if (!(measuredAcrossMm >= LEAST_MM && measuredAcrossMm <= MOST_MM
                && measuredDownMm >= LEAST_MM && measuredDownMm <= MOST_MM)) {
            throw new IllegalArgumentException("measured bars must be " + LEAST_MM + " to " + MOST_MM + " mm: "
                    + measuredAcrossMm + ", " + measuredDownMm);
        }
    }

    /** Whether it prints true. */
    public boolean isTrue() {
        return measuredAcrossMm == BAR_MM && measuredDownMm == BAR_MM;
    }

    /** What to stretch drawings by, across, so that they print true. */
    public double acrossFactor() {
        return BAR_MM / measuredAcrossMm;
    }

    /** What to stretch drawings by, down, so that they print true. */
    public double downFactor() {
        return BAR_MM / measuredDownMm;
    }
}
