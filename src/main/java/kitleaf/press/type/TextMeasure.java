package kitleaf.press.type;

import java.util.Locale;
import kitleaf.press.markup.BadValue;
import kitleaf.press.markup.Family;
import kitleaf.press.markup.Lately;
import kitleaf.press.markup.NumberScanner;
import kitleaf.press.markup.Plate;
import kitleaf.press.markup.Quotes;
import kitleaf.press.markup.Style;
import kitleaf.press.markup.Type;

/** Measures text with the very code that draws it: fallback faces, fractions and line breaks included. */
public final class TextMeasure {

    /** Layouts ask of the same codes and titles again and again; of so many the answers are remembered. */
    private static final int REMEMBERED = 500;

    /** A text in a type. */
    private record Typed(String text, String family, int weight, double sizePt) { }

    /** A text in a box of a width. */
    private record Boxed(Typed typed, double widthMm) { }

    private final Lately<Typed, Double> widthsMm = new Lately<>(REMEMBERED);
    private final Lately<Boxed, Integer> numbers = new Lately<>(REMEMBERED);
    /** What was set last, since the next question is often of the same text. */
    private Typed latest;
    private Galley galley;
    private final Quotes quotes;

    /** Measures text as English has it. */
    public TextMeasure() {
        this(Locale.ENGLISH);
    }

    /** Measures text as a language has it: quotation marks differ. */
    public TextMeasure(Locale language) {
        quotes = Quotes.of(language.toLanguageTag());
    }

    /**
     * The width of a text set as one line, in millimetres; white space is collapsed as in markup.
     *
     * @param text any text
     * @param family {@code text}, {@code heading} or {@code symbol}
     * @param weight 100 to 900; the nearest bundled weight is taken
     * @param sizePt the type size in points, more than 0
     * @throws IllegalArgumentException if the family, weight or size is none of these
     */
    public synchronized double widthMm(String text, String family, int weight, double sizePt) {
        Typed typed = new Typed(text, family, weight, sizePt);
        Double known = widthsMm.get(typed);
        if (known == null) {
            set(typed);
            known = galley.widthPt(galley.whole()) / Plate.POINTS_PER_MM;
            widthsMm.put(typed, known);
        }
        return known;
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
    public synchronized int lines(String text, String family, int weight, double sizePt, double widthMm) {
        Boxed boxed = new Boxed(new Typed(text, family, weight, sizePt), widthMm);
        Integer known = numbers.get(boxed);
        if (known == null) {
            set(boxed.typed());
            known = galley.lines(widthMm * Plate.POINTS_PER_MM, true)
                    .orElseThrow(() -> new IllegalArgumentException("narrower than a character: " + widthMm + " mm"))
                    .size();
            numbers.put(boxed, known);
        }
        return known;
    }

    private void set(Typed typed) {
        if (!typed.equals(latest)) {
            galley = set(typed.text(), typed.family(), typed.weight(), typed.sizePt());
            latest = typed;
        }
    }

    private Galley set(String text, String family, int weight, double sizePt) {
        if (!(weight >= 100 && weight <= 900)) {
            throw new IllegalArgumentException("weight must be 100 to 900: " + weight);
        }
        if (!(sizePt >= Plate.LEAST_TYPE_PT && sizePt <= NumberScanner.MOST)) {
            throw new IllegalArgumentException("type size must be " + Plate.LEAST_TYPE_PT + " to "
                    + NumberScanner.MOST + " pt: " + sizePt);
        }
        try {
            Type type = new Type(Family.read(family), weight, sizePt, 0, false);
            SpanGatherer gatherer = new SpanGatherer(quotes);
            gatherer.add(text, Style.DEFAULT.withType(type));
            return Galley.of(gatherer.spans());
        } catch (BadValue e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }
}
