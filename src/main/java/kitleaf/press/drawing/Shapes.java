package kitleaf.press.drawing;

/** Traces rectangles and circles as lines and curves. */
final class Shapes {

    /** How far a quarter circle's control points stand from its ends: 4/3 (sqrt 2 - 1) of the radius. */
    private static final double QUARTER = 4.0 / 3 * (Math.sqrt(2) - 1);

    private Shapes() {
    }

    static void circle(double cx, double cy, double r, Track track) {
        double k = r * QUARTER;
        track.move(cx + r, cy);
        track.curve(cx + r, cy + k, cx + k, cy + r, cx, cy + r);
        track.curve(cx - k, cy + r, cx - r, cy + k, cx - r, cy);
        track.curve(cx - r, cy - k, cx - k, cy - r, cx, cy - r);
        track.curve(cx + k, cy - r, cx + r, cy - k, cx + r, cy);
        track.close();
    }

    static void rectangle(double x, double y, double width, double height, Track track) {
        track.move(x, y);
        track.line(x + width, y);
        track.line(x + width, y + height);
        track.line(x, y + height);
        track.close();
    }

    static void rounded(double x, double y, double width, double height, double rx, double ry, Track track) {
        double right = x + width;
        double bottom = y + height;
        double kx = rx * (1 - QUARTER);
        double ky = ry * (1 - QUARTER);
        track.move(x + rx, y);
        track.line(right - rx, y);
        track.curve(right - kx, y, right, y + ky, right, y + ry);
        track.line(right, bottom - ry);
        track.curve(right, bottom - ky, right - kx, bottom, right - rx, bottom);
        track.line(x + rx, bottom);
        track.curve(x + kx, bottom, x, bottom - ky, x, bottom - ry);
        track.line(x, y + ry);
        track.curve(x, y + ky, x + kx, y, x + rx, y);
        track.close();
    }
}
