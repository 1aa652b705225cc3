package kitleaf.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;

/**
 * Parts a large page into tiles that a smaller printer can print. Each tile but the last of a row or column carries a blank lip past
 * its join line, to be slid under its neighbour.
 */
final class WallTiles {

    private static final double SIDE_MM = 10;
    private static final double TOP_MM = 10;
    private static final double FOOT_MM = 24;
    private static final double LIP_MM = 8;

    private WallTiles() { }

    /** One direction: where each tile starts and how much it shows. */
    private record Span(double startMm, double lengthMm) { }

    /** Whether a page of this size is printed whole on paper of that size. */
    static boolean whole(double widthMm, double heightMm, double paperWidthMm, double paperHeightMm) {
        return widthMm <= paperWidthMm + 1e-6 && heightMm <= paperHeightMm + 1e-6;
    }

    /** How many tiles a page takes on that paper. */
    static int count(double widthMm, double heightMm, double paperWidthMm, double paperHeightMm) {
        return spans(widthMm, paperWidthMm - 2 * SIDE_MM).size() * spans(heightMm, paperHeightMm - TOP_MM - FOOT_MM).size();
    }

    /** The tiles of a page, row by row; frames are asked for by number, from 0. */
    static List<TiledPage> of(double widthMm, double heightMm, double paperWidthMm, double paperHeightMm, Words words,
                              IntFunction<PageFrame> frames) {
        List<Span> across = spans(widthMm, paperWidthMm - 2 * SIDE_MM);
        List<Span> down = spans(heightMm, paperHeightMm - TOP_MM - FOOT_MM);
        List<TiledPage> tiles = new ArrayList<>();
        for (int row = 0; row < down.size(); row++) {
            for (int column = 0; column < across.size(); column++) {
                Span x = across.get(column);
                Span y = down.get(row);
                tiles.add(new TiledPage(frames.apply(tiles.size()), new Box(SIDE_MM, TOP_MM, x.lengthMm(), y.lengthMm()), x.startMm(), y.startMm(),
                        column, row, across.size(), down.size(), joins(column, row, across.size(), down.size(), words)));
            }
        }
        return tiles;
    }

    private static List<Span> spans(double lengthMm, double roomMm) {
        if (lengthMm <= roomMm) {
            return List.of(new Span(0, lengthMm));
        }
        // All tiles alike, so that none is a sliver.
        int number = (int) Math.ceil((lengthMm - roomMm) / (roomMm - LIP_MM) - 1e-9) + 1;
        double eachMm = lengthMm / number;
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            spans.add(new Span(lengthMm * i / number, eachMm));
        }
        return spans;
    }

    private static List<GuidePage.Join> joins(int column, int row, int columns, int rows, Words words) {
        List<GuidePage.Join> joins = new ArrayList<>();
        if (column > 0) {
            joins.add(join("left", row * (columns - 1) + column - 1, "guide.onto", words));
        }
        if (row > 0) {
            joins.add(join("top", rows * (columns - 1) + (row - 1) * columns + column, "guide.onto", words));
        }
        if (column < columns - 1) {
            joins.add(join("right", row * (columns - 1) + column, "guide.lip", words));
        }
        if (row < rows - 1) {
            joins.add(join("bottom", rows * (columns - 1) + row * columns + column, "guide.lip", words));
        }
        return joins;
    }

    private static GuidePage.Join join(String side, int number, String note, Words words) {
        String letter = number < 26 ? String.valueOf((char) ('A' + number)) : String.format(Locale.ROOT, "%d", number + 1);
        return new GuidePage.Join(side, letter, words.say(note, letter));
    }
}
