package kitleaf.press;

import java.util.ArrayList;
import java.util.List;

/** Markup of a drawing kept to be drawn later, once or often. */
final class Recording {

    private interface Step {
        void on(PageArtist artist) throws MarkupException;
    }

    private final Style style;
    private final List<Step> steps = new ArrayList<>();

    /** What is recorded stands in an element of that style. */
    Recording(Style style) {
        this.style = style;
    }

    void start(Element element) {
        steps.add(artist -> artist.start(element));
    }

    void text(String text) {
        steps.add(artist -> artist.text(text));
    }

    void end(Element element) {
        steps.add(artist -> artist.end(element));
    }

    /** Draws it with its origin at a place. */
    void replay(PageArtist artist, double xMm, double yMm) throws MarkupException {
        artist.enter(style, Transform.translate(xMm, yMm));
        for (Step step : steps) {
            step.on(artist);
        }
        artist.leave();
    }
}
