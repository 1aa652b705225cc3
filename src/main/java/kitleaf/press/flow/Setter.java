package kitleaf.press.flow;

import java.util.ArrayList;
import java.util.List;
import kitleaf.press.markup.Style;
import kitleaf.press.type.Compositor;
import kitleaf.press.type.Span;

/**
 * Sets the words of blocks.
 *
 * @param scale what all sizes are multiplied by
 * @param grown how large a text with a least size of its own is set: 0 as small as it may be, 1 as large
 * @param brief whether of several ways the last is taken wherever that may save a card
 * @param many whether what is laid is one of several cards
 * @param round the round that blocks stand in; null for none
 */
record Setter(Compositor compositor, double scale, double grown, boolean brief, boolean many, Round round) {

    /** Sets words as they are. */
    Setter(Compositor compositor, boolean many) {
        this(compositor, 1, 1, false, many, null);
    }

    Setter scaled(double by) {
        return new Setter(compositor, by, grown, brief, many, round);
    }

    Setter grown(double by) {
        return new Setter(compositor, scale, by, brief, many, round);
    }

    Setter briefly(boolean briefly) {
        return new Setter(compositor, scale, grown, briefly, many, round);
    }

    Setter oneOf(boolean several) {
        return new Setter(compositor, scale, grown, brief, several, round);
    }

    Setter in(Round other) {
        return other == round ? this : new Setter(compositor, scale, grown, brief, many, other);
    }

    /**
     * What a text's sizes are multiplied by.
     *
     * @param leastPt its own least size; 0 where its size goes with all others
     */
    double factor(Style style, double leastPt) {
        if (leastPt == 0) {
            return scale;
        }
        double floorPt = Math.max(Math.min(style.fitPt() * scale, style.type().sizePt()), leastPt);
        return Math.max(floorPt, floorPt + grown * (style.type().sizePt() - floorPt)) / style.type().sizePt();
    }

    /** A style so many times as large. */
    static Style scaled(Style style, double factor, double fitPt) {
        return factor == 1 && fitPt == style.fitPt() ? style
                : style.withType(style.type().withSize(style.type().sizePt() * factor)).withFit(fitPt);
    }

    static List<Span> scaled(List<Span> spans, double factor) {
        if (factor == 1) {
            return spans;
        }
        List<Span> scaled = new ArrayList<>(spans.size());
        for (Span span : spans) {
            scaled.add(new Span(span.text(), scaled(span.style(), factor, span.style().fitPt() * factor)));
        }
        return scaled;
    }
}
