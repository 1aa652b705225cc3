package kitleaf.sheet.page;

/** Measures text as it will be set, so that what stands below it can move down. */
public interface TextRuler {

    /** The least a QR code's module may measure: four dots of a 300 dpi printer, as the symbology's originator advises. */
    double LEAST_MODULE_MM = 0.34;

    /** Modules of quiet zone on each side of a QR code (ISO/IEC 18004). */
    int QUIET_MODULES = 4;

    /** How many modules a QR code of a text has on a side, without its quiet zone; more than any has where the text is too long for one. */
    int codeModules(String text);

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
