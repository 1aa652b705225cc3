package kitleaf.press.flow;

import java.util.ArrayList;
import java.util.List;

/**
 * What a page or a card may end before or after, with the blank around it.
 *
 * @param keep whether it may not be the last on a page
 * @param breaks whether it begins a page
 * @param block what is laid in the room that is left, once that is known; null where it is laid already
 * @param repeated what stands above it where it is the first on a page; null for nothing
 */
record FlowPart(Laid laid, double beforeMm, double afterMm, boolean keep, boolean breaks, Block block, Laid repeated) {

    double heightMm() {
        return beforeMm + laid.heightMm() + afterMm;
    }

    FlowPart closer(double by) {
        return new FlowPart(laid, beforeMm * by, afterMm * by, keep, breaks, block, repeated);
    }

    private FlowPart laidAs(Laid now) {
        return new FlowPart(now, beforeMm, afterMm, keep, breaks, null, repeated);
    }

    /** The same below what is repeated where it begins a page; null for nothing. */
    FlowPart under(Laid heads) {
        return new FlowPart(laid, beforeMm, afterMm, keep, breaks, block, heads);
    }

    /** The same, never the last on a page. */
    FlowPart kept() {
        return new FlowPart(laid, beforeMm, afterMm, true, breaks, block, repeated);
    }

    FlowPart around(Stance stance) {
        return first(stance).last(stance);
    }

    private FlowPart first(Stance stance) {
        return new FlowPart(laid, beforeMm + stance.beforeMm(), afterMm, keep, breaks || stance.breaks(), block, repeated);
    }

    private FlowPart last(Stance stance) {
        return new FlowPart(laid, beforeMm, afterMm + stance.afterMm(), keep || stance.keep(), breaks, block, repeated);
    }

    /** A part that is laid, with nothing around it. */
    static FlowPart of(Laid laid) {
        return new FlowPart(laid, 0, 0, false, false, null, null);
    }

    /** A part that will be laid in the room that is left: as high as it is in none, and whole if it is so in all. */
    static FlowPart rest(Block block, double widthMm, double roomMm, Setter setter) {
        Laid least = Laid.blank(block.lay(widthMm, 0, setter).heightMm());
        return new FlowPart(block.lay(widthMm, roomMm, setter).whole() ? least : least.notWhole(), 0, 0, false, false, block, null);
    }

    /** The parts of a block in a width, with the blank around it; none where it is not there. */
    static List<FlowPart> of(Block block, double widthMm, double roomMm, Setter setter) {
        if (!block.isThere(setter)) {
            return List.of();
        }
        double inMm = block.widthIn(widthMm);
        List<FlowPart> parts = new ArrayList<>(block.flow(inMm, roomMm, setter));
        if (!parts.isEmpty()) {
            parts.set(0, parts.get(0).first(block.stance()));
            parts.set(parts.size() - 1, parts.get(parts.size() - 1).last(block.stance()));
        }
        return parts;
    }

    /** The height of some, one below the other. */
    static double heightMm(List<FlowPart> parts) {
        double sumMm = 0;
        for (FlowPart part : parts) {
            sumMm += part.heightMm();
        }
        return sumMm;
    }

    /** The parts of a room, to be drawn from its top; what takes the room that is left has it now. */
    static Laid pile(List<FlowPart> room, double widthMm, double roomMm, Setter setter) {
        double leftMm = roomMm;
        int rests = 0;
        for (FlowPart part : room) {
            leftMm -= part.block == null ? part.heightMm() : part.beforeMm + part.afterMm;
            rests += part.block == null ? 0 : 1;
        }
        Laid.Group group = new Laid.Group(room.size() + 1);
        double yMm = 0;
        if (!room.isEmpty() && room.get(0).repeated != null) {
            group.put(room.get(0).repeated, 0, 0);
            yMm = group.heightMm();
        }
        for (FlowPart part : room) {
            // Half of what is blank below the last may hang over, so that less is left than it takes.
            FlowPart now = part.block == null ? part : part.laidAs(part.block.lay(part.block.widthIn(widthMm),
                    Math.max(part.laid.heightMm(), leftMm / rests), setter));
            group.put(now.laid, 0, yMm + now.beforeMm);
            yMm += now.heightMm();
        }
        return group.laid();
    }
}
