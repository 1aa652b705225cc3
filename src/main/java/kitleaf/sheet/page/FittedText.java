package kitleaf.sheet.page;

/**
 * A text on a label or a tag that may shrink to fit its place, which is measured from the face's top left corner.
 *
 * @param role what it is, such as {@code code}
 * @param text what it says
 * @param xMm of its left edge, its middle or its right edge, as {@code anchor} says
 * @param baselineMm of its first line
 * @param widthMm it is wrapped and fitted to
 * @param lines at most
 * @param sizePt type size
 * @param fitPt the size it may shrink to
 * @param weight of the face
 * @param anchor {@code start}, {@code middle} or {@code end}
 */
public record FittedText(String role, String text, double xMm, double baselineMm, double widthMm, int lines,
                         double sizePt, double fitPt, int weight, String anchor) implements Parts {

    private static final int REGULAR = 400;

    /** Another text in the same place. */
    public FittedText saying(String other) {
        return new FittedText(role, other, xMm, baselineMm, widthMm, lines, sizePt, fitPt, weight, anchor);
    }

    @Override
    public Object part(String name) {
        return switch (name) {
            case "role" -> role;
            case "text" -> text;
            case "xMm" -> xMm;
            case "baselineMm" -> baselineMm;
            case "widthMm" -> widthMm;
            case "lines" -> lines;
            case "sizePt" -> sizePt;
            case "fitPt" -> fitPt;
            case "weight" -> weight;
            case "anchor" -> anchor;
            case "wraps" -> lines > 1;
            case "bold" -> weight != REGULAR;
            case "quiet" -> role.equals("facts");
            default -> null;
        };
    }
}
