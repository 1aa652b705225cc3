package kitleaf.press.markup;

/**
 * One page's way from millimetres (origin top left, y down) to points (origin bottom left, y up),
 * with the printer's correction: the one place where lengths change their unit.
 */
public record Plate(double widthMm, double heightMm, double across, double down) {

    /** A point is 1/72 inch and an inch 25.4 mm. */
    public static final double POINTS_PER_MM = 72 / 25.4;

    /** Type below this would vanish in a PDF's numbers. */
    public static final double LEAST_TYPE_PT = 0.1;

    /** How far the correction moves a point across, in millimetres. */
    public double shiftX(double xMm) {
        return (xMm - widthMm / 2) * (across - 1);
    }

    /** How far the correction moves a point down, in millimetres. */
    public double shiftY(double yMm) {
        return (yMm - heightMm / 2) * (down - 1);
    }

    /** Points from the left edge, corrected. */
    public double xPt(double xMm) {
        return (xMm + shiftX(xMm)) * POINTS_PER_MM;
    }

    /** Points from the lower edge, corrected. */
    public double yPt(double yMm) {
        return plainYPt(yMm + shiftY(yMm));
    }

    /** Points from the left edge for a place already corrected. */
    public double plainXPt(double xMm) {
        return xMm * POINTS_PER_MM;
    }

    /** Points from the lower edge for a place already corrected. */
    public double plainYPt(double yMm) {
        return (heightMm - yMm) * POINTS_PER_MM;
    }
}
