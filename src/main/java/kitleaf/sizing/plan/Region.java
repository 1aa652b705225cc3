package kitleaf.sizing.plan;

/**
 * A part of a cloth that hangs together while it is cut, laid with its warp down, without any kerf.
 *
 * @param xMm from the cloth's left edge
 * @param yMm from its top edge
 * @param widthMm above 0
 * @param heightMm above 0
 * @param cut the number of the last cut that set it free, 0 if none was needed
 */
record Region(double xMm, double yMm, double widthMm, double heightMm, int cut) {

    /** Whether it is no larger than this, but for rounding. */
    boolean is(double width, double height) {
        return widthMm - width <= Stock.SLACK_MM && heightMm - height <= Stock.SLACK_MM;
    }

    /** What lies to the left of a line, once it is cut. */
    Region left(double atMm, int byCut) {
        return new Region(xMm, yMm, atMm, heightMm, byCut);
    }

    /** What lies from a place on to the right. */
    Region right(double fromMm, int byCut) {
        return new Region(xMm + fromMm, yMm, widthMm - fromMm, heightMm, byCut);
    }

    /** What lies above a line. */
    Region top(double atMm, int byCut) {
        return new Region(xMm, yMm, widthMm, atMm, byCut);
    }

    /** What lies from a place on down. */
    Region bottom(double fromMm, int byCut) {
        return new Region(xMm, yMm + fromMm, widthMm, heightMm - fromMm, byCut);
    }

    /** Whether anything is left of it. */
    boolean exists() {
        return widthMm > Stock.SLACK_MM && heightMm > Stock.SLACK_MM;
    }
}
