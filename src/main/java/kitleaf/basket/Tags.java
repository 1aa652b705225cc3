package kitleaf.basket;

import java.util.Objects;

/**
 * How bag tags are made.
 *
 * @param size how large one is
 * @param sides how front and back come together
 * @param backLiesRightMm how far the printer puts a back too far right, seen from the front against the light; below 0
 *        for left; within {@value #MOST_SHIFT_MM} mm either way
 * @param backLiesBelowMm how far it puts it too far down; below 0 for up
 */
public record Tags(Size size, Sides sides, double backLiesRightMm, double backLiesBelowMm) {

    /** A printer further out than this does not grip its paper. */
    public static final double MOST_SHIFT_MM = 10;

    /** The least a tag may measure across. */
    public static final double LEAST_WIDTH_MM = 60;

    /** The least a tag may measure down: room for the hole, the piece and a few threads. */
    public static final double LEAST_HEIGHT_MM = 55;

    /** A quarter of the sheet, folded over. */
    public static final Tags USUAL = new Tags(Share.QUARTER, Sides.FOLDED, 0, 0);

    /** How front and back come together. */
    public enum Sides {
        /** Printed on one side of the sheet, back above front, and folded over at the top. */
        FOLDED,
        /** Printed on both sides of the sheet, which turns over its long edge. */
        LONG_EDGE,
        /** Printed on both sides of the sheet, which turns over its short edge. */
        SHORT_EDGE
    }

    /** How large a tag is. */
    public sealed interface Size permits Share, Own { }

    /** A share of the sheet's printable part, so that nothing is wasted; folded tags take it up unfolded. */
    public enum Share implements Size {
        /** Two by two. */
        QUARTER(2, 2),
        /** Two by three. */
        SIXTH(2, 3),
        /** Two by four. */
        EIGHTH(2, 4);

        private final int columns;
        private final int rows;

        Share(int columns, int rows) {
            this.columns = columns;
            this.rows = rows;
        }

        /** Tags side by side on an upright sheet. */
        public int columns() {
            return columns;
        }

        /** Tags one below the other on an upright sheet. */
        public int rows() {
            return rows;
        }
    }

    /**
     * A size of her own, that of the finished tag.
     *
     * @param widthMm {@value Tags#LEAST_WIDTH_MM} or more
     * @param heightMm {@value Tags#LEAST_HEIGHT_MM} or more
     */
    public record Own(double widthMm, double heightMm) implements Size {
        /** Refuses tags too small to carry what they must. */
        public Own {
            if (!(widthMm >= LEAST_WIDTH_MM && heightMm >= LEAST_HEIGHT_MM)) {
                throw new IllegalArgumentException("tag too small: " + widthMm + " x " + heightMm);
            }
        }
    }

    /** What is left blank at the top and both sides of the sheet. */
    public static final double MARGIN_MM = 10;

    /** What is left below for the check bars and the signature. */
    public static final double FOOT_MM = 24;

    /** Whether at least one such tag has room on a sheet; a share of the sheet always has. */
    public boolean fit(Paper paper) {
        return !(size instanceof Own own) || (own.widthMm() <= paper.widthMm() - 2 * MARGIN_MM
                && own.heightMm() * (sides == Sides.FOLDED ? 2 : 1) <= paper.heightMm() - MARGIN_MM - FOOT_MM);
    }

    /** Refuses shifts no printer makes. */
    public Tags {
        Objects.requireNonNull(size);
        Objects.requireNonNull(sides);
        if (!(Math.abs(backLiesRightMm) <= MOST_SHIFT_MM && Math.abs(backLiesBelowMm) <= MOST_SHIFT_MM)) {
            throw new IllegalArgumentException("no such shift: " + backLiesRightMm + ", " + backLiesBelowMm);
        }
    }
}
