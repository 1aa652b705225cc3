package kitleaf.sheet.page;

/**
 * A text in its place, its lines counted, so that it is drawn whole at the size it was measured at.
 *
 * @param text what it says
 * @param xMm its left edge, its middle or its right edge, as {@code anchor} says
 * @param baselineMm of its first line
 * @param widthMm it is wrapped to
 * @param lines it takes
 * @param sizePt type size
 * @param leading from line to line, in parts of the size
 * @param weight of the face
 * @param family {@code text} or {@code heading}
 * @param tone {@code ink}, {@code quiet} or {@code accent}
 * @param anchor {@code start}, {@code middle} or {@code end}
 */
public record PlacedText(String text, double xMm, double baselineMm, double widthMm, int lines, double sizePt, double leading,
                         int weight, String family, String tone, String anchor) {

    /** Where the next line below it would begin. */
    double bottomMm() {
        return baselineMm + TypeScale.mm(sizePt) * (lines * leading - Passages.ASCENT);
    }
}
