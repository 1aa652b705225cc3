package kitleaf.basket.thread;

/**
 * What a thread was seen to eat: so many skeins for so many stitches.
 *
 * @param skeins more than 0
 * @param stitches more than 0
 */
public record Used(double skeins, int stitches) {

    /** Refuses nothing used and nothing stitched. */
    public Used {
        if (!(skeins > 0) || stitches < 1) {
            throw new IllegalArgumentException("used needs skeins and stitches above 0: " + skeins + ", " + stitches);
        }
    }
}
