package kitleaf.basket;

/**
 * What a piece becomes, and the cloth usually left around its design for that. The widths are common
 * practice, no source: stretching over board wants a hand's grip all round, a bell pull wants more at
 * the ends than at the sides, small things need a seam and a little more.
 */
public enum Finish {
    /** Stretched over board or bars behind glass. */
    FRAMED(Margins.all(3 * 25.4), 4),
    /** Left in a hoop and hung. */
    HOOPED(Margins.all(3 * 25.4), 1.5),
    /** A cushion or full-size pillow. */
    PILLOW(Margins.all(2 * 25.4), 4),
    /** A pin pillow or other palm-sized stuffed thing. */
    PIN_PILLOW(Margins.all(1.5 * 25.4), 2),
    /** A hanging ornament. */
    ORNAMENT(Margins.all(1.5 * 25.4), 2),
    /** A needle book or needle case. */
    NEEDLE_CASE(Margins.all(1.5 * 25.4), 3),
    /** A small rolled case for needles. */
    NEEDLE_ROLL(Margins.of(1.5 * 25.4, 2 * 25.4), 3),
    /** A narrow hanging with a rod or rings at its ends. */
    BELL_PULL(Margins.of(3 * 25.4, 1.5 * 25.4), 4),
    /** A marker for a book. */
    BOOKMARK(Margins.all(1 * 25.4), 1.5),
    /** Set into the lid of a box. */
    BOX_TOP(Margins.all(2 * 25.4), 2),
    /** Made up as a bag or pouch. */
    BAG(Margins.all(2 * 25.4), 4);

    private final Margins usualMargins;

    private final double usualHours;

    Finish(Margins usualMargins, double usualHours) {
        this.usualMargins = usualMargins;
        this.usualHours = usualHours;
    }

    /** The cloth usually left around the design (common practice, no source). */
    public Margins usualMargins() {
        return usualMargins;
    }

    /** What making it up usually takes, in hours, once it is stitched (common practice, no source: an evening or two by hand). */
    public double usualHours() {
        return usualHours;
    }
}
