package kitleaf.sheet.goal;

import java.util.ArrayList;
import java.util.List;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.PlacedText;
import kitleaf.sheet.page.TextRuler;
import kitleaf.sheet.page.TypeScale;
import kitleaf.words.Words;

/** Places goal cards in large print: as few on a page as their words need, their outlines to one scale over all pages. */
final class LargeGoalCards {

    private static final double PAD_MM = 5;
    private static final double GAP_MM = GoalCards.GAP_MM;
    /** The least width of a card set in 16 pt, and of any. */
    private static final double LEAST_WIDTH_MM = 90;
    private static final double LEAST_ANY_MM = 55;
    private static final double OUTLINE_SHARE = 0.3;
    private static final double LEAST_OUTLINE_ROOM_MM = 22;
    private static final double LEAST_OUTLINE_MM = 1.2;
    private static final double BAND_MM = 6.4;
    private static final double APART_MM = 2;
    private static final double ASCENT = 0.78;

    private final TypeScale type;
    private final TextRuler ruler;
    private final Words words;
    private final List<GoalEntry> entries;
    private final Box area;
    private final int columns;
    private final int rows;

    /**
     * Finds how many cards a page holds.
     *
     * @param type the sizes, before scaling
     * @param mostColumns how many the stitcher asked for side by side
     * @param mostRows how many below each other
     * @param area of the whole grid, before scaling
     */
    LargeGoalCards(List<GoalEntry> entries, int mostColumns, int mostRows, Box area, TypeScale type, TextRuler ruler, Words words) {
        this.entries = entries;
        this.area = area;
        this.type = type;
        this.ruler = ruler;
        this.words = words;
        double leastMm = Math.max(LEAST_ANY_MM, LEAST_WIDTH_MM * type.small() / TypeScale.LEAST_LARGE_PT);
        int bestColumns = 1;
        int bestRows = 1;
        for (int tried = 1; tried <= Math.min(mostColumns, GoalGridLayout.most(area.widthMm(), leastMm)); tried++) {
            double widthMm = widthMm(tried);
            double needMm = entries.stream().mapToDouble(entry -> words(entry, widthMm).needMm()).max().orElse(1);
            int fit = Math.min(mostRows, GoalGridLayout.most(area.heightMm(), needMm));
            if (tried * fit > bestColumns * bestRows) {
                bestColumns = tried;
                bestRows = fit;
            }
        }
        columns = bestColumns;
        rows = bestRows;
    }

    /** Cards on a page. */
    int perPage() {
        return columns * rows;
    }

    /** The cards of one page, from 0. */
    List<GoalCard> page(int page) {
        double widthMm = widthMm(columns);
        double heightMm = (area.heightMm() - (rows - 1) * GAP_MM) / rows;
        double scale = entries.stream().mapToDouble(entry -> {
            Written written = words(entry, widthMm);
            return Math.min(outlineMm(widthMm) / entry.widthMm(), (heightMm - written.topMm() - written.lowMm()) / entry.heightMm());
        }).min().orElse(1);
        List<GoalCard> cards = new ArrayList<>();
        List<GoalEntry> here = entries.subList(page * perPage(), Math.min(entries.size(), (page + 1) * perPage()));
        for (int i = 0; i < here.size(); i++) {
            Box box = new Box(area.xMm() + i % columns * (widthMm + GAP_MM), area.yMm() + i / columns * (heightMm + GAP_MM), widthMm, heightMm);
            cards.add(card(here.get(i), box, scale));
        }
        return cards;
    }

    private double widthMm(int side) {
        return (area.widthMm() - (side - 1) * GAP_MM) / side;
    }

    private static double outlineMm(double widthMm) {
        return (widthMm - 2 * PAD_MM) * OUTLINE_SHARE;
    }

    /**
     * The words of a card that stand from its top down, from its top left corner, and what the rest takes.
     *
     * @param topMm where the outline may start
     * @param leftMm where the words beside it end
     * @param lowMm what stands below the outline takes
     */
    private record Written(List<PlacedText> texts, List<PlacedText> low, double topMm, double leftMm, double lowMm) {

        double needMm() {
            return Math.max(leftMm, topMm + LEAST_OUTLINE_ROOM_MM) + lowMm;
        }
    }

