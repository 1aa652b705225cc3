package kitleaf.sizing.thread;

import kitleaf.basket.cloth.Cloth;
import kitleaf.sizing.cloth.Weave;

/**
 * The cell one stitch fills, as the cloth lies at the hoop, where it is stitched.
 *
 * @param acrossMm its width, above 0
 * @param downMm its height, above 0
 * @param threadMm from one cloth thread to the next, the mean of both directions, above 0; on block cloth from block to block
 */
public record Cell(double acrossMm, double downMm, double threadMm) {

    /** Refuses cells without width, height or threads. */
    public Cell {
        if (!(acrossMm > 0 && acrossMm < Double.POSITIVE_INFINITY) || !(downMm > 0 && downMm < Double.POSITIVE_INFINITY)
                || !(threadMm > 0 && threadMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no such cell: " + acrossMm + " x " + downMm + ", " + threadMm);
        }
    }

    /**
     * The cell of stitches over so many threads of a cloth: 25.4 x over / count, across and down apart.
     *
     * @param over threads a stitch spans, 1 or more
     */
    public static Cell of(Cloth cloth, int over) {
        Weave weave = Weave.of(cloth);
        return new Cell(over * weave.acrossPitchMm(), over * weave.downPitchMm(),
                (weave.acrossPitchMm() + weave.downPitchMm()) / 2);
    }

    /** From corner to corner, in millimetres (Pythagoras). */
    public double diagonalMm() {
        return Math.hypot(acrossMm, downMm);
    }

    /** One edge, in millimetres: the mean of width and height, since a chart does not tell which way its lines run. */
    public double edgeMm() {
        return (acrossMm + downMm) / 2;
    }

    /** Stitches to the inch, by the mean edge. */
    public double stitchesPerInch() {
        return Weave.INCH_MM / edgeMm();
    }
}
