package kitleaf.sheet.goal;

import java.util.ArrayList;
import java.util.List;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.TextRuler;
import kitleaf.sheet.page.TypeScale;
import kitleaf.words.Words;

/** Finds how many goal cards their words leave room for on a page, and to what scale their outlines are drawn, one for all pages. */
final class GoalCards {

    static final double GAP_MM = 4;
    /** Inside a card, at all sides. */
    static final double PAD_MM = 4;
    /** Between what stands on a card, one below the other, and side by side. */
    static final double APART_MM = 1.6;
    static final double BESIDE_MM = 3;
    private static final double BAND_MM = 5.6;
    private static final double OUTLINE_SHARE = 0.3;
    /** No outline is drawn smaller than this, or it would not be seen. */
    private static final double LEAST_OUTLINE_MM = 1.2;
    /** Band and hand want so much, whatever the size of type. */
    private static final double LEAST_WIDTH_MM = 55;
    /** In sizes of small type: the least width of a card and of one that is wide, and the least room for outlines. */
    private static final double LEAST_WIDTH = 16;
    private static final double WIDE = 28;
    private static final double OUTLINE_ROOM = 4;
    /** Between the line of cloth and the number below it, where they stand in one column. */
    private static final double CLOTH_MM = 1;
    private static final double ASCENT = 0.78;

    private final List<GoalEntry> entries;
    private final Box area;
    private final TypeScale type;
    private final TextRuler ruler;
    private final Words words;
    private final int columns;
    private final int rows;

    /**
     * Finds how many cards a page holds: as many as asked for, or as many as have room at the smallest size of type.
     *
     * @param mostColumns how many the stitcher asked for side by side
     * @param mostRows how many below each other
     * @param area of the whole grid, before scaling
     * @param type the sizes, before scaling
     */
    GoalCards(List<GoalEntry> entries, int mostColumns, int mostRows, Box area, TypeScale type, TextRuler ruler, Words words) {
        this.entries = entries;
        this.area = area;
        this.type = type;
        this.ruler = ruler;
        this.words = words;
        int bestColumns = 1;
        int bestRows = 1;
        double leastMm = Math.max(LEAST_WIDTH_MM, LEAST_WIDTH * TypeScale.mm(type.small()));
        for (int tried = 1; tried <= Math.min(mostColumns, most(area.widthMm(), leastMm)); tried++) {
            double widthMm = each(area.widthMm(), tried);
            double least = type.least() / type.small();
            double needMm = entries.stream().mapToDouble(entry -> new Card(entry, widthMm, least).needMm()).max().orElse(1);
            int fit = Math.min(mostRows, most(area.heightMm(), needMm));
            if (tried * fit > bestColumns * bestRows) {
                bestColumns = tried;
                bestRows = fit;
            }
        }
        columns = bestColumns;
        rows = bestRows;
    }

    private static int most(double roomMm, double leastMm) {
        return Math.max(1, (int) Math.floor((roomMm + GAP_MM) / (leastMm + GAP_MM)));
    }

    private static double each(double roomMm, int number) {
        return (roomMm - (number - 1) * GAP_MM) / number;
    }

    /** The cards of all pages, page by page. */
    List<List<GoalCard>> pages() {
        double widthMm = each(area.widthMm(), columns);
        double heightMm = each(area.heightMm(), rows);
        List<Card> cards = entries.stream().map(entry -> new Card(entry, widthMm, 1)).toList();
        double scale = cards.stream().mapToDouble(card -> card.scale(heightMm)).min().orElse(1);
        List<List<GoalCard>> pages = new ArrayList<>();
        for (int i = 0; i < cards.size(); i++) {
            if (i % (columns * rows) == 0) {
                pages.add(new ArrayList<>());
            }
            double downMm = i % (columns * rows) / columns * (heightMm + GAP_MM);
            Box box = new Box(area.xMm() + i % columns * (widthMm + GAP_MM), area.yMm() + downMm, widthMm, heightMm);
            pages.get(pages.size() - 1).add(cards.get(i).in(box, scale));
        }
        return pages;
    }

    /** A card of a width and what its words take, as its template sets them, at so many times their sizes. Lengths are millimetres. */
    private final class Card {

        private final GoalEntry entry;
        private final boolean wide;
        private final double innerMm;
        private final double topMm;
        private final double besideMm;
        private final double lowMm;
        private final double dateWidthMm;
        private final double dateMm;
        private final double footMm;