    private Written words(GoalEntry entry, double widthMm) {
        double innerMm = widthMm - 2 * PAD_MM;
        Stack top = new Stack(PAD_MM);
        top.add(entry.title(), innerMm, type.section(), 500, "heading", "ink");
        top.add(entry.cloth(), innerMm, type.small(), 400, "text", "quiet");
        double topMm = top.yMm + APART_MM;
        Stack left = new Stack(topMm);
        double besideMm = innerMm - outlineMm(widthMm) - 3;
        left.add(entry.number(), besideMm, type.heading(), entry.finished() ? 700 : 600, entry.finished() ? "heading" : "text", entry.finished() ? "accent" : "ink");
        left.add(entry.note(), besideMm, type.small(), 400, "text", "quiet");
        List<PlacedText> texts = new ArrayList<>(top.texts);
        texts.addAll(left.texts);
        Stack low = new Stack(APART_MM);
        if (!entry.likely().isEmpty()) {
            low.add(words.say("goal.likely") + " " + entry.likely(), innerMm, type.small(), 600, "text", "ink");
        }
        low.add(entry.late(), innerMm, type.small(), 600, "text", "accent");
        return new Written(texts, low.texts, topMm, left.yMm, low.yMm + (entry.finished() ? 0 : APART_MM + dateMm()) + APART_MM + BAND_MM + APART_MM
                + type.lineMm(type.small()) + PAD_MM / 2);
    }

    private double dateMm() {
        return type.lineMm(type.small()) + 3;
    }

    private GoalCard card(GoalEntry entry, Box box, double scale) {
        Written written = words(entry, box.widthMm());
        double innerMm = box.widthMm() - 2 * PAD_MM;
        double leftMm = box.xMm() + PAD_MM;
        double smallMm = TypeScale.mm(type.small());
        double footMm = box.bottomMm() - PAD_MM / 2 - smallMm * 0.3;
        Box bandBox = new Box(leftMm, footMm - smallMm * ASCENT - APART_MM - BAND_MM, innerMm, BAND_MM);
        ProgressBand band = ProgressBand.of(bandBox, entry.done());
        Box date = new Box(leftMm, bandBox.yMm() - APART_MM - dateMm(), innerMm, dateMm());
        List<PlacedText> texts = new ArrayList<>();
        written.texts().forEach(text -> texts.add(moved(text, leftMm, box.yMm())));
        double lowTopMm = box.bottomMm() - written.lowMm();
        written.low().forEach(text -> texts.add(moved(text, leftMm, lowTopMm)));
        if (!entry.finished()) {
            texts.add(line(words.say("goal.date"), leftMm + 1.5, date.yMm() + date.heightMm() / 2 + smallMm * 0.33, innerMm, 400, "quiet", "start"));
        }
        texts.add(line(words.say("goal.each"), leftMm, footMm, innerMm, 400, "quiet", "start"));
        texts.add(line(entry.unbegun() ? words.say("goal.unbegun") : entry.percent(), box.rightMm() - PAD_MM, footMm, innerMm, 600,
                entry.unbegun() ? "accent" : "ink", "end"));
        double widthMm = Math.max(LEAST_OUTLINE_MM, entry.widthMm() * scale);
        Box outline = new Box(box.rightMm() - PAD_MM - widthMm, box.yMm() + written.topMm(), widthMm, Math.max(LEAST_OUTLINE_MM, entry.heightMm() * scale));
        return new GoalCard(box, entry.title(), entry.cloth(), outline, entry.number(), entry.note(), entry.likely(), entry.late(), entry.percent(),
                entry.done(), entry.finished(), entry.unbegun(), band.cells(), band.hatch(), date, texts);
    }

    private PlacedText line(String text, double xMm, double baselineMm, double roomMm, int weight, String tone, String anchor) {
        return new PlacedText(text, xMm, baselineMm, roomMm, 1, type.small(), TypeScale.LEADING, weight, "text", tone, anchor);
    }

    private static PlacedText moved(PlacedText text, double xMm, double yMm) {
        return new PlacedText(text.text(), xMm + text.xMm(), yMm + text.baselineMm(), text.widthMm(), text.lines(), text.sizePt(), text.leading(),
                text.weight(), text.family(), text.tone(), text.anchor());
    }

    /** Texts added from the top down. */
    private final class Stack {

        private final List<PlacedText> texts = new ArrayList<>();
        private double yMm;

        Stack(double topMm) {
            yMm = topMm;
        }

        void add(String text, double roomMm, double sizePt, int weight, String family, String tone) {
            if (!text.isEmpty()) {
                int lines = ruler.lines(text, family, weight, sizePt, roomMm);
                texts.add(new PlacedText(text, 0, yMm + TypeScale.mm(sizePt) * ASCENT, roomMm, lines, sizePt, TypeScale.LEADING, weight, family, tone, "start"));
                yMm += lines * type.lineMm(sizePt);
            }
        }
    }
}
