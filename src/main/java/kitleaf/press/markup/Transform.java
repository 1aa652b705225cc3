package kitleaf.press.markup;

/**
 * An affine transform in double: x' = a x + c y + e, y' = b x + d y + f, SVG's matrix(a b c d e f).
 */
public record Transform(double a, double b, double c, double d, double e, double f) {

    public static final Transform NONE = new Transform(1, 0, 0, 1, 0, 0);

    public static Transform translate(double x, double y) {
        return new Transform(1, 0, 0, 1, x, y);
    }

    static Transform scale(double x, double y) {
        return new Transform(x, 0, 0, y, 0, 0);
    }

    /** Turns clockwise as seen on the page (y down), by degrees; quarter turns are exact. */
    static Transform rotate(double degrees) {
        double quarters = degrees / 90;
        double cos;
        double sin;
        if (quarters == Math.rint(quarters)) {
            int quarter = Math.floorMod((long) quarters, 4);
            cos = new int[] {1, 0, -1, 0}[quarter];
            sin = new int[] {0, 1, 0, -1}[quarter];
        } else {
            cos = Math.cos(Math.toRadians(degrees));
            sin = Math.sin(Math.toRadians(degrees));
        }
        return new Transform(cos, sin, -sin, cos, 0, 0);
    }

    /** This transform applied to what the inner one gives: a group's, then its child's. */
    public Transform with(Transform inner) {
        return new Transform(
                a * inner.a + c * inner.b, b * inner.a + d * inner.b,
                a * inner.c + c * inner.d, b * inner.c + d * inner.d,
                a * inner.e + c * inner.f + e, b * inner.e + d * inner.f + f);
    }

    public double x(double x, double y) {
        return a * x + c * y + e;
    }

    public double y(double x, double y) {
        return b * x + d * y + f;
    }

    /** By how much lengths grow on the whole: the square root of the area's growth. */
    public double growth() {
        return Math.sqrt(Math.abs(a * d - b * c));
    }

    /** By how much lengths along the element's own x and y grow, whichever grow less. */
    public double leastGrowth() {
        return Math.min(Math.hypot(a, b), Math.hypot(c, d));
    }
}
