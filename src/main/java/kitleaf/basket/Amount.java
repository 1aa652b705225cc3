package kitleaf.basket;

/** How much of a piece: a number of stitches, or a fraction of all of them. */
public sealed interface Amount {

    /** Whether it is nought. */
    default boolean nothing() {
        return this instanceof Stitches stitches ? stitches.number() == 0 : ((Share) this).fraction() == 0;
    }

    /**
     * A counted number of stitches.
     *
     * @param number 0 or more
     */
    record Stitches(long number) implements Amount {
        /** Refuses negative numbers. */
        public Stitches {
            if (number < 0) {
                throw new IllegalArgumentException("stitches must be 0 or more: " + number);
            }
        }
    }

    /**
     * A share of the whole.
     *
     * @param fraction 0 to 1
     */
    record Share(double fraction) implements Amount {
        /** Refuses fractions outside 0 to 1. */
        public Share {
            if (!(fraction >= 0 && fraction <= 1)) {
                throw new IllegalArgumentException("share must be 0 to 1: " + fraction);
            }
        }
    }
}
