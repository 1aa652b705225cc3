package kitleaf.sizing.thread;

/** Where a number of skeins lies between whole ones: whether a little more or less would change how many are bought. */
public enum Edge {
    /** More than a tenth of a skein from any whole number, or too little to fill a first skein. */
    CLEAR,
    /** At a whole number or up to a tenth of a skein below it: what is bought is only just enough. */
    JUST_ENOUGH,
    /** Up to a tenth of a skein above a whole number of one or more: the last skein is bought for very little. */
    JUST_OVER;

    /** How near a whole skein is a knife's edge: a tenth of a skein. */
    static final double NEAR = 0.1;

    /**
     * How far above a whole number of skeins a figure may lie and still count as that number: a billionth of a skein. It
     * only forgives the last bits of double arithmetic.
     */
    static final double SLACK = 1e-9;

    /** Where this many skeins lie, 0 or more. */
    static Edge of(double skeins) {
        long bought = roundUp(skeins);
        if (bought - skeins <= NEAR + SLACK && bought > 0) {
            return JUST_ENOUGH;
        }
        return bought > 1 && skeins - (bought - 1) <= NEAR + SLACK ? JUST_OVER : CLEAR;
    }

    /** Whole skeins that hold so much, 0 or more. */
    static long roundUp(double skeins) {
        return Math.max(0, (long) Math.ceil(skeins - SLACK));
    }
}
