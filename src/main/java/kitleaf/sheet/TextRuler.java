package kitleaf.sheet;

/** Measures text as it will be set, so that what stands below it can move down. */
public interface TextRuler {

    /**
     * How many lines a text takes.
     *
     * @param family {@code text}, {@code heading} or {@code symbol}
     * @param weight 100 to 900
     * @param sizePt font size in points, above 0
     * @param widthMm the width it is wrapped to, above 0
     */
    int lines(String text, String family, int weight, double sizePt, double widthMm);

    /** How wide a text is on one line, in millimetres. */
    double widthMm(String text, String family, int weight, double sizePt);
}
