package kitleaf.sizing.plan;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/**
 * A rectangle of cloth that comes apart into its pieces by cuts from edge to edge: one piece, or two blocks parted by
 * one cut. What is cut away is no part of it: pieces are reckoned with the kerf already added to both of their sides.
 */
sealed interface Block {

    /** Its width in millimetres. */
    double widthMm();

    /** Its height in millimetres. */
    double heightMm();

    /** Counts its pieces, each by its index. */
    default void count(int[] numbers) {
        // A row of a thousand pieces is a thousand blocks deep: the stack of calls has an end, a list has none.
        Deque<Block> open = new ArrayDeque<>(List.of(this));
        while (!open.isEmpty()) {
            Block block = open.pop();
            if (block instanceof Single single) {
                numbers[single.index()]++;
            } else if (block instanceof Pair pair) {
                open.push(pair.other());
                open.push(pair.one());
            }
        }
    }

    /** The side of it that a cut parts. */
    default double along(EdgeCut.Run run) {
        return run.side(widthMm(), heightMm());
    }

    /**
     * One piece.
     *
     * @param index which of the pieces that were asked for
     * @param shape which of the ways it may lie
     * @param widthMm as it lies, above 0
     * @param heightMm as it lies, above 0
     */
    record Single(int index, int shape, double widthMm, double heightMm) implements Block {
    }

    /**
     * Two blocks parted by a cut down their whole height, side by side, or across their whole width, one below the other.
     *
     * @param run which way the cut runs
     * @param one the first, at the left or above
     * @param other the second
     * @param widthMm of both together, or of the wider one
     * @param heightMm of the higher one, or of both together
     */
    record Pair(EdgeCut.Run run, Block one, Block other, double widthMm, double heightMm) implements Block {

        /** Two blocks, measured. */
        static Pair of(EdgeCut.Run run, Block one, Block other) {
            return run == EdgeCut.Run.DOWN
                    ? new Pair(run, one, other, one.widthMm() + other.widthMm(), Math.max(one.heightMm(), other.heightMm()))
                    : new Pair(run, one, other, Math.max(one.widthMm(), other.widthMm()), one.heightMm() + other.heightMm());
        }
    }
}
