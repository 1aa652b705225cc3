package kitleaf.press;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Measures text with the very code that draws it: fallback faces, fractions and line breaks included. */
public final class TextMeasure {

    /** Layouts ask of the same codes and titles again and again; so many are remembered, then all are let go. */
    private static final int REMEMBERED = 500;

    private final Map<Asked, Galley> galleys = new ConcurrentHashMap<>();

    /** A text in a type, as it was asked for. */
    private record Asked(String text, String family, int weight, double sizePt) { }

    /**
     * The width of a text set as one line, in millimetres; white space is collapsed as in markup.
     *
     * @param text any text
     * @param family {@code text}, {@code heading} or {@code symbol}
     * @param weight 100 to 900; the nearest bundled weight is taken
     * @param sizePt the type size in points, more than 0
     * @throws IllegalArgumentException if the family, weight or size is none of these
     */
    public double widthMm(String text, String family, int weight, double sizePt) {
        Galley galley = galley(text, family, weight, sizePt);
        return galley.widthPt(galley.whole()) / Plate.POINTS_PER_MM;
    }

    /**
     * How many lines a text takes in a box, words wider than the box parted; 0 for no text.
     *
     * @param text any text
     * @param family {@code text}, {@code heading} or {@code symbol}
     * @param weight 100 to 900; the nearest bundled weight is taken
     * @param sizePt the type size in points, more than 0
     * @param widthMm the box's width in millimetres, at least the widest character's
     * @throws IllegalArgumentException if the family, weight or size is none of these, or a single
     *     character is wider than the box
     */
    public int lines(String text, String family, int weight, double sizePt, double widthMm) {
        return galley(text, family, weight, sizePt).lines(widthMm * Plate.POINTS_PER_MM, true)
                .orElseThrow(() -> new IllegalArgumentException("narrower than a character: " + widthMm + " mm"))
                .size();
    }

    private Galley galley(String text, String family, int weight, double sizePt) {
        Asked asked = new Asked(text, family, weight, sizePt);
        Galley galley = galleys.get(asked);
        if (galley == null) {
            galley = set(text, family, weight, sizePt);
            if (galleys.size() >= REMEMBERED) {
                galleys.clear();
            }
            galleys.put(asked, galley);
        }
        return galley;
    }

    private static Galley set(String text, String family, int weight, double sizePt) {
        if (!(weight >= 100 && weight <= 900)) {
            throw new IllegalArgumentException("weight must be 100 to 900: " + weight);
        }
        if (!(sizePt >= Plate.LEAST_TYPE_PT && sizePt <= NumberScanner.MOST)) {
            throw new IllegalArgumentException("type size must be " + Plate.LEAST_TYPE_PT + " to "
                    + NumberScanner.MOST + " pt: " + sizePt);
        }
        try {
            Type type = new Type(Family.read(family), weight, sizePt, 0, false);
            SpanGatherer gatherer = new SpanGatherer();
            gatherer.add(text, Style.DEFAULT.withType(type));
            return Galley.of(gatherer.spans());
        } catch (BadValue e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }
}
