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
            } else if (block instanceof Beside pair) {
                open.push(pair.right());
                open.push(pair.left());
            } else if (block instanceof Below pair) {
                open.push(pair.bottom());
                open.push(pair.top());
            }
        }
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
     * Two blocks side by side, parted by a cut down their whole height.
     *
     * @param left the first, at the left
     * @param right the second
     * @param widthMm of both together
     * @param heightMm of the higher one
     */
    record Beside(Block left, Block right, double widthMm, double heightMm) implements Block {

        /** Two blocks, measured. */
        Beside(Block left, Block right) {
            this(left, right, left.widthMm() + right.widthMm(), Math.max(left.heightMm(), right.heightMm()));
        }
    }

    /**
     * Two blocks one below the other, parted by a cut across their whole width.
     *
     * @param top the upper one
     * @param bottom the lower one
     * @param widthMm of the wider one
     * @param heightMm of both together
     */
    record Below(Block top, Block bottom, double widthMm, double heightMm) implements Block {

        /** Two blocks, measured. */
        Below(Block top, Block bottom) {
            this(top, bottom, Math.max(top.widthMm(), bottom.widthMm()), top.heightMm() + bottom.heightMm());
        }
    }
}
