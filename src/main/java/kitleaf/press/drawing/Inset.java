package kitleaf.press.drawing;

import kitleaf.press.markup.Element;
import kitleaf.press.markup.MarkupException;
import kitleaf.press.markup.Style;

/** Something in a drawing that reads for itself what stands in it, and is drawn once that has been read whole. */
public interface Inset {

    /** Begins one. */
    interface Opener {
        Inset open(Element element, Style style);
    }

    void start(Element element) throws MarkupException;

    void text(String text);

    /** Whether that was its own end. */
    boolean end(Element element) throws MarkupException;

    void draw(PageArtist artist) throws MarkupException;
}
