package kitleaf.press.flow;

import java.util.ArrayList;
import java.util.List;
import kitleaf.press.drawing.PageArtist;
import kitleaf.press.markup.Element;
import kitleaf.press.markup.MarkupException;
import kitleaf.press.markup.Style;
import kitleaf.press.markup.Transform;

/** Markup of a drawing kept to be drawn later, once or often. */
final class Recording implements Laid.Drawing {

    /** Before an element that ends. */
    private static final Object END = new Object();

    private final Style style;
    /** Texts, elements that start, and what ends them. */
    private final List<Object> steps = new ArrayList<>(6);

    /** What is recorded stands in an element of that style. */
    Recording(Style style) {
        this.style = style;
    }

    void start(Element element) {
        steps.add(element);
    }

    void text(String text) {
        steps.add(text);
    }

    void end(Element element) {
        steps.add(END);
        steps.add(element);
    }

    /** Draws it with its origin at a place. */
    @Override
    public void at(double xMm, double yMm, PageArtist artist) throws MarkupException {
        if (steps.isEmpty()) {
            return;
        }
        artist.enter(style, Transform.translate(xMm, yMm));
        for (int i = 0; i < steps.size(); i++) {
            Object step = steps.get(i);
            if (step instanceof Element element) {
                artist.start(element);
            } else if (step == END) {
                artist.end((Element) steps.get(++i));
            } else {
                artist.text((String) step);
            }
        }
        artist.leave();
    }
}
