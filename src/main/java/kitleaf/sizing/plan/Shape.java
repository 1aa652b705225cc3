package kitleaf.sizing.plan;

/**
 * A way a piece may lie on a cloth, the kerf added to both sides.
 *
 * @param widthMm above 0
 * @param heightMm above 0
 */
record Shape(double widthMm, double heightMm) {

    /** Refuses what is no rectangle. */
    Shape {
        if (!(widthMm > 0 && heightMm > 0 && Double.isFinite(widthMm) && Double.isFinite(heightMm))) {
            throw new IllegalArgumentException("no such shape: " + widthMm + " x " + heightMm);
        }
    }

    /** Its area in square millimetres. */
    double areaMm2() {
        return widthMm * heightMm;
    }
}
