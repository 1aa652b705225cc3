package kitleaf.sheet.goal;

import java.util.ArrayList;
import java.util.List;
import kitleaf.sheet.page.Box;

/** Places goal cards in a grid, their outlines to one common scale. */
final class GoalCards {

    static final double GAP_MM = 4;
    private static final double PAD_MM = 5;
    private static final double OUTLINE_TOP_MM = 11.5;
    /** On a narrow card the line of count and size needs the whole width, and the outline stands below it. */
    private static final double NARROW_OUTLINE_TOP_MM = 16;
    private static final double OUTLINE_SHARE = 0.3;
    private static final double BAND_MM = 5.4;
    private static final double BAND_BOTTOM_MM = 6;
    private static final double DATE_MM = 5.4;
    private static final double DATE_GAP_MM = 3;
    private static final double DATE_WIDTH_MM = 26;
    /** From this width on the box for the day stands beside the likely days, else below them. */
    static final double WIDE_MM = 74;
    /** No outline is drawn smaller than this, or it would not be seen. */
    private static final double LEAST_OUTLINE_MM = 1.2;

    private GoalCards() { }

    /**
     * The cards in an area, row by row; cards past the last place are left out, so give as many places as entries.
     *
     * @param area of the whole grid, before scaling
     */
    static List<GoalCard> place(List<GoalEntry> entries, int columns, int rows, Box area) {
        double widthMm = (area.widthMm() - (columns - 1) * GAP_MM) / columns;
        double heightMm = (area.heightMm() - (rows - 1) * GAP_MM) / rows;
        double scale = scale(entries, widthMm, heightMm);
        List<GoalCard> cards = new ArrayList<>();
        for (int i = 0; i < Math.min(entries.size(), columns * rows); i++) {
            Box box = new Box(area.xMm() + i % columns * (widthMm + GAP_MM), area.yMm() + i / columns * (heightMm + GAP_MM), widthMm, heightMm);
            cards.add(card(entries.get(i), box, scale));
        }
        return cards;
    }

    /** Where on a card its template writes, from the card's left to its right side: what no join should run through. */
    static List<Box> words(GoalCard card) {
        List<Box> words = new ArrayList<>();
        words.add(lines(card, card.box().yMm() + 4, 24.4));
        if (!card.likely().isEmpty()) {
            words.add(lines(card, card.box().yMm() + 29, 3.4));
        }
        if (!card.late().isEmpty()) {
            // Two lines where a narrow card's outline stands beside them.
            words.add(lines(card, card.box().yMm() + 33, card.box().widthMm() >= WIDE_MM ? 3.2 : 6));
        }
        words.add(lines(card, card.box().bottomMm() - 4.7, 2.8));
        return words;
    }

    private static Box lines(GoalCard card, double yMm, double heightMm) {
        return new Box(card.box().xMm(), yMm, card.box().widthMm(), heightMm);
    }

    /** The largest scale at which every piece's outline has room on its card. */
    private static double scale(List<GoalEntry> entries, double cardWidthMm, double cardHeightMm) {
        double roomAcrossMm = cardWidthMm * OUTLINE_SHARE;
        double roomDownMm = outlineRoom(cardWidthMm, cardHeightMm);
        return entries.stream().mapToDouble(entry -> Math.min(roomAcrossMm / entry.widthMm(), roomDownMm / entry.heightMm())).min().orElse(1);
    }

    private static double outlineRoom(double cardWidthMm, double cardHeightMm) {
        // A wide card has the box for the day below the outline, a narrow one also the likely days.
        double below = BAND_BOTTOM_MM + BAND_MM + DATE_GAP_MM + DATE_MM + (cardWidthMm >= WIDE_MM ? 1.5 : 3);
        return Math.max(6, Math.min(cardHeightMm - outlineTopMm(cardWidthMm) - below, cardHeightMm * 0.45));
    }

    private static double outlineTopMm(double cardWidthMm) {
        return cardWidthMm >= WIDE_MM ? OUTLINE_TOP_MM : NARROW_OUTLINE_TOP_MM;
    }

    private static GoalCard card(GoalEntry entry, Box box, double scale) {
        double widthMm = Math.max(LEAST_OUTLINE_MM, entry.widthMm() * scale);
        double heightMm = Math.max(LEAST_OUTLINE_MM, entry.heightMm() * scale);
        Box outline = new Box(box.rightMm() - PAD_MM - widthMm, box.yMm() + outlineTopMm(box.widthMm()), widthMm, heightMm);
        Box bandBox = new Box(box.xMm() + PAD_MM, box.bottomMm() - BAND_BOTTOM_MM - BAND_MM, box.widthMm() - 2 * PAD_MM, BAND_MM);
        ProgressBand band = ProgressBand.of(bandBox, entry.done());
        boolean beside = box.widthMm() >= WIDE_MM;
        double dateYMm = bandBox.yMm() - DATE_MM - DATE_GAP_MM;
        Box date = beside ? new Box(box.rightMm() - PAD_MM - DATE_WIDTH_MM, dateYMm, DATE_WIDTH_MM, DATE_MM)
                : new Box(bandBox.xMm(), dateYMm, bandBox.widthMm(), DATE_MM);
        return new GoalCard(box, entry.title(), entry.cloth(), outline, entry.number(), entry.note(), entry.likely(), entry.late(),
                entry.percent(), entry.done(), entry.finished(), entry.unbegun(), band.cells(), band.hatch(), date, List.of());
    }
}
