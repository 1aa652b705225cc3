package kitleaf.basket.cloth;

/**
 * What cutting costs and what is worth keeping.
 *
 * @param frayMm what a cut loses besides the one thread that is drawn for it, both edges together, 0 to {@value #MOST_FRAY_MM}
 * @param usableMm the shorter side from which a remnant is worth keeping, 0 to {@value #MOST_USABLE_MM}
 */
public record Cutting(double frayMm, double usableMm) {

    /** Cloth that frays more is no cloth to stitch on. */
    public static final double MOST_FRAY_MM = 30;

    /** Whoever keeps only larger remnants keeps none. */
    public static final double MOST_USABLE_MM = 1000;

    /** 3 mm and 10 cm (common practice, no source). */
    public static final Cutting USUAL = new Cutting(3, 100);

    /** Refuses lengths out of range. */
    public Cutting {
        if (!(frayMm >= 0 && frayMm <= MOST_FRAY_MM && usableMm >= 0 && usableMm <= MOST_USABLE_MM)) {
            throw new IllegalArgumentException("no such cutting: " + frayMm + ", " + usableMm);
        }
    }
}
