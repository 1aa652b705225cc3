package kitleaf.basket.thread;

import java.util.Locale;

/** The stitches a thread can be counted in. */
public enum StitchKind {
    /** Two crossed diagonals of one cell. */
    CROSS,
    /** One diagonal of a cell, worked in rows. */
    HALF,
    /** One diagonal with a long slant behind. */
    TENT,
    /** From a corner to the middle of a cell. */
    QUARTER,
    /** A half stitch and a quarter stitch. */
    THREE_QUARTER,
    /** Straight stitches worked back over themselves, one a cell edge. */
    BACK,
    /** Running stitches there and back, one a cell edge. */
    DOUBLE_RUNNING,
    /** Straight stitches side by side. */
    SATIN,
    /** A wrapped knot. */
    KNOT,
    /** A cross whose first arm goes over two cells. */
    LONG_ARMED,
    /** A cross over four cloth threads with each arm tied down. */
    RICE,
    /** Eight arms into the middle of a square over four cloth threads. */
    EYELET,
    /** The sides of a square over four cloth threads, one shared with the next. */
    FOUR_SIDED,
    /** Five satin stitches over four cloth threads. */
    SATIN_BLOCK,
    /** A group of four cloth threads drawn together along a hem. */
    HEM,
    /** Four upright stitches over four cloth threads, each tied by itself. */
    QUEEN,
    /** Anything else, with the thread each one takes. */
    OTHER;

    /** As it is written: {@code three-quarter}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
