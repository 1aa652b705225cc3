package kitleaf.sizing.thread;

import kitleaf.basket.thread.StitchCount;

/**
 * The thread one stitch takes, in millimetres: what lies on the front, and what runs behind to where the next
 * stitch begins. The thread is drawn as a line without thickness in a flat cloth; {@link Allowances} answers for
 * the rest. Stitches stand in rows running across, so that a is the cell's width and b its height; d = sqrt(a^2 + b^2)
 * is its diagonal. A corner is written (across, up) from the lower left of the stitch's own cell.
 *
 * <p>All paths are derived here from the way the stitches are worked; the ways themselves are common practice, no source.
 */
public final class ThreadPath {

    /** Cloth threads a satin stitch spans where the chart does not say: an assumption, no source. */
    static final int USUAL_SPAN = 4;

    /** Turns of thread round the needle for one knot: two, by common practice, no source. */
    static final int KNOT_WRAPS = 2;

    /**
     * Across one turn of a knot, from middle to middle of the thread: about 1 mm of needle with half a millimetre of
     * thread on it. An assumption, no source.
     */
    static final double KNOT_WRAP_MM = 1.5;

    private ThreadPath() { }

    /** One stitch of this kind on this cell, in millimetres, above 0. */
    public static double oneMm(StitchCount stitch, Cell cell) {
        return switch (stitch.kind()) {
            case CROSS -> stitch.worked().orElse(StitchCount.Worked.ROWS) == StitchCount.Worked.ROWS
                    ? crossInRowsMm(cell) : crossSinglyMm(cell);
            case HALF -> halfMm(cell);
            case TENT -> tentMm(cell);
            case QUARTER -> quarterMm(cell);
            case THREE_QUARTER -> threeQuarterMm(cell);
            case BACK -> backMm(cell);
            case DOUBLE_RUNNING -> doubleRunningMm(cell);
            case SATIN -> satinMm(cell, stitch.span().orElse(USUAL_SPAN));
            case KNOT -> knotMm(cell);
            case OTHER -> stitch.eachMm().orElseThrow();
        };
    }

    /**
     * A cross, worked in rows: 2d + 2b. Going: front from (0,0) to (a,b), d; behind straight down to (a,0), b, where the
     * next cell's first leg begins. Coming back: front from (a,0) to (0,b), d; behind straight down to (0,0), b, where
     * the second leg of the cell before begins.
     */
    public static double crossInRowsMm(Cell cell) {
        return 2 * cell.diagonalMm() + 2 * cell.downMm();
    }

    /**
     * A cross finished before the next: 3d + b. Front from (0,0) to (a,b), d; behind straight down to (a,0), b; front to
     * (0,b), d; behind down the diagonal to (a,0), d, where the next cross begins.
     */
    static double crossSinglyMm(Cell cell) {
        return 3 * cell.diagonalMm() + cell.downMm();
    }

    /**
     * A half stitch, in rows: d + b. Front from (0,0) to (a,b), d; behind straight down to (a,0), b, where the next begins.
     */
    static double halfMm(Cell cell) {
        return cell.diagonalMm() + cell.downMm();
    }

    /**
     * A tent stitch, worked against its slant: d + sqrt(4a^2 + b^2). Front from (0,0) to (a,b), d; behind to (-a,0), two
     * cells across and one down, where the next cell's begins. Rows worked back, with the chart turned, are the same.
     */
    static double tentMm(Cell cell) {
        return cell.diagonalMm() + Math.hypot(2 * cell.acrossMm(), cell.downMm());
    }

    /**
     * A quarter stitch, in rows: d. Front from (0,0) to the middle (a/2,b/2), d/2; behind from there to (a,0), again
     * sqrt((a/2)^2 + (b/2)^2) = d/2, where the next cell's begins.
     */
    static double quarterMm(Cell cell) {
        return cell.diagonalMm();
    }

    /**
     * A three-quarter stitch, each finished before the next: 2d + b. Its half: front from (0,0) to (a,b), d; behind
     * straight down to (a,0), b. Its quarter: front from (a,0) to the middle, d/2; behind from the middle back to (a,0),
     * d/2, where the next begins.
     */
    static double threeQuarterMm(Cell cell) {
        return 2 * cell.diagonalMm() + cell.downMm();
    }

    /**
     * A back stitch along one cell edge e: 3e. Front one edge back to the end of the stitch before, e; behind two edges
     * forward, under this stitch and the next, 2e. The edge is the mean of a and b.
     */
    static double backMm(Cell cell) {
        return 3 * cell.edgeMm();
    }

    /**
     * A double running stitch along one cell edge e: 2e. Going, one edge lies on the front and the next behind; coming
     * back, the gaps are filled and what lay on the front has thread behind it too. In the end each edge has e on the
     * front and e behind. The edge is the mean of a and b.
     */
    static double doubleRunningMm(Cell cell) {
        return 2 * cell.edgeMm();
    }

    /**
     * A satin stitch side by side with the next, one cloth thread p apart: s + sqrt(s^2 + p^2), with s = span x p. Front
     * across the span, s; behind slanting back to the next stitch's beginning, one thread on. p is the mean of both
     * directions, since a chart's count does not tell which way the stitches lie.
     *
     * @param span cloth threads, 1 or more
     */
    static double satinMm(Cell cell, int span) {
        double lengthMm = span * cell.threadMm();
        return lengthMm + Math.hypot(lengthMm, cell.threadMm());
    }

    /**
     * A wrapped knot: 2 pi w + p + e. Two turns round the needle, each taken as a circle {@value #KNOT_WRAP_MM} mm across
     * (w), since turns lie round the needle and not along the cloth; down one cloth thread (p) from where it came up;
     * behind one cell edge (e) to the next knot. Knots standing farther apart take that much more.
     */
    static double knotMm(Cell cell) {
        return KNOT_WRAPS * Math.PI * KNOT_WRAP_MM + cell.threadMm() + cell.edgeMm();
    }
}
