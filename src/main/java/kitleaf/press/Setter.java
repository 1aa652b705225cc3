package kitleaf.press;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets the words of blocks.
 *
 * @param scale what all sizes are multiplied by
 * @param brief whether of several ways the last is taken wherever that may save a card
 * @param many whether what is laid is one of several cards
 */
record Setter(Compositor compositor, double scale, boolean brief, boolean many) {

    Setter scaled(double by) {
        return new Setter(compositor, by, brief, many);
    }

    Setter briefly(boolean briefly) {
        return new Setter(compositor, scale, briefly, many);
    }

    Setter oneOf(boolean several) {
        return new Setter(compositor, scale, brief, several);
    }

    Style scaled(Style style) {
        return scale == 1 ? style : style.withType(style.type().withSize(style.type().sizePt() * scale)).withFit(style.fitPt() * scale);
    }

    List<Span> scaled(List<Span> spans) {
        if (scale == 1) {
            return spans;
        }
        List<Span> scaled = new ArrayList<>(spans.size());
        for (Span span : spans) {
            scaled.add(new Span(span.text(), scaled(span.style())));
        }
        return scaled;
    }
}
