package kitleaf.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import kitleaf.words.Words;

/**
 * Parts a large page into tiles that a smaller printer can print. Each tile but the last of a row or column carries a blank lip past
 * its join line, to be slid under its neighbour.
 */
final class WallTiles {

    /**
     * What a tile leaves of its page.
     *
     * @param sideMm at both sides
     * @param topMm above
     * @param footMm below
     */
    record Around(double sideMm, double topMm, double footMm) {

        /** Of ordinary sheets. */
        static final Around ORDINARY = new Around(10, 10, 24);

        /** Of large print, whose words beside the joins want more room. */
        static Around large(double footMm) {
            return new Around(23, 22, footMm + 9);
        }
    }

    private static final double LIP_MM = 8;

    private WallTiles() { }

    /** One direction: where each tile starts and how much it shows. */
    private record Span(double startMm, double lengthMm) { }

    /** Whether a page of this size is printed whole on paper of that size. */
    static boolean whole(double widthMm, double heightMm, double paperWidthMm, double paperHeightMm) {
        return widthMm <= paperWidthMm + 1e-6 && heightMm <= paperHeightMm + 1e-6;
    }

    /** How many tiles a page takes on that paper. */
    static int count(double widthMm, double heightMm, double paperWidthMm, double paperHeightMm, Around around) {
        return spans(widthMm, paperWidthMm - 2 * around.sideMm()).size() * spans(heightMm, paperHeightMm - around.topMm() - around.footMm()).size();
    }

    /** The tiles of a page, row by row; frames are asked for by number, from 0. */
    static List<TiledPage> of(double widthMm, double heightMm, double paperWidthMm, double paperHeightMm, Words words, TypeScale type,
                              Around around, IntFunction<PageFrame> frames) {
        List<Span> across = spans(widthMm, paperWidthMm - 2 * around.sideMm());
        List<Span> down = spans(heightMm, paperHeightMm - around.topMm() - around.footMm());
        List<TiledPage> tiles = new ArrayList<>();
        for (int row = 0; row < down.size(); row++) {
            for (int column = 0; column < across.size(); column++) {
                Span x = across.get(column);
                Span y = down.get(row);
                tiles.add(new TiledPage(frames.apply(tiles.size()), new Box(around.sideMm(), around.topMm(), x.lengthMm(), y.lengthMm()), x.startMm(), y.startMm(),
                        column, row, across.size(), down.size(), Joins.of(column, row, across.size(), down.size(), words, type)));
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
}
