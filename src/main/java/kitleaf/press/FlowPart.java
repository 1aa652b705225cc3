package kitleaf.press;

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

    /** The parts of a block at a width. Stacks are parted between their blocks, however deep. */
    static List<FlowPart> of(Block block, double widthMm, double roomMm, Setter setter) {
        List<FlowPart> parts = new ArrayList<>();
        add(block, widthMm, roomMm, setter, parts);
        return parts;
    }

    private static void add(Block block, double widthMm, double roomMm, Setter setter, List<FlowPart> parts) {
        if (!block.isThere(setter)) {
            return;
        }
        Stance stance = block.stance();
        double inMm = block.widthIn(widthMm);
        if (block.takesRest()) {
            parts.add(new FlowPart(block.lay(inMm, 0, setter), stance.beforeMm(), stance.afterMm(), stance.keep(), stance.breaks(), block, null));
            return;
        }
        int from = parts.size();
        if (block instanceof Stack stack && stack.frame() == null) {
            stack.blocks().forEach(it -> add(it, inMm, roomMm, setter, parts));
        } else {
            Laid repeated = block.repeated(inMm, setter);
            for (Laid laid : block.parts(inMm, roomMm, setter)) {
                parts.add(new FlowPart(laid, 0, 0, false, false, null, parts.size() == from ? null : repeated));
            }
        }
        if (parts.size() > from) {
            FlowPart first = parts.get(from);
            parts.set(from, new FlowPart(first.laid, first.beforeMm + stance.beforeMm(), first.afterMm, first.keep, first.breaks || stance.breaks(), first.block, first.repeated));
            int end = parts.size() - 1;
            FlowPart last = parts.get(end);
            parts.set(end, new FlowPart(last.laid, last.beforeMm, last.afterMm + stance.afterMm(), last.keep || stance.keep(), last.breaks, last.block, last.repeated));
        }
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
            FlowPart now = part.block == null ? part : part.laidAs(part.block.lay(part.block.widthIn(widthMm), Math.max(0, leftMm / rests), setter));
            group.put(now.laid, 0, yMm + now.beforeMm);
            yMm += now.heightMm();
        }
        return group.laid();
    }
}
