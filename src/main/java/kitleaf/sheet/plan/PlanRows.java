package kitleaf.sheet.plan;

import java.util.ArrayList;
import java.util.List;
import kitleaf.sheet.page.TextRuler;

/** Gathers the rows of a cloth plan's page, each as high as its words are long. */
final class PlanRows {

    /** Room for a box to tick. */
    static final double TICK_MM = 6;
    /** Room for a number or letter. */
    static final double MARK_MM = 7;
    /** From line to line of names and steps. */
    static final double LEADING_MM = 4.2;
    /** From line to line of what is small. */
    static final double SMALL_LEADING_MM = 3.4;

    private static final double SECTION_MM = 12;
    private static final double SUM_MM = 7;
    private static final double RIGHT_SHARE = 0.5;
    /** Names longer than this are cut short, and a warning says so. */
    private static final int MOST_LINES = 4;

    private final TextRuler ruler;
    private final double widthMm;
    private final List<PlanRow> rows = new ArrayList<>();

    PlanRows(TextRuler ruler, double widthMm) {
        this.ruler = ruler;
        this.widthMm = widthMm;
    }

    List<PlanRow> rows() {
        return rows;
    }

    void section(String words) {
        rows.add(new PlanRow("section", false, "", words, widthMm, 1, "", 0, "", 0, SECTION_MM, 0, 0, widthMm));
    }

    /** A step with its box; below it what makes it sure. */
    void step(String number, String words, String below) {
        double innerMm = widthMm - TICK_MM - MARK_MM;
        int lines = ruler.lines(words, "text", 400, PlanType.TEXT, innerMm);
        int belowLines = lines(below, innerMm);
        rows.add(new PlanRow("step", true, number, words, innerMm, lines, "", 0, below, belowLines,
                1.6 + LEADING_MM * lines + SMALL_LEADING_MM * belowLines, 0, 0, widthMm));
    }

    /** A thing with its name and, at the right, its size or price. */
    void item(boolean tick, String mark, String name, String right, String below) {
        double innerMm = widthMm - (tick ? TICK_MM : 0) - (mark.isEmpty() ? 0 : MARK_MM);
        double rightMm = right.isEmpty() ? 0 : ruler.widthMm(right, "text", 600, PlanType.TEXT) + 0.5;
        if (rightMm > innerMm * RIGHT_SHARE) {
            // Where there is no room beside the name, it goes below.
            item(tick, mark, name, "", below.isEmpty() ? right : right + " · " + below);
            return;
        }
        double nameMm = innerMm - rightMm - (right.isEmpty() ? 0 : 4);
        int lines = Math.min(MOST_LINES, ruler.lines(name, "text", 600, PlanType.NAME, nameMm));
        int belowLines = lines(below, innerMm);
        rows.add(new PlanRow("item", tick, mark, name, nameMm, lines, right, rightMm, below, belowLines,
                2.4 + LEADING_MM * lines + SMALL_LEADING_MM * belowLines, 0, 0, widthMm));
    }

    void sum(String words, String right) {
        rows.add(new PlanRow("sum", false, "", words, widthMm * RIGHT_SHARE, 1, right, widthMm * RIGHT_SHARE - 4, "", 0, SUM_MM, 0, 0, widthMm));
    }

    void note(String words) {
        int lines = lines(words, widthMm);
        rows.add(new PlanRow("note", false, "", words, widthMm, lines, "", 0, "", 0, 1.8 + SMALL_LEADING_MM * lines, 0, 0, widthMm));
    }

    private int lines(String small, double roomMm) {
        return small.isEmpty() ? 0 : ruler.lines(small, "text", 400, PlanType.SMALL, roomMm);
    }
}
