package kitleaf.basket.cloth;

/** A side of a cloth as it lies before her. */
public enum ClothSide {
    /** The left one. */
    LEFT(Cloth.WarpRun.DOWN),
    /** The right one. */
    RIGHT(Cloth.WarpRun.DOWN),
    /** The upper one. */
    TOP(Cloth.WarpRun.ACROSS),
    /** The lower one. */
    BOTTOM(Cloth.WarpRun.ACROSS);

    private final Cloth.WarpRun warp;

    ClothSide(Cloth.WarpRun warp) {
        this.warp = warp;
    }

    /** Which way the warp runs in a cloth whose selvedge is on this side: along it. */
    public Cloth.WarpRun warp() {
        return warp;
    }
}
