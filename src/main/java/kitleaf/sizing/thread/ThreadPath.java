package kitleaf.sizing.thread;

import kitleaf.basket.thread.StitchCount;

/**
 * The thread one stitch takes, in millimetres: what lies on the front, and what runs behind to where the next
 * stitch begins. The thread is drawn as a line without thickness in a flat cloth; {@link Allowances} answers for
 * the rest. Stitches stand in rows running across, so that a is the cell's width and b its height; d = sqrt(a^2 + b^2)
 * is its diagonal. Stitches of band samplers go over {@value #USUAL_SPAN} cloth threads whatever the cell: s = 4p, with p the mean of
 * both directions, and D = s sqrt(2). A corner is written (across, up) from the lower left of the stitch's own cell.
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
            case LONG_ARMED -> longArmedMm(cell);
            case RICE -> riceMm(cell);
            case EYELET -> eyeletMm(cell);
            case FOUR_SIDED -> fourSidedMm(cell);
            case SATIN_BLOCK -> satinBlockMm(cell);
            case HEM -> hemMm(cell);
            case QUEEN -> queenMm(cell);
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

    /**
     * A long-armed cross, worked on forward: sqrt(4a^2 + b^2) + d + 2a. Front from (0,0) two cells on to (2a,b); behind back along
     * the top to (a,b), a; front down to (2a,0), d; behind back along the foot to (a,0), a, where the next begins.
     */
    static double longArmedMm(Cell cell) {
        return Math.hypot(2 * cell.acrossMm(), cell.downMm()) + cell.diagonalMm() + 2 * cell.acrossMm();
    }

    /**
     * A rice stitch, its ties worked as back stitches: 4D + 5s. A cross: front (0,0) to (s,s), D; behind down to (s,0), s; front to
     * (0,s), D. Behind along the top to its middle, s/2. Four ties from middle of a side to middle of a side, front D/2 each: top to
     * left, right to top, bottom to right, left to bottom; behind from each to the next, straight across the square, s three times.
     * Behind from the bottom's middle to (s,0), s/2, where the next begins.
     */
    static double riceMm(Cell cell) {
        double s = bandMm(cell);
        return 4 * s * Math.sqrt(2) + 5 * s;
    }

    /**
     * An eyelet of eight arms, each worked once into the middle: 4s + 4D. Front four upright or level arms of s/2 and four slanting
     * ones of D/2; behind from the middle out to the next arm as long as that arm, and after the last to (s,0), D/2, where the next
     * begins, which is as long as its own first arm from (0,0).
     */
    static double eyeletMm(Cell cell) {
        double s = bandMm(cell);
        return 4 * s + 4 * s * Math.sqrt(2);
    }

    /**
     * A four-sided stitch, worked leftwards, its fourth side being the next one's first: 3s + 3D. Front from (s,0) up to (s,s), s;
     * behind to (0,0), D; front to (s,0), s; behind to (0,s), D; front to (s,s), s; behind to (0,0), D, where the next begins.
     */
    static double fourSidedMm(Cell cell) {
        double s = bandMm(cell);
        return 3 * s + 3 * s * Math.sqrt(2);
    }

    /**
     * A block of five satin stitches, the next block turned and set to its corner: 5s + 4 sqrt(s^2 + p^2) + s. Five stitches on the
     * front; behind four ways to the next stitch, as in satin, and from the block's far corner along the next one's first stitch to its
     * other end, s, where that begins.
     */
    static double satinBlockMm(Cell cell) {
        double s = bandMm(cell);
        return (USUAL_SPAN + 1) * s + USUAL_SPAN * Math.hypot(s, cell.threadMm()) + s;
    }

    /**
     * A hemstitch round a group s wide, two threads into the hem: 2s + sqrt(s^2 + (2p)^2) + 2p. Front from (0,-2p) up to (0,0), 2p;
     * behind the group to (s,0), s; front back over it to (0,0), s; behind slanting into the hem to (s,-2p), where the next begins.
     */
    static double hemMm(Cell cell) {
        double s = bandMm(cell);
        double deepMm = 2 * cell.threadMm();
        return 2 * s + Math.hypot(s, deepMm) + deepMm;
    }

    /**
     * A queen stitch: 18p + (2 sqrt 17 + 3 sqrt 5 + 2 sqrt 8 + sqrt 13) p, about 42.22p. In threads: four stitches from (0,0) to (0,4),
     * bent aside to the middles of their ties at (-3/2,2), (-1/2,2), (1/2,2) and (3/2,2): 5 + sqrt 17 + sqrt 17 + 5. Four ties of one
     * thread from right to left: 4. Behind from (0,4) to the right ends of the ties (-1,2), (0,2), (1,2) and (2,2): sqrt 5 + 2 + sqrt 5 +
     * sqrt 8; and from their left ends (-2,2), (-1,2) and (0,2) down to (0,0): sqrt 8 + sqrt 5 + 2; from the last one, (1,2), to (4,0),
     * where the next begins: sqrt 13.
     */
    static double queenMm(Cell cell) {
        return cell.threadMm() * (18 + 2 * Math.sqrt(17) + 3 * Math.sqrt(5) + 2 * Math.sqrt(8) + Math.sqrt(13));
    }

    private static double bandMm(Cell cell) {
        return USUAL_SPAN * cell.threadMm();
    }
}