        Card(GoalEntry entry, double widthMm, double by) {
            double smallMm = TypeScale.mm(type.small());
            this.entry = entry;
            wide = widthMm >= WIDE * smallMm;
            innerMm = widthMm - 2 * PAD_MM;
            double leftMm = innerMm - outlineMm() - BESIDE_MM;
            boolean one = ruler.lines(entry.title(), "heading", 500, type.section() * by, innerMm) == 1;
            double clothMm = high(entry.cloth(), 400, type.small() * by, wide ? leftMm : innerMm);
            double titleMm = one ? type.lineMm(type.section() * by) : high(entry.title(), 500, "heading", type.lead() * by, innerMm);
            topMm = titleMm + (wide ? 0 : clothMm);
            besideMm = high(entry.number(), 600, type.heading() * by, leftMm) + high(entry.note(), 400, type.small() * by, leftMm)
                    + (wide ? clothMm + CLOTH_MM : 0);
            dateMm = entry.finished() ? 0 : type.lineMm(type.small()) + 2.2;
            dateWidthMm = wide ? 10 * smallMm : innerMm;
            double besideDateMm = wide ? innerMm - dateWidthMm - BESIDE_MM : innerMm;
            String likely = entry.likely().isEmpty() ? "" : words.say("goal.likely") + " \u00a0" + entry.likely();
            lowMm = high(likely, 600, type.table() * by, besideDateMm) + high(entry.late(), 600, type.caption() * by, besideDateMm);
            footMm = BAND_MM + APART_MM + smallMm * ASCENT;
        }

        private double outlineMm() {
            return innerMm * OUTLINE_SHARE;
        }

        private double high(String text, int weight, double sizePt, double widthMm) {
            return high(text, weight, "text", sizePt, widthMm);
        }

        private double high(String text, int weight, String family, double sizePt, double widthMm) {
            return text.isEmpty() ? 0 : ruler.lines(text, family, weight, sizePt, widthMm) * type.lineMm(sizePt);
        }

        /** The likely days and the box for the day, with what is blank above each. */
        private double datedMm() {
            double both = wide ? Math.max(lowMm, dateMm) : lowMm + dateMm + (lowMm > 0 && dateMm > 0 ? APART_MM : 0);
            return both > 0 ? both + APART_MM : 0;
        }

        /** All but what stands between the line of cloth and the likely days. */
        private double restMm() {
            return 2 * PAD_MM + topMm + APART_MM + datedMm() + APART_MM + footMm;
        }

        double needMm() {
            return restMm() + Math.max(besideMm, OUTLINE_ROOM * TypeScale.mm(type.least()));
        }

        double scale(double heightMm) {
            double roomMm = Math.max(heightMm - restMm(), OUTLINE_ROOM * TypeScale.mm(type.least()));
            return Math.min(outlineMm() / entry.widthMm(), roomMm / entry.heightMm());
        }

        GoalCard in(Box box, double scale) {
            double leftMm = box.xMm() + PAD_MM;
            double rightMm = box.rightMm() - PAD_MM;
            double widthMm = Math.max(LEAST_OUTLINE_MM, entry.widthMm() * scale);
            double wordsMm = box.yMm() + PAD_MM + topMm + APART_MM;
            Box outline = new Box(rightMm - widthMm, wordsMm, widthMm, Math.max(LEAST_OUTLINE_MM, entry.heightMm() * scale));
            Box band = new Box(leftMm, box.bottomMm() - PAD_MM - footMm, innerMm, BAND_MM);
            double dateTopMm = band.yMm() - APART_MM - (wide ? Math.max(lowMm, dateMm) : dateMm);
            Box date = new Box(rightMm - dateWidthMm, dateTopMm, dateWidthMm, dateMm);
            double lowTopMm = wide || dateMm == 0 ? dateTopMm - (wide ? 0 : lowMm) : dateTopMm - APART_MM - lowMm;
            List<Box> said = new ArrayList<>();
            said.add(new Box(leftMm, box.yMm() + PAD_MM, innerMm, topMm + APART_MM + besideMm));
            said.add(new Box(leftMm, band.bottomMm() + APART_MM, innerMm, TypeScale.mm(type.small())));
            if (lowMm > 0) {
                said.add(new Box(leftMm, lowTopMm, innerMm, lowMm));
            }
            ProgressBand cells = ProgressBand.of(new Box(0, 0, innerMm, BAND_MM), entry.done());
            return new GoalCard(box, entry, wide, outline, date, said, cells, band);
        }
    }
}
