package kitleaf.sheet.goal;

import java.util.ArrayList;
import java.util.List;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Join;
import kitleaf.sheet.page.TypeScale;
import kitleaf.words.Words;

/**
 * How a large page is parted into tiles that a smaller printer can print. Each tile but the last of a row or column carries a blank lip
 * past its join line, to be slid under its neighbour.
 *
 * @param sheet the paper of the tiles
 * @param across the large page, from its left
 * @param down the large page, from its top
 * @param upright the joins across
 * @param level the joins down
 */
record WallTiles(Sheet sheet, WallAxis across, WallAxis down, WallAxis.Joins upright, WallAxis.Joins level) {

    private static final double LIP_MM = 8;
    /** What is drawn stands no nearer to the edge of the paper where no join is. */
    private static final double OUTER_MM = 10;

    /**
     * The paper of a tile, and what a tile leaves of it.
     *
     * @param widthMm of the paper
     * @param heightMm of the paper
     * @param sideMm at both sides
     * @param topMm above
     * @param footMm below
     */
    record Sheet(double widthMm, double heightMm, double sideMm, double topMm, double footMm) {

        /**
         * What there is to be on it, for words of a size beside the joins: small ones stand in the blank along them, larger ones need
         * their own.
         *
         * @param footMm what the foot of a page takes
         */
        static Sheet of(TypeScale type, double widthMm, double heightMm, double footMm) {
            boolean inBlank = TypeScale.mm(type.fine()) < Join.BLANK_MM;
            double sideMm = OUTER_MM + (inBlank ? 0 : 13);
            return new Sheet(widthMm, heightMm, sideMm, sideMm, footMm + (inBlank ? 0.7 : 9));
        }

        private WallAxis.Room across() {
            double roomMm = widthMm - 2 * sideMm;
            double outerMm = sideMm - OUTER_MM;
            return new WallAxis.Room(roomMm - LIP_MM + outerMm, roomMm - LIP_MM, roomMm + outerMm, roomMm + 2 * outerMm);
        }

        private WallAxis.Room down() {
            double roomMm = heightMm - topMm - footMm;
            double outerMm = topMm - OUTER_MM;
            return new WallAxis.Room(roomMm - LIP_MM + outerMm, roomMm - LIP_MM, roomMm, roomMm + outerMm);
        }
    }

    /** Whether a page of this size is printed whole on paper of that size. */
    static boolean whole(double widthMm, double heightMm, double paperWidthMm, double paperHeightMm) {
        return widthMm <= paperWidthMm + 1e-6 && heightMm <= paperHeightMm + 1e-6;
    }

    /**
     * The tiles that cost least: each its paper, each join what it does to what it runs through. There is at most one row and one column
     * more than the fewest.
     *
     * @param sheets papers to choose from, the ones before preferred
     */
    static WallTiles best(WallAxis across, WallAxis down, List<Sheet> sheets) {
        WallTiles best = null;
        for (Sheet sheet : sheets) {
            for (WallAxis.Joins upright : across.choices(sheet.across())) {
                for (WallAxis.Joins level : down.choices(sheet.down())) {
                    WallTiles tiles = new WallTiles(sheet, across, down, upright, level);
                    // Less than that is how even tiles are, which the paper's turn should not hang on.
                    if (best == null || tiles.cost() < best.cost() - 0.1) {
                        best = tiles;
                    }
                }
            }
        }
        return best;
    }

    private double cost() {
        return count() + upright.harm() * level.tiles() + level.harm() * upright.tiles();
    }

    /** How many there are. */
    int count() {
        return upright.tiles() * level.tiles();
    }

    /** From the wall's left side to its first upright join; to the far side where there is none. */
    double firstJoinMm() {
        return upright.atMm().stream().findFirst().orElse(across.lengthMm());
    }

    /** From the wall's left side to its last upright join; 0 where there is none. */
    double lastJoinMm() {
        return upright.atMm().isEmpty() ? 0 : upright.atMm().get(upright.atMm().size() - 1);
    }

    /** The pages, row by row. */
    List<TiledPage> pages(Words words) {
        List<TiledPage> pages = new ArrayList<>();
        for (int row = 0; row < level.tiles(); row++) {
            for (int column = 0; column < upright.tiles(); column++) {
                Window x = window(column, upright, across, sheet.sideMm(), sheet.widthMm() - sheet.sideMm(), sheet.widthMm());
                Window y = window(row, level, down, sheet.topMm(), sheet.heightMm() - sheet.footMm(), sheet.heightMm() - sheet.footMm());
                pages.add(new TiledPage(sheet.widthMm(), sheet.heightMm(), new Box(x.atMm(), y.atMm(), x.lengthMm(), y.lengthMm()),
                        x.fromMm(), y.fromMm(),
                        column, row, upright.tiles(), level.tiles(), Join.of(column, row, upright.tiles(), level.tiles(), words)));
            }
        }
        return pages;
    }

    /** What a tile shows in one direction: where on its paper, how much, and from where on the wall. */
    private record Window(double atMm, double lengthMm, double fromMm) { }

    /**
     * A tile's window. What of the wall's blank edge has no room on the first tile and the last is left off.
     *
     * @param nearMm where joins stand at the left or the top
     * @param farMm up to where a tile that has no join there may reach, with its lip if it has one
     * @param endMm where the paper ends, or its foot begins
     */
    private static Window window(int tile, WallAxis.Joins joins, WallAxis wall, double nearMm, double farMm, double endMm) {
        boolean first = tile == 0;
        boolean last = tile == joins.tiles() - 1;
        double fromMm = first ? 0 : joins.atMm().get(tile - 1);
        double toMm = last ? wall.lengthMm() : joins.atMm().get(tile);
        double atMm = nearMm;
        if (first) {
            double roomMm = farMm - (last ? 0 : LIP_MM);
            double blankMm = last ? wall.lengthMm() - wall.toMm() : 0;
            atMm = Math.min(nearMm, Math.max(OUTER_MM - wall.fromMm(), roomMm - (toMm - fromMm) + blankMm));
        }
        double shownMm = Math.max(0, atMm);
        return new Window(shownMm, Math.min(endMm, atMm + toMm - fromMm) - shownMm, fromMm + shownMm - atMm);
    }
}
