package kitleaf.press;

/** A box of a given place and size in a drawing, in which blocks flow, at the largest size of type that fits. */
final class FixedBox {

    private final FlowReader.Node root;

    FixedBox(FlowReader.Node root) {
        this.root = root;
    }

    void draw(PageArtist artist, Setter setter) throws MarkupException {
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
