package kitleaf.sheet.goal;

import java.util.Arrays;
import java.util.List;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.page.TextRuler;
import kitleaf.sheet.page.TypeScale;
import kitleaf.words.Words;

/** Tells how large all that is on goal cards may be drawn to have room on cards of a size; {@code goal-grid.ftlx} sets it so. */
record CardRoom(List<GoalEntry> entries, TypeScale type, TextRuler ruler, Words words) {

    /**
     * Inside a card at all sides; all that is blank between what stands one below the other; between what stands side by side; where a day
     * is written by hand.
     */
    static final double PAD_MM = 3;
    static final double APART_MM = 3.8;
    static final double BESIDE_MM = 3;
    static final double HAND_MM = 5.2;
    static final double HAND_LINE_MM = 22;
    /** Outlines have so much of a card, across and down, or less where words need it; the band so much of its height. */
    static final double OUTLINE_SHARE = 0.4;
    private static final double LEAST_OUTLINE_SHARE = 0.25;
    static final double BAND_SHARE = 0.1;
    private static final double LEAST_BAND_MM = 4.5;
    /** No outline is drawn smaller than this, or it would not be seen. */
    private static final double LEAST_OUTLINE_MM = 1.2;
    /** A card as wide as this is enlarged no more, so that lines keep a good length. */
    private static final double WIDE_MM = 72;
    /** The least width of a card and one at which its lines have a good length, in sizes of small type. */
    private static final double LEAST_WIDTH = 17;
    private static final double GOOD_WIDTH = 27;
    private static final double STEP = 0.05;

    /** Copies the list. */
    CardRoom {
        entries = List.copyOf(entries);
    }

    /** How good a grid of such cards is: the larger what is on them and the nearer its lines are to a good length, the better. */
    double worth(GoalGrid grid) {
        return Math.min(grid.scale(), grid.widthMm() / (GOOD_WIDTH * TypeScale.mm(type.small())));
    }

    /**
     * How much all that is on the cards may be enlarged. Less than 1 where words fit only if they shrink, 0 where they do not
     * fit at all.
     *
     * @param widthMm of a card
     * @param heightMm of a card
     */
    double scale(double widthMm, double heightMm) {
        if (heightMm <= 0 || widthMm < LEAST_WIDTH * TypeScale.mm(type.small())) {
            return 0;
        }
        for (double scale = Math.max(1, widthMm / WIDE_MM); scale >= 1; scale -= STEP) {
            if (holds(widthMm / scale, heightMm / scale, type.before(scale), 1, OUTLINE_SHARE)) {
                return scale;
            }
        }
        double shrunk = type.least() / type.small();
        return holds(widthMm, heightMm, type, 1, LEAST_OUTLINE_SHARE) ? 1
                : holds(widthMm, heightMm, type, shrunk, LEAST_OUTLINE_SHARE) ? shrunk : 0;
    }

    private boolean holds(double widthMm, double heightMm, TypeScale sizes, double by, double outline) {
        return entries.stream().allMatch(entry -> holds(entry, widthMm, heightMm, sizes, by, outline));
    }

    private boolean holds(GoalEntry entry, double widthMm, double heightMm, TypeScale sizes, double by, double outline) {
        double innerMm = widthMm - 2 * PAD_MM;
        double leftMm = innerMm * (1 - OUTLINE_SHARE) - BESIDE_MM;
        String likely = entry.finished() ? "" : words.say("goal.likely") + "  " + entry.likely();
        double leftHighMm = high(entry.number(), "text", 700, sizes.heading() * by, leftMm)
                + high(entry.note(), "text", 400, sizes.small() * by, leftMm) + high(likely, "text", 600, sizes.table() * by, leftMm);
        boolean parted = ruler.lines(entry.number(), "text", 700, sizes.heading() * by, leftMm) > 1
                || Arrays.stream(entry.title().split(" "))
                        .anyMatch(word -> ruler.widthMm(word, "heading", 500, sizes.lead() * by) > innerMm);
        return !parted && Math.max(leftHighMm, outline * heightMm) <= roomMm(entry, innerMm, heightMm, sizes, by);
    }

    /** What is left of a card's height for the outline and the words beside it. */
    private double roomMm(GoalEntry entry, double innerMm, double heightMm, TypeScale sizes, double by) {
        boolean one = ruler.lines(entry.title(), "heading", 500, sizes.section() * by, innerMm) == 1;
        double titleMm = high(entry.title(), "heading", 500, (one ? sizes.section() : sizes.lead()) * by, innerMm);
        return heightMm - 2 * PAD_MM - titleMm - high(entry.cloth(), "text", 400, sizes.small() * by, innerMm) - APART_MM - bandMm(heightMm)
                - footMm(entry, innerMm, sizes, by);
    }

    /** What stands below the band: how much is done, and where the day is written, side by side if they have room. */
    private double footMm(GoalEntry entry, double innerMm, TypeScale sizes, double by) {
        double handMm = ruler.widthMm(words.say("goal.date"), "text", 400, sizes.least()) + 2 + HAND_LINE_MM + BESIDE_MM;
        boolean beside = entry.finished() || ruler.widthMm(entry.progress(), "text", 600, sizes.small() * by) + handMm <= innerMm;
        String both = entry.progress() + "  " + words.say("goal.each");
        return beside ? Math.max(HAND_MM, type.lineMm(sizes.small() * by))
                : HAND_MM + 1 + high(both, "text", 600, sizes.small() * by, innerMm);
    }

    private double high(String text, String family, int weight, double sizePt, double widthMm) {
        return text.isEmpty() ? 0 : ruler.lines(text, family, weight, sizePt, widthMm) * type.lineMm(sizePt);
    }

    private static double bandMm(double heightMm) {
        return Math.max(LEAST_BAND_MM, BAND_SHARE * heightMm);
    }

    /**
     * The card of a piece.
     *
     * @param box where it lies
     * @param scale how much all on it is enlarged, or shrunk; 0 where it does not fit at all
     */
    GoalCard card(GoalEntry entry, Box box, double scale) {
        double larger = Math.max(1, scale);
        double innerMm = box.widthMm() / larger - 2 * PAD_MM;
        double heightMm = box.heightMm() / larger;
        TypeScale sizes = type.before(larger);
        double by = scale > 0 ? Math.min(1, scale) : type.least() / type.small();
        double drawn = entries.stream().mapToDouble(it -> Math.min(OUTLINE_SHARE * innerMm / it.widthMm(),
                Math.min(OUTLINE_SHARE * heightMm, roomMm(it, innerMm, heightMm, sizes, by)) / it.heightMm()))
                .min().orElse(1);
        return new GoalCard(box, entry, Math.max(LEAST_OUTLINE_MM, entry.widthMm() * drawn),
                Math.max(LEAST_OUTLINE_MM, entry.heightMm() * drawn),
                ProgressBand.of(new Box(0, 0, innerMm, bandMm(heightMm)), entry.done()));
    }
}
