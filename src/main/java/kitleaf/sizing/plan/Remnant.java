package kitleaf.sizing.plan;

/**
 * A rectangle of cloth that is left, in millimetres from the cloth's top left corner.
 *
 * @param xMm from the left edge
 * @param yMm from the top edge
 * @param widthMm above 0
 * @param heightMm above 0
 * @param usable whether its shorter side is long enough to be worth keeping
 */
public record Remnant(double xMm, double yMm, double widthMm, double heightMm, boolean usable) {

    /** Its area in square millimetres. */
    public double areaMm2() {
        return widthMm * heightMm;
    }
}
