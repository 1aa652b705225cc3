package kitleaf.sizing.cutting;

/**
 * A rectangle of cloth that comes apart into its pieces by cuts from edge to edge: one piece, or two blocks parted by
 * one cut. What is cut away is no part of it: pieces are reckoned with the kerf already added to both of their sides.
 */
public sealed interface Block {

    /** Its width in millimetres. */
    double widthMm();

    /** Its height in millimetres. */
    double heightMm();

    /** Counts its pieces, each by its index. */
    default void count(int[] numbers) {
        if (this instanceof Single single) {
            numbers[single.index()]++;
        } else if (this instanceof Beside pair) {
            pair.left().count(numbers);
            pair.right().count(numbers);
        } else if (this instanceof Below pair) {
            pair.top().count(numbers);
            pair.bottom().count(numbers);
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
     */
    record Beside(Block left, Block right) implements Block {
        @Override
        public double widthMm() {
            return left.widthMm() + right.widthMm();
        }

        @Override
        public double heightMm() {
            return Math.max(left.heightMm(), right.heightMm());
        }
    }

    /**
     * Two blocks one below the other, parted by a cut across their whole width.
     *
     * @param top the upper one
     * @param bottom the lower one
     */
    record Below(Block top, Block bottom) implements Block {
        @Override
        public double widthMm() {
            return Math.max(top.widthMm(), bottom.widthMm());
        }

        @Override
        public double heightMm() {
            return top.heightMm() + bottom.heightMm();
        }
    }
}
