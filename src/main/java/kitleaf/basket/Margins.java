package kitleaf.basket;

/**
 * Cloth left around the design, side by side, in millimetres.
 *
 * @param topMm above the design, 0 to {@value #MOST_MM}
 * @param rightMm right of it, 0 to {@value #MOST_MM}
 * @param bottomMm below it, 0 to {@value #MOST_MM}
 * @param leftMm left of it, 0 to {@value #MOST_MM}
 */
public record Margins(double topMm, double rightMm, double bottomMm, double leftMm) {

    /** The widest margin taken, one metre. */
    public static final double MOST_MM = 1000;

    /** Refuses widths outside 0 to {@value #MOST_MM}. */
    public Margins {
        check(topMm);
        check(rightMm);
        check(bottomMm);
        check(leftMm);
    }

    /** One width on all four sides. */
    public static Margins all(double mm) {
        return new Margins(mm, mm, mm, mm);
    }

    /** One width above and below, another left and right. */
    public static Margins of(double topAndBottomMm, double sidesMm) {
        return new Margins(topAndBottomMm, sidesMm, topAndBottomMm, sidesMm);
    }

    /** Whether it is one width on all four sides. */
    public boolean even() {
        return topMm == rightMm && topMm == bottomMm && topMm == leftMm;
    }

    private static void check(double mm) {
        if (!(mm >= 0 && mm <= MOST_MM)) {
            throw new IllegalArgumentException("margin must be 0 to " + MOST_MM + " mm: " + mm);
        }
    }
}
