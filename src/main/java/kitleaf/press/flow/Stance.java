package kitleaf.press.flow;

import kitleaf.press.markup.Anchor;
import kitleaf.press.markup.Element;
import kitleaf.press.markup.MarkupException;

/**
 * How a block stands among others.
 *
 * @param beforeMm blank above; may be less than 0
 * @param afterMm blank below
 * @param keep whether it may not be the last on a page or a card
 * @param breaks whether it begins a page or a card
 * @param width in a row
 * @param align in a row: whether at its top, middle or bottom; null for words on the row's baseline and all else centred on its capitals
 * @param many whether it is there only where a card is one of several
 */
record Stance(double beforeMm, double afterMm, boolean keep, boolean breaks, ColumnWidth width, Anchor align, boolean many) {

    static final Stance PLAIN = new Stance(0, 0, false, false, ColumnWidth.CONTENT, null, false);

    private static final String[] ALIGN = {"top", "middle", "bottom"};

    static Stance of(Element element) throws MarkupException {
        if (!element.hasOwn()) {
            return PLAIN;
        }
        int align = element.word("align", ALIGN);
        return new Stance(element.number("before"), element.number("after"), element.word("keep", "next") == 0,
                element.word("break", "before") == 0,
                element.has("width") ? element.value("width", ColumnWidth::read) : ColumnWidth.CONTENT,
                align < 0 ? null : Anchor.values()[align], element.word("many", "only") == 0);
    }
}
