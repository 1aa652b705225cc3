package kitleaf.press.flow;

import kitleaf.press.drawing.Inset;
import kitleaf.press.drawing.PageArtist;
import kitleaf.press.markup.Anchor;
import kitleaf.press.markup.Element;
import kitleaf.press.markup.MarkupException;
import kitleaf.press.markup.Style;
import kitleaf.press.markup.Styles;
import kitleaf.press.type.Compositor;

/** A box of a given place and size in a drawing, in which blocks flow, at the largest size of type that fits. */
public final class FixedBox implements Inset {

    private final FlowReader.Node root;
    private final FlowReader reader;
    private final Setter setter;

    public FixedBox(Element box, Style style, Styles styles, Compositor compositor) {
        root = new FlowReader.Node(box, style, styles.quotes());
        reader = new FlowReader(root, styles, false);
        setter = new Setter(compositor, true);
    }

    @Override
    public void start(Element element) throws MarkupException {
        reader.start(element);
    }

    @Override
    public void text(String text) {
        reader.text(text);
    }

    @Override
    public boolean end(Element element) throws MarkupException {
        return reader.end(element) != null;
    }

    @Override
    public void draw(PageArtist artist) throws MarkupException {
        Element box = root.element;
        double heightMm = box.has("height") ? box.neededLength("height") : Double.POSITIVE_INFINITY;
        Block block = root.block();
        Laid laid = block.lay(box.neededLength("width"), heightMm, setter);
        double spareMm = heightMm < Double.POSITIVE_INFINITY ? heightMm - laid.heightMm() : 0;
        int align = box.word("align", "top", "middle", "bottom");
        double downMm = align < 0 ? 0 : spareMm * Anchor.values()[align].before;
        if (spareMm < -ColumnWidth.SLACK_MM) {
            artist.overfull(block.firstWords());
        }
        laid.drawing().at(box.number("x"), box.number("y") + downMm, artist);
    }
}
