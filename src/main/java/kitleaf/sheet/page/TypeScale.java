package kitleaf.sheet.page;

import kitleaf.basket.Tags;

/**
 * The type sizes of all sheets by their role, in points; templates see it as {@code type}. A sheet that takes every size from
 * here, and heights from {@link #lineMm}, is set in large print without another line.
 *
 * @param large whether this is large print: nothing under {@value #LEAST_LARGE_PT} pt but the figures of fractions, left aligned, no
 *     blocks of capitals
 * @param display the one figure a page is cut by
 * @param title of a page
 * @param figure the second figure of a page
 * @param heading a title that has little room, a number on a card
 * @param section a heading within a page
 * @param subhead below that
 * @param lead a code or a name at the head of a row
 * @param text what nothing else is said of
 * @param body steps and rows
 * @param note sentences beside others
 * @param table rows of tables
 * @param small cautions and explanations
 * @param caption headings of columns, words in drawings
 * @param fine signature and check bars
 * @param least the smallest there is; also what a text may be shrunk to
 */
public record TypeScale(boolean large, double display, double title, double figure, double heading, double section, double subhead,
                        double lead, double text, double body, double note, double table, double small, double caption,
                        double fine, double least) {

    /** The smallest size of large print (UKAAF G003, 2019: 16 pt, ideally 18). */
    public static final double LEAST_LARGE_PT = 16;

    /** The usual sizes. */
    public static final TypeScale ORDINARY = new TypeScale(false, 25, 22, 19, 16, 13, 11, 10, 9.5, 9, 8.5, 8, 7.5, 7, 6.5, 6);

    /** Large print. */
    public static final TypeScale LARGE = new TypeScale(true, 30, 26, 26, 20, 22, 18, 18, 18, 18, 18, 16, 16, 16, 16, LEAST_LARGE_PT);

    /**
     * Between two baselines, in parts of the size, where large print runs over several lines (from memory: a fifth to a third is
     * usual).
     */
    public static final double LEADING = 1.2;

    private static final double LEAST_CLEAR_PT = 12;
    /** Larger than this no label needs. */
    private static final double LARGE_LABEL_PT = 24;
    private static final double WIDE_LABEL_MM = 45;

    private static final double PT_MM = 25.4 / 72;

    /** Refuses a scale whose smallest size is none. */
    public TypeScale {
        double smallest = Math.min(Math.min(Math.min(table, small), Math.min(caption, fine)),
                Math.min(Math.min(text, body), Math.min(note, lead)));
        if (!(least > 0) || smallest < least || large && least < LEAST_LARGE_PT) {
            throw new IllegalArgumentException("sizes under the smallest of the scale: " + least + " pt");
        }
    }

    /**
     * The sizes of something that is drawn so many times larger afterwards: after that none is under large print, nor under what the
     * ordinary scale would have become.
     *
     * @param times above 0
     */
    public TypeScale before(double times) {
        TypeScale o = ORDINARY;
        return new TypeScale(false, Math.max(o.display, display / times), Math.max(o.title, title / times),
                Math.max(o.figure, figure / times),
                Math.max(o.heading, heading / times), Math.max(o.section, section / times), Math.max(o.subhead, subhead / times),
                Math.max(o.lead, lead / times), Math.max(o.text, text / times), Math.max(o.body, body / times),
                Math.max(o.note, note / times),
                Math.max(o.table, table / times), Math.max(o.small, small / times), Math.max(o.caption, caption / times),
                Math.max(o.fine, fine / times), Math.max(o.least, least / times));
    }

    /** How much smaller type may be on something of a given size; never smaller than on an ordinary sheet. */
    public double shrink() {
        return ORDINARY.small / small;
    }

    /** Whether a few words may be a block of capitals, which are hard to read (UKAAF G003, 2019). */
    public boolean capitals() {
        return !large;
    }

    /** Whether paper that may stand either way lies; large print reads better in the shorter lines of upright paper. */
    public boolean lies() {
        return !large;
    }

    /** Whether what is to be said of a drawing at true size stands beside it; else it has no room there, and stands on the pages before. */
    public boolean besides() {
        return !large;
    }

    /**
     * What is small on a label is set in at most.
     *
     * @param widthMm of a face of the label: on wide ones it is larger
     */
    public double label(double widthMm) {
        return large ? LARGE_LABEL_PT : widthMm >= WIDE_LABEL_MM ? table : caption;
    }

    /** The least size of what is small on a label: labels may be of any size, and hold large print only if they have room for it. */
    public double leastOnLabel() {
        return ORDINARY.least;
    }

    /** The least size of a code on a label: the smallest of clear print (UKAAF G003, 2019), so that it reads at arm's length. */
    public double leastCode() {
        return LEAST_CLEAR_PT;
    }

    /** What a code may be set in where it would else be parted, whatever the scale: a code in one small line reads better than in two. */
    public double narrowCode() {
        return ORDINARY.fine;
    }

    /**
     * Labels cut from plain paper where the basket says no size: in large print so large that its two faces hold a code, a name, strands,
     * needle, skeins, lot and a title of the usual lengths in 16 pt (found by measuring).
     */
    public Box usualLabel() {
        return large ? new Box(0, 0, 95, 61) : new Box(0, 0, 63, 25);
    }

    /**
     * What a tag that is a share of its sheet measures at least; in large print it holds some 30 characters a line and ten lines (found by
     * measuring).
     */
    public Box leastTag() {
        return large ? new Box(0, 0, 90, 100) : new Box(0, 0, Tags.LEAST_WIDTH_MM, Tags.LEAST_HEIGHT_MM);
    }

    /** The size a text may shrink to: what the ordinary sheet allows, but no smaller than the smallest of this scale. */
    public double floor(double ordinaryPt) {
        return Math.max(ordinaryPt, least);
    }

    /** From one line of so many points to the next, in millimetres. */
    public double lineMm(double sizePt) {
        return sizePt * PT_MM * LEADING;
    }

    /** How high so many points are, in millimetres. */
    public static double mm(double sizePt) {
        return sizePt * PT_MM;
    }
}
