package kitleaf.press.markup;

/** Everything that a group hands down to what stands in it, besides its transform. */
public record Style(Paint fill, Stroke stroke, Type type, Anchor anchor, double lineHeight, double fitPt) {

    /**
     * SVG's initial values; ours are line height (a multiple of the type size) and fit (the least size to shrink to, infinite for
     * none).
     */
    public static final Style DEFAULT = new Style(Paint.BLACK, Stroke.SVG_DEFAULT, Type.DEFAULT, Anchor.START, 1.3,
            Double.POSITIVE_INFINITY);

    public Style withFill(Paint to) {
        return new Style(to, stroke, type, anchor, lineHeight, fitPt);
    }

    public Style withStroke(Stroke to) {
        return new Style(fill, to, type, anchor, lineHeight, fitPt);
    }

    public Style withType(Type to) {
        return new Style(fill, stroke, to, anchor, lineHeight, fitPt);
    }

    Style withAnchor(Anchor to) {
        return new Style(fill, stroke, type, to, lineHeight, fitPt);
    }

    Style withLineHeight(double to) {
        return new Style(fill, stroke, type, anchor, to, fitPt);
    }

    public Style withFit(double toPt) {
        return new Style(fill, stroke, type, anchor, lineHeight, toPt);
    }
}
