package kitleaf.press;

/** A box of a given place and size in a drawing, in which blocks flow, at the largest size of type that fits. */
final class FixedBox {

    private static final double STEP = 1 / 32.0;

    private final FlowReader.Node root;

    FixedBox(FlowReader.Node root) {
        this.root = root;
    }

    void draw(PageArtist artist, Setter setter) throws MarkupException {
        Element box = root.element;
        double widthMm = box.neededLength("width");
        double heightMm = box.has("height") ? box.neededLength("height") : Double.POSITIVE_INFINITY;
        double least = box.has("shrink") ? box.neededLength("shrink") : 1;
        Block block = root.block();
        Laid laid = block.lay(widthMm, heightMm, setter);
        for (double scale = 1 - STEP; !laid.whole() && scale > least - STEP; scale -= STEP) {
            laid = block.lay(widthMm, heightMm, setter.scaled(Math.max(scale, least)));
        }
        double spareMm = heightMm < Double.POSITIVE_INFINITY ? heightMm - laid.heightMm() : 0;
        int align = box.word("align", "top", "middle", "bottom");
        double downMm = align < 0 ? 0 : spareMm * Anchor.values()[align].before;
        if (spareMm < -ColumnWidth.SLACK_MM) {
            artist.overfull(root.firstWords());
        }
        laid.drawing().at(box.number("x"), box.number("y") + downMm, artist);
    }
}
