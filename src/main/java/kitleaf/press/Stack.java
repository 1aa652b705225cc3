package kitleaf.press;

import java.util.ArrayList;
import java.util.List;

/**
 * Blocks one below the other.
 *
 * @param frame what is drawn round them, and what room they take; null for nothing
 */
record Stack(Stance stance, List<Block> blocks, Frame frame) implements Block {

    /**
     * Padding, tint and rule of a box. A page does not end within it.
     *
     * @param paddingMm blank inside, on all sides
     * @param leastMm how high it is at least
     * @param mostMm how high it may be
     * @param style of the outline, or null where it is neither tinted nor ruled
     */
    record Frame(double paddingMm, double leastMm, double mostMm, double radiusMm, Style style) { }

    /** Blocks that are nothing but one below the other. */
    static Stack of(List<Block> blocks) {
        return new Stack(Stance.PLAIN, blocks, null);
    }

    @Override
    public boolean isEmpty() {
        return frame == null && blocks.stream().allMatch(Block::isEmpty);
    }

    @Override
    public String firstWords() {
        return blocks.stream().map(Block::firstWords).filter(words -> !words.isEmpty()).findFirst().orElse("");
    }

    @Override
    public boolean takesRest() {
        return blocks.stream().anyMatch(Block::takesRest);
    }

    @Override
    public double naturalMm(Setter setter) {
        double most = 0;
        for (Block block : blocks) {
            if (block.isThere(setter)) {
                ColumnWidth width = block.stance().width();
                most = Math.max(most, width.kind() == ColumnWidth.Kind.MILLIMETRES ? width.number() : block.naturalMm(setter));
            }
        }
        return most + (frame == null ? 0 : 2 * frame.paddingMm());
    }

    @Override
    public Laid lay(double widthMm, double roomMm, Setter setter) {
        return frame == null ? pile(widthMm, roomMm, setter) : framed(widthMm, Math.min(roomMm, frame.mostMm()), setter);
    }

    private Laid framed(double widthMm, double roomMm, Setter setter) {
        double padMm = frame.paddingMm();
        Laid inner = pile(widthMm - 2 * padMm, roomMm - 2 * padMm, setter);
        double heightMm = Math.max(frame.leastMm(), inner.heightMm() + 2 * padMm);
        Laid.Group group = new Laid.Group(2);
        group.put(Laid.drawn(heightMm, (x, y, artist) -> artist.outline(frame, x, y, widthMm, heightMm)), 0, 0);
        group.put(inner, padMm, padMm);
        return heightMm > roomMm + ColumnWidth.SLACK_MM ? group.laid().notWhole() : group.laid();
    }

    private Laid pile(double widthMm, double roomMm, Setter setter) {
        Laid[] laid = new Laid[blocks.size()];
        double leftMm = roomMm;
        int rests = 0;
        for (int i = 0; i < laid.length; i++) {
            Block block = blocks.get(i);
            if (block.isThere(setter)) {
                leftMm -= block.stance().beforeMm() + block.stance().afterMm();
                if (block.takesRest() && roomMm < Double.POSITIVE_INFINITY) {
                    rests++;
                } else {
                    laid[i] = block.lay(block.widthIn(widthMm), leftMm, setter);
                    leftMm -= laid[i].heightMm();
                }
            }
        }
        Laid.Group group = new Laid.Group(laid.length);
        double yMm = 0;
        for (int i = 0; i < laid.length; i++) {
            Block block = blocks.get(i);
            if (block.isThere(setter)) {
                Laid one = laid[i] != null ? laid[i] : block.lay(block.widthIn(widthMm), Math.max(0, leftMm / rests), setter);
                group.put(one, 0, yMm + block.stance().beforeMm());
                yMm += block.stance().beforeMm() + one.heightMm() + block.stance().afterMm();
            }
        }
        group.pad(yMm - group.heightMm());
        if (yMm > roomMm + ColumnWidth.SLACK_MM) {
            group.notWhole();
        }
        return group.laid();
    }

    @Override
    public List<FlowPart> flow(double widthMm, double roomMm, Setter setter) {
        if (frame != null) {
            return Block.super.flow(widthMm, roomMm, setter);
        }
        List<FlowPart> parts = new ArrayList<>();
        blocks.forEach(block -> parts.addAll(FlowPart.of(block, widthMm, roomMm, setter)));
        return parts;
    }
}
