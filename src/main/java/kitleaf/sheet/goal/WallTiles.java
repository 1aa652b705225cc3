package kitleaf.sheet.goal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.Join;
import kitleaf.sheet.page.PageFrame;
import kitleaf.sheet.page.TypeScale;
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

    /**
     * Where a join cuts through nothing.
     *
     * @param acrossMm from the page's left edge
     * @param downMm from its top
     * @param blankMm from its top, where a card is cut through, but where it is blank: the next best
     * @param sideMm from its sides to the cards, where it is blank
     */
    record Free(List<Double> acrossMm, List<Double> downMm, List<Double> blankMm, double sideMm) {

        /** Above this a card has its words, below its box for the day. */
        private static final double WORDS_MM = 34;

        /** The middles of the gaps between cards, which are drawn to a scale. */
        static Free between(List<GoalCard> cards, double scale) {
            return new Free(gaps(cards.stream().map(card -> new Span(card.box().xMm(), card.box().widthMm())).toList(), scale),
                    gaps(cards.stream().map(card -> new Span(card.box().yMm(), card.box().heightMm())).toList(), scale),
                    cards.stream().filter(card -> card.words().isEmpty() && card.dateBox().yMm() - card.box().yMm() > WORDS_MM)
                            .map(card -> (card.box().yMm() + WORDS_MM + card.dateBox().yMm()) / 2 * scale).toList(),
                    cards.stream().mapToDouble(card -> card.box().xMm()).min().orElse(0) * scale);
        }

        private static List<Double> gaps(List<Span> cards, double scale) {
            List<Double> gaps = new ArrayList<>();
            double endMm = Double.POSITIVE_INFINITY;
            for (Span card : cards.stream().sorted(Comparator.comparingDouble(Span::startMm)).toList()) {
                if (card.startMm() > endMm) {
                    gaps.add((endMm + card.startMm()) / 2 * scale);
                }
                // Cards side by side are alike, so the last one to begin is the last to end.
                endMm = card.endMm();
            }
            return gaps;
        }
    }

    private static final double LIP_MM = 8;

    private WallTiles() { }

    /** One direction: where each tile starts and how much it shows. */
    private record Span(double startMm, double lengthMm) {

        double endMm() {
            return startMm + lengthMm;
        }
    }

    /** Whether a page of this size is printed whole on paper of that size. */
    static boolean whole(double widthMm, double heightMm, double paperWidthMm, double paperHeightMm) {
        return widthMm <= paperWidthMm + 1e-6 && heightMm <= paperHeightMm + 1e-6;
    }

    /** How many tiles a page takes on that paper. */
    static int count(double widthMm, double heightMm, double paperWidthMm, double paperHeightMm, Around around) {
        return number(widthMm, paperWidthMm - 2 * around.sideMm()) * number(heightMm, paperHeightMm - around.topMm() - around.footMm());
    }

    /** The tiles of a page, row by row; frames are asked for by number, from 0. */
    static List<TiledPage> of(double widthMm, double heightMm, double paperWidthMm, double paperHeightMm, Words words, TypeScale type,
                              Around around, Free free, IntFunction<PageFrame> frames) {
        double edgeMm = around.sideMm() + free.sideMm() - Around.ORDINARY.sideMm();
        List<Span> across = spans(widthMm, paperWidthMm - 2 * around.sideMm(), edgeMm, free.acrossMm(), List.of());
        List<Span> down = spans(heightMm, paperHeightMm - around.topMm() - around.footMm(), 0, free.downMm(), free.blankMm());
        List<TiledPage> tiles = new ArrayList<>();
        for (int row = 0; row < down.size(); row++) {
            for (int column = 0; column < across.size(); column++) {
                Span x = across.get(column);
                Span y = down.get(row);
                // What of the wall's blank sides has no room on the first tile and the last is left off.
                double xMm = column > 0 || across.size() == 1 ? around.sideMm() : Math.min(around.sideMm(), paperWidthMm - around.sideMm() - LIP_MM - x.lengthMm());
                double leftMm = Math.max(0, xMm);
                double rightMm = Math.min(paperWidthMm, xMm + x.lengthMm());
                tiles.add(new TiledPage(frames.apply(tiles.size()), new Box(leftMm, around.topMm(), rightMm - leftMm, y.lengthMm()),
                        x.startMm() + leftMm - xMm, y.startMm(), column, row, across.size(), down.size(),
                        Join.of(column, row, across.size(), down.size(), words, type)));
            }
        }
        return tiles;
    }

    private static int number(double lengthMm, double roomMm) {
        return lengthMm <= roomMm ? 1 : (int) Math.ceil((lengthMm - roomMm) / (roomMm - LIP_MM) - 1e-9) + 1;
    }

    /**
     * Tiles as alike as can be, so that none is a sliver, but joined where nothing is cut through if such a place is within reach. Where no
     * gap is, whole cards do not fit the fewest tiles, and one more in every row would be a high price: a card is cut through.
     *
     * @param edgeMm how much more the first tile and the last can take, since the wall is blank at its sides
     */
    private static List<Span> spans(double lengthMm, double roomMm, double edgeMm, List<Double> freeMm, List<Double> blankMm) {
        int number = number(lengthMm, roomMm);
        List<Span> spans = new ArrayList<>();
        double startMm = 0;
        for (int i = 1; i < number; i++) {
            double leastMm = lengthMm - roomMm - (number - i - 1) * (roomMm - LIP_MM);
            double mostMm = startMm + roomMm - LIP_MM;
            double alikeMm = lengthMm * i / number;
            double freeLeastMm = leastMm - edgeMm;
            double freeMostMm = mostMm + (i == 1 ? edgeMm : 0);
            double endMm = nearest(freeMm, alikeMm, freeLeastMm, freeMostMm).or(() -> nearest(blankMm, alikeMm, leastMm, mostMm)).orElse(Math.max(leastMm, Math.min(mostMm, alikeMm)));
            spans.add(new Span(startMm, endMm - startMm));
            startMm = endMm;
        }
        spans.add(new Span(startMm, lengthMm - startMm));
        return spans;
    }

    private static Optional<Double> nearest(List<Double> places, double wantedMm, double leastMm, double mostMm) {
        return places.stream().filter(at -> at >= leastMm && at <= mostMm).min(Comparator.comparingDouble(at -> Math.abs(at - wantedMm)));
    }
}
