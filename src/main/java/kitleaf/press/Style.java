package kitleaf.press;

/** Everything that a group hands down to what stands in it, besides its transform. */
record Style(Paint fill, Stroke stroke, Type type, Anchor anchor, double lineHeight) {

    /** SVG's initial values; line height (a multiple of the type size) is ours. */
    static final Style DEFAULT = new Style(Paint.BLACK, Stroke.SVG_DEFAULT, Type.DEFAULT, Anchor.START, 1.3);

    Style withFill(Paint to) {
        return new Style(to, stroke, type, anchor, lineHeight);
    }

    Style withStroke(Stroke to) {
        return new Style(fill, to, type, anchor, lineHeight);
    }

    Style withType(Type to) {
        return new Style(fill, stroke, to, anchor, lineHeight);
    }

    Style withAnchor(Anchor to) {
        return new Style(fill, stroke, type, to, lineHeight);
    }

    Style withLineHeight(double to) {
        return new Style(fill, stroke, type, anchor, to);
    }
}
