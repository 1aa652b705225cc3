package kitleaf.basket;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

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

    /** A quarter of the sheet or more, folded over. */
    public static final Tags USUAL = new Tags(Usual.QUARTER_OR_MORE, Sides.FOLDED, 0, 0);

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
    public sealed interface Size permits Usual, Share, Own { }

    /** Where she says nothing. */
    public enum Usual implements Size {
        /** A quarter of the sheet, or as much more of it as a tag needs. */
        QUARTER_OR_MORE
    }

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

        /** What she writes for it. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** Tags side by side: along the sheet's shorter side the fewer, or as many as make tags that are not too small. */
        private IntStream ways(boolean upright) {
            return IntStream.of(upright ? columns : rows, upright ? rows : columns, columns * rows, 1);
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

    /** Forgives the last bits of dividing a sheet. */
    private static final double SLACK_MM = 1e-6;

    /**
     * How tags share a sheet.
     *
     * @param columns tags side by side, 1 or more
     * @param rows tags one below the other, 1 or more
     * @param cellWidthMm of a tag as it lies on the sheet
     * @param cellHeightMm of a tag as it lies on the sheet, unfolded if it is folded
     */
    public record Grid(int columns, int rows, double cellWidthMm, double cellHeightMm) { }

    /**
     * What tags have to have, and what is kept free.
     *
     * @param widthMm what a share measures across at least
     * @param heightMm likewise down, each face of a folded tag
     * @param footMm what is left blank below all tags
     */
    public record Room(double widthMm, double heightMm, double footMm) {
        /** In the usual print. */
        public static final Room USUAL = new Room(LEAST_WIDTH_MM, LEAST_HEIGHT_MM, FOOT_MM);
    }

    /** How these tags share a sheet, as below. */
    public Optional<Grid> on(Paper paper, Room room) {
        return on(paper, room.widthMm(), room.heightMm(), room.footMm());
    }

    /** Whether these tags have room on a sheet of some paper in the usual print, none of them too small. */
    public boolean fit(Paper paper) {
        return on(paper, Room.USUAL).isPresent();
    }

    /**
     * How these tags share a sheet; nothing where none of her own size has room, or where a share of the sheet she asks for is too small.
     *
     * @param leastWidthMm what a share measures across at least
     * @param leastHeightMm likewise down, each face of a folded tag
     * @param footMm what is left blank below
     */
    public Optional<Grid> on(Paper paper, double leastWidthMm, double leastHeightMm, double footMm) {
        int faces = sides == Sides.FOLDED ? 2 : 1;
        double acrossMm = paper.widthMm() - 2 * MARGIN_MM;
        double downMm = paper.heightMm() - MARGIN_MM - footMm;
        Own own = size instanceof Own hers ? hers : new Own(leastWidthMm, leastHeightMm);
        int columns = (int) Math.floor((acrossMm + SLACK_MM) / own.widthMm());
        int rows = (int) Math.floor((downMm + SLACK_MM) / (own.heightMm() * faces));
        if (size == own) {
            return Optional.of(new Grid(columns, rows, own.widthMm(), own.heightMm() * faces)).filter(it -> columns >= 1 && rows >= 1);
        }
        Share share = size instanceof Share hers ? hers : Share.QUARTER;
        int number = share.columns * share.rows;
        int more = size == share ? 0 : Math.max(1, Math.min(share.columns, columns));
        return share.ways(paper.heightMm() >= paper.widthMm()).filter(wide -> wide <= columns && number / wide <= rows)
                .mapToObj(wide -> new Grid(wide, number / wide, acrossMm / wide, downMm * wide / number)).findFirst()
                .or(() -> Optional.of(Math.max(1, Math.min(share.rows, rows))).filter(high -> more > 0)
                        .map(high -> new Grid(more, high, acrossMm / more, downMm / high)));
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
