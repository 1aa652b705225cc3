package kitleaf.sheet.goal;

import java.util.ArrayList;
import java.util.List;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Join;
import kitleaf.words.Words;

/**
 * How the cards of a wall are shared out among sheets of paper. Every sheet has whole cards; they are joined in the middle of the strips
 * between these. A wall that fits one sheet is its only tile.
 *
 * @param sheet the paper and what is kept free on it
 * @param grid the cards of the wall; as small as a sheet asks for
 * @param headMm what stands above all cards takes, on the first row of sheets
 * @param gapMm between cards
 * @param across so many cards a sheet, side by side
 * @param down one below the other; the first row of sheets has what is left over
 */
record WallTiles(Sheet sheet, GoalGrid grid, double headMm, double gapMm, int across, int down) {

    /** Cards smaller than this part of what the wall has room for are worth another sheet. */
    private static final double NEARLY = 0.8;
    /** What larger cards are worth, in sheets: more than a wall has. */
    private static final double LARGER = 10_000;
    private static final double SLACK_MM = 1e-6;

    /** A sheet of paper, and what is kept free at its sides, above and below. */
    record Sheet(double widthMm, double heightMm, double sideMm, double topMm, double bottomMm) { }

    /** As few sheets as can be, on which the cards are nearly as large as on the wall; else the largest cards. */
    static WallTiles best(GoalGrid grid, CardRoom room, double headMm, double gapMm, List<Sheet> sheets) {
        WallTiles best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Sheet sheet : sheets) {
            for (int across = 1; across <= grid.columns(); across++) {
                for (int down = 1; down <= grid.rows(); down++) {
                    WallTiles tiles = new WallTiles(sheet, grid, headMm, gapMm, across, down).fitted(room);
                    double part = Math.min(tiles.grid.widthMm() / grid.widthMm(), tiles.grid.heightMm() / grid.heightMm());
                    double cost = tiles.columns() * tiles.rows() - part + (part < NEARLY ? (1 - part) * LARGER : 0)
                            + (tiles.grid.scale() > 0 ? 0 : LARGER * LARGER);
                    if (cost < least) {
                        best = tiles;
                        least = cost;
                    }
                }
            }
        }
        return best;
    }

    /** With cards as large as on the wall, or as its sheets have room for. */
    private WallTiles fitted(CardRoom room) {
        double highMm = sheet.heightMm - sheet.topMm - sheet.bottomMm;
        double widthMm = Math.min(grid.widthMm(), (sheet.widthMm - 2 * sheet.sideMm) / across - gapMm);
        double heightMm = Math.min(grid.heightMm(), Math.min(highMm / down, (highMm - headMm) / first()) - gapMm);
        boolean same = widthMm > grid.widthMm() - SLACK_MM && heightMm > grid.heightMm() - SLACK_MM;
        return same ? this : new WallTiles(sheet, new GoalGrid(grid.wall(), grid.columns(), grid.rows(), widthMm, heightMm,
                room.scale(widthMm, heightMm)), headMm, gapMm, across, down);
    }

    private int columns() {
        return (grid.columns() + across - 1) / across;
    }

    private int rows() {
        return (grid.rows() + down - 1) / down;
    }

    /** So many rows of cards are on the first row of sheets. */
    private int first() {
        return grid.rows() - down * (rows() - 1);
    }

    private int firstRow(int row) {
        return row == 0 ? 0 : first() + (row - 1) * down;
    }

    /** Whether a sheet has any of so many cards. */
    private boolean has(int column, int row, int cards) {
        return column < columns() && row < rows() && firstRow(row) * grid.columns() + column * across < cards;
    }

    /** The sheets of a wall with these cards, row by row, without blank ones. */
    List<GoalPage> pages(List<GoalEntry> entries, CardRoom room, GoalPage.Head head, Words words) {
        List<GoalPage> pages = new ArrayList<>();
        int all = 0;
        for (int tile = 0; tile < columns() * rows(); tile++) {
            all += has(tile % columns(), tile / columns(), entries.size()) ? 1 : 0;
        }
        for (int row = 0; row < rows(); row++) {
            for (int column = 0; has(column, row, entries.size()); column++) {
                String part = all == 1 ? "" : words.say("goal.tile", pages.size() + 1, all, row + 1, column + 1);
                pages.add(page(column, row, entries, room, head, part, words));
            }
        }
        return pages;
    }

    private GoalPage page(int column, int row, List<GoalEntry> entries, CardRoom room, GoalPage.Head head, String part, Words words) {
        double pitchMm = grid.widthMm() + gapMm;
        double stepMm = grid.heightMm() + gapMm;
        double fromMm = sheet.topMm + (row == 0 ? headMm : 0);
        int cardsAcross = Math.min(across, grid.columns() - column * across);
        int cardsDown = row == 0 ? first() : down;
        double scale = Math.max(1, grid.scale());
        List<GoalCard> cards = new ArrayList<>();
        for (int y = 0; y < cardsDown; y++) {
            for (int x = 0; x < cardsAcross; x++) {
                int index = (firstRow(row) + y) * grid.columns() + column * across + x;
                if (index < entries.size()) {
                    cards.add(room.card(entries.get(index), new Box(sheet.sideMm + gapMm / 2 + x * pitchMm, fromMm + gapMm / 2 + y * stepMm,
                            grid.widthMm(), grid.heightMm()), grid.scale()));
                }
            }
        }
        Box window = new Box(sheet.sideMm, sheet.topMm, cardsAcross * pitchMm, fromMm - sheet.topMm + cardsDown * stepMm);
        Box above = new Box(window.xMm() + gapMm / 2, window.yMm(), window.widthMm() - gapMm, row == 0 ? headMm : 0);
        boolean last = !has(column + 1, 0, entries.size());
        List<Join> joins = Join.of(column, row, columns(), rows(), words).stream().filter(join -> switch (join.side()) {
            case "right" -> has(column + 1, row, entries.size());
            case "bottom" -> has(column, row + 1, entries.size());
            default -> true;
        }).toList();
        GoalPage.Head said = new GoalPage.Head(above, column == 0 ? head.title() : "", last ? head.year() : "", head.scale(), head.type());
        return new GoalPage(sheet.widthMm, sheet.heightMm, window, said, scale, room.type().before(scale), cards, joins, part);
    }
}
