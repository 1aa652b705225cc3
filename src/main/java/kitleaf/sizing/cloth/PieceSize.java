package kitleaf.sizing.cloth;

import java.util.Objects;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Margins;
import kitleaf.basket.Piece;
import kitleaf.basket.cloth.Cloth;

/**
 * The sizes of a piece on its cloth, reckoned apart across and down, since real linen is rarely even.
 *
 * @param across along the width of the design
 * @param down along its height
 */
public record PieceSize(Extent across, Extent down) {

    /** Refuses a missing direction. */
    public PieceSize {
        Objects.requireNonNull(across);
        Objects.requireNonNull(down);
    }

    /**
     * The sizes of a chart on a cloth.
     *
     * @param stepMm what cut sizes are rounded up to, in millimetres, above 0
     */
    public static PieceSize of(ChartSize chart, Cloth cloth, Margins margins, double stepMm) {
        Weave weave = Weave.of(cloth);
        return new PieceSize(
                new Extent(chart.wide(), cloth.over(), weave.acrossPitchMm(), weave.acrossShrink(),
                        margins.leftMm(), margins.rightMm(), stepMm),
                new Extent(chart.high(), cloth.over(), weave.downPitchMm(), weave.downShrink(),
                        margins.topMm(), margins.bottomMm(), stepMm));
    }

    /**
     * The sizes of a piece on a cloth. A hoop is a circle, so a piece that stays in one and has no margin of its own gets the usual
     * one round the circle through its corners: (diagonal - side) / 2 more on each side.
     *
     * @param stepMm what cut sizes are rounded up to, in millimetres, above 0
     */
    public static PieceSize of(Piece piece, Cloth cloth, double stepMm) {
        PieceSize size = of(piece.stitches(), cloth, piece.margins(), stepMm);
        double circleMm = size.diagonalMm();
        return piece.followsHoop() ? new PieceSize(size.across.within(circleMm), size.down.within(circleMm)) : size;
    }

    /** The design's diagonal, in millimetres (Pythagoras): what a hoop round it measures inside at the least. */
    public double diagonalMm() {
        return Math.hypot(across.finishedMm(), down.finishedMm());
    }

    /**
     * Either diagonal of the cut cloth, in millimetres. A four-sided cloth with equal opposite sides is square at
     * its corners exactly when both diagonals are equal (Euclid: a parallelogram with equal diagonals is a rectangle).
     */
    public double cutDiagonalMm() {
        return Math.hypot(across.cutMm(), down.cutMm());
    }
}
