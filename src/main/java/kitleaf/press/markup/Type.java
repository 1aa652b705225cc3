package kitleaf.press.markup;

/**
 * How characters are set.
 *
 * @param weight 100 to 900; the nearest bundled face is taken
 * @param sizePt the type size in points
 * @param spacingMm added after every character
 * @param tabular whether digits all take the widest digit's width
 */
public record Type(Family family, int weight, double sizePt, double spacingMm, boolean tabular) {

    /** Regular weight, as CSS numbers it. */
    public static final int NORMAL = 400;

    /** Bold, as CSS numbers it. */
    static final int BOLD = 700;

    /** The text size of the sheets, where SVG leaves the choice to the reader. */
    static final Type DEFAULT = new Type(Family.TEXT, NORMAL, 9.5, 0, false);

    Type withFamily(Family to) {
        return new Type(to, weight, sizePt, spacingMm, tabular);
    }

    Type withWeight(int to) {
        return new Type(family, to, sizePt, spacingMm, tabular);
    }

    public Type withSize(double to) {
        return new Type(family, weight, to, spacingMm, tabular);
    }

    Type withSpacing(double to) {
        return new Type(family, weight, sizePt, to, tabular);
    }

    Type withTabular(boolean to) {
        return new Type(family, weight, sizePt, spacingMm, to);
    }
}
