package kitleaf.press.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import kitleaf.press.markup.Anchor;
import kitleaf.press.markup.Style;

/**
 * Blocks one below the other.
 *
 * @param frame what is drawn round them, and what room they take; null for nothing
 */
record Stack(Stance stance, List<Block> blocks, Frame frame) implements Block {

    /**
     * Padding and rule of a box. A page does not end within it.
     *
     * @param paddingMm blank inside, on all sides
     * @param leastMm how high it is at least
     * @param mostMm how high it may be
     * @param style of the outline, or null where it is not ruled
     * @param shrink how far all type in it may be made smaller, so that all of it fits; 1 for not at all
     * @param round whether what stands in it stands in a round
     */
    record Frame(double paddingMm, double leastMm, double mostMm, double radiusMm, Style style, double shrink, boolean round) { }

    /** Sizes of type are found to so much of themselves. */
    private static final double STEP = 1 / 128.0;
    /** How often what stands in a round is put in its middle anew, since there it comes out higher or lower. */
    private static final int TRIES = 8;
    /** Stands for what is laid when it is known what room is left. */
    private static final Laid LATER = Laid.blank(0);

    /** Blocks that are nothing but one below the other. */
    static Stack of(List<Block> blocks) {
        return new Stack(Stance.PLAIN, blocks, null);
    }

    @Override
    public boolean isEmpty() {
        return frame == null && Block.super.isEmpty();
    }

    @Override
    public boolean takesRest() {
        return (frame == null || frame.shrink() == 1) && Block.super.takesRest();
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
        if (frame == null) {
            return pile(widthMm, roomMm, setter);
        }
        double insideMm = Math.min(roomMm, frame.mostMm());
        return frame.shrink() < 1 ? sized(widthMm, insideMm, setter) : framed(widthMm, insideMm, setter);
    }

    /** All type as large as fits: first as many words as fit at the least size, then all of them larger, then what grows by itself. */
    private Laid sized(double widthMm, double roomMm, Setter setter) {
        Laid full = framed(widthMm, roomMm, setter);
        if (full.whole() && full.lost() == 0) {
            return full;
        }
        double least = setter.scale() * frame.shrink();
        Laid small = framed(widthMm, roomMm, setter.scaled(least).grown(0));
        if (!small.whole()) {
            return small;
        }
        Setter largest = largest(least, setter.scale(), scale -> setter.scaled(scale).grown(0), widthMm, roomMm, small.lost());
        return framed(widthMm, roomMm, largest(0, 1, largest::grown, widthMm, roomMm, small.lost()));
    }

    /** The setter of the largest number in a range, of whose least all fits, with which no more is lost. */
    private Setter largest(double from, double to, DoubleFunction<Setter> setter, double widthMm, double roomMm, int lost) {
        double fits = from;
        for (double tried = to, over = to; tried - fits > STEP * to / 2; tried = (fits + over) / 2) {
            Laid laid = framed(widthMm, roomMm, setter.apply(tried));
            if (laid.whole() && laid.lost() <= lost) {
                fits = tried;
            } else {
                over = tried;
            }
        }
        return setter.apply(fits);
    }

    private Laid framed(double widthMm, double roomMm, Setter setter) {
        double padMm = frame.paddingMm();
        Laid inner = frame.round() ? round(widthMm - 2 * padMm, setter) : pile(widthMm - 2 * padMm, roomMm - 2 * padMm, setter);
        double heightMm = Math.max(frame.leastMm(), inner.heightMm() + 2 * padMm);
        Laid.Group group = new Laid.Group(2);
        if (frame.style() != null) {
            group.put(Laid.drawn(heightMm, (x, y, artist) -> artist.outline(frame.style(), frame.radiusMm(), x, y,
                    widthMm, heightMm)), 0, 0);
        }
        group.put(inner, padMm, padMm);
        group.pad(heightMm - group.heightMm());
        return heightMm > roomMm + ColumnWidth.SLACK_MM ? group.laid().notWhole() : group.laid();
    }

    /** All of it in a round, halfway down, or as near to that as it comes where it is higher or lower there than above and below. */
    private Laid round(double acrossMm, Setter setter) {
        Laid best = pile(acrossMm, acrossMm, setter.in(null));
        double bestMm = 0;
        double leastMm = Double.POSITIVE_INFINITY;
        double topMm = Math.max(0, (acrossMm - best.heightMm()) / 2);
        for (int i = 0; i < TRIES && leastMm > ColumnWidth.SLACK_MM; i++) {
            Laid laid = pile(acrossMm, acrossMm - topMm, setter.in(new Round(acrossMm, topMm)));
            double offMm = (acrossMm - laid.heightMm()) / 2 - topMm;
            if (i == 0 || laid.whole() && !best.whole() || laid.whole() == best.whole() && Math.abs(offMm) < leastMm) {
                best = laid;
                bestMm = topMm;
                leastMm = Math.abs(offMm);
            }
            topMm = Math.max(0, topMm + (i < 2 ? offMm : offMm / 2));
        }
        Laid.Group group = new Laid.Group(1);
        group.put(best, 0, bestMm);
        group.pad(bestMm);
        return group.laid();
    }

    private static Laid lay(Block block, double yMm, double widthMm, double roomMm, Setter setter) {
        if (setter.round() == null) {
            return block.lay(block.widthIn(widthMm), roomMm, setter);
        }
        Round round = setter.round().below(yMm);
        return block instanceof Stack || block instanceof Either ? block.lay(widthMm, roomMm, setter.in(round))
                : round.lay(block, roomMm, setter);
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
                    laid[i] = LATER;
                    rests++;
                } else {
                    laid[i] = lay(block, roomMm - leftMm - block.stance().afterMm(), widthMm, leftMm, setter);
                    leftMm -= laid[i].heightMm();
                }
            }
        }
        Laid.Group group = new Laid.Group(laid.length);
        double yMm = 0;
        for (int i = 0; i < laid.length; i++) {
            Block block = blocks.get(i);
            if (laid[i] != null) {
                Laid one = laid[i] != LATER ? laid[i] : block.lay(block.widthIn(widthMm), Math.max(0, leftMm / rests), setter);
                if (block.stance().align() == Anchor.END && roomMm < Double.POSITIVE_INFINITY) {
                    yMm = Math.max(yMm, roomMm - block.stance().beforeMm() - one.heightMm() - block.stance().afterMm());
                }
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
