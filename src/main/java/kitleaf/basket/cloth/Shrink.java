package kitleaf.basket.cloth;

/**
 * The part of its length a cloth loses after it is cut and before it is stitched. In the words of
 * ISO 5077 it is the dimensional change with the sign turned: a change of -3 % is a shrink of 0.03.
 *
 * @param warp loss of length along the warp threads, a fraction from 0 to {@value #MOST}
 * @param weft loss of length along the weft threads, a fraction from 0 to {@value #MOST}
 */
public record Shrink(double warp, double weft) {

    /** The greatest shrink taken; cloth that loses more than this is felted, not washed. */
    public static final double MOST = 0.3;

    /** Cloth that keeps its size. */
    public static final Shrink NONE = new Shrink(0, 0);

    /** Refuses fractions outside 0 to {@value #MOST}. */
    public Shrink {
        if (!(warp >= 0 && warp <= MOST && weft >= 0 && weft <= MOST)) {
            throw new IllegalArgumentException("shrink must be 0 to " + MOST + ": " + warp + ", " + weft);
        }
    }
}
