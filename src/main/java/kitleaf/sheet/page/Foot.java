package kitleaf.sheet.page;

/**
 * The foot of a page in large print: bars, what is to be known of them, the separator and the signature, each where it has
 * room. In millimetres from the page's top.
 *
 * @param topMm above it content ends
 * @param barsMm where the check bars stand
 * @param captionsMm the baseline of what they measure
 * @param note what is to be known, of the bars or of the sheet
 * @param noteXMm its left side
 * @param noteYMm its first baseline
 * @param noteWidthMm what it is wrapped to
 * @param noteLines so many
 * @param stitchMm where the separator is
 * @param signature basket, sheet and date, after the program's name
 * @param signatureYMm its first baseline
 * @param signatureWidthMm what it is wrapped to
 * @param signatureLines so many
 */
public record Foot(double topMm, double barsMm, double captionsMm, String note, double noteXMm, double noteYMm, double noteWidthMm,
                   int noteLines, double stitchMm, String signature, double signatureYMm, double signatureWidthMm, int signatureLines) {

    /** The bars of 50 mm and 2 in with what is between them. */
    private static final double BARS_MM = 109;
    private static final double BARS_GAP_MM = 6;
    private static final double TICKS_MM = 2.4;
    private static final double CAPTION_MM = 6.2;
    /** The last baseline, so that descenders keep 8 mm from the edge. */
    private static final double LAST_LINE_MM = 10.5;
    /** Least room for a note beside the bars. */
    private static final double LEAST_NOTE_MM = 60;
    /** Ascenders above a baseline and descenders below it, in parts of the size. */
    private static final double ASCENT = 0.78;
    private static final double DESCENT = 0.27;
    private static final double CLEAR_MM = 2.5;
    /** A basket's title that takes more is cut short, with a warning. */
    private static final int MOST_LINES = 6;

    /** The foot of a page so wide and high. */
    static Foot of(double widthMm, double heightMm, String note, String program, String signature, String lastPage, TypeScale type,
            TextRuler ruler) {
        double sizePt = type.fine();
        double lineMm = type.lineMm(sizePt);
        double ascentMm = TypeScale.mm(sizePt) * ASCENT;
        double descentMm = TypeScale.mm(sizePt) * DESCENT;
        double innerMm = widthMm - 2 * Frames.MARGIN_MM;
        double signatureWidthMm = innerMm - ruler.widthMm(lastPage, "text", 400, sizePt) - 5;
        // Its first word is bold, which is a little wider; all of it is measured so.
        int signatureLines = Math.min(MOST_LINES, ruler.lines(program + signature, "text", 600, sizePt, signatureWidthMm));
        double signatureYMm = heightMm - LAST_LINE_MM - (signatureLines - 1) * lineMm;
        double stitchMm = signatureYMm - ascentMm - CLEAR_MM;
        double besideMm = innerMm - BARS_MM - BARS_GAP_MM;
        boolean beside = besideMm >= LEAST_NOTE_MM && ruler.lines(note, "text", 400, sizePt, besideMm) <= 2;
        double noteWidthMm = beside ? besideMm : innerMm;
        int noteLines = ruler.lines(note, "text", 400, sizePt, noteWidthMm);
        double lastMm = stitchMm - CLEAR_MM - descentMm;
        double captionsMm = beside || noteLines == 0 ? lastMm : lastMm - noteLines * lineMm;
        double barsMm = captionsMm - CAPTION_MM;
        double noteYMm = lastMm - (Math.max(1, noteLines) - 1) * lineMm;
        double topMm = Math.min(barsMm - TICKS_MM, noteYMm - ascentMm) - CLEAR_MM;
        return new Foot(topMm, barsMm, captionsMm, note, beside ? Frames.MARGIN_MM + BARS_MM + BARS_GAP_MM : Frames.MARGIN_MM, noteYMm,
                noteWidthMm, noteLines, stitchMm, signature, signatureYMm, signatureWidthMm, signatureLines);
    }
}
