package kitleaf.sheet.page;

import java.util.Locale;

/**
 * The head of a page in large print, each line where the ones above it leave room.
 *
 * @param eyebrow which sheet
 * @param eyebrowMm its baseline
 * @param eyebrowPt its size
 * @param title of the page
 * @param titlePt its size
 * @param titleYMm its first baseline
 * @param titleLines so many
 * @param below under the title; empty for nothing
 * @param belowYMm its first baseline
 * @param belowPt its size
 * @param belowLines so many
 * @param stitchMm where the separator is
 * @param bottomMm where content starts
 */
public record Masthead(String eyebrow, double eyebrowMm, double eyebrowPt, String title, double titlePt, double titleYMm, int titleLines,
        String below, double belowYMm, double belowPt, int belowLines, double stitchMm, double bottomMm) {

    private static final double FIRST_MM = 16;
    /** Leading of titles, in parts of their size; their template says the same. */
    static final double TITLE_LEADING = 1.1;
    private static final double CLEAR_MM = 4;
    /** What takes more is cut short, with a warning. */
    private static final int MOST_LINES = 4;

    /** The head of a page whose content is so wide; pages that go on have a smaller title and nothing below it. */
    public static Masthead of(String eyebrow, String title, String below, boolean first, double widthMm, TypeScale type, TextRuler ruler,
            Locale language) {
        double titlePt = first ? type.title() : type.heading();
        double titleYMm = FIRST_MM + TypeScale.mm(titlePt) * TITLE_LEADING;
        int titleLines = Math.max(1, Math.min(MOST_LINES, ruler.lines(title, "heading", 500, titlePt, widthMm)));
        double lastMm = titleYMm + (titleLines - 1) * TypeScale.mm(titlePt) * TITLE_LEADING;
        String under = first ? below : "";
        int belowLines = under.isEmpty() ? 0 : Math.min(MOST_LINES, ruler.lines(under, "text", 400, type.table(), widthMm));
        double belowYMm = lastMm + type.lineMm(type.table()) + 1;
        double stitchMm = (belowLines == 0 ? lastMm : belowYMm + (belowLines - 1) * type.lineMm(type.table())) + CLEAR_MM;
        return new Masthead(sentence(eyebrow, language), FIRST_MM, type.fine(), title, titlePt, titleYMm, titleLines, under, belowYMm,
                type.table(), belowLines, stitchMm, stitchMm + CLEAR_MM);
    }

    /** A block of capitals is hard to read (UKAAF G003, 2019): only the first is left. */
    static String sentence(String capitals, Locale language) {
        return capitals.isEmpty() ? "" : capitals.substring(0, 1) + capitals.substring(1).toLowerCase(language);
    }
}
