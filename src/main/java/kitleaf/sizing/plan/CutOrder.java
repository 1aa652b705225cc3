package kitleaf.sizing.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Cuts a filled cloth in order: flaws out of the way first, then part after part, each cut from edge to edge of the part
 * it divides. The cloth lies with its warp down.
 */
final class CutOrder {

    private final Kerf kerf;
    private final IntFunction<Wanted> next;
    private final boolean turning;
    private final List<Line> lines = new ArrayList<>();
    private final List<Placed> placed = new ArrayList<>();
    private final List<Remnant> remnants = new ArrayList<>();

    /**
     * A part of a cloth that hangs together while it is cut, laid with its warp down, without any kerf.
     *
     * @param xMm from the cloth's left edge
     * @param yMm from its top edge
     * @param widthMm above 0
     * @param heightMm above 0
     * @param cut the number of the last cut that set it free, 0 if none was needed
     */
    record Region(double xMm, double yMm, double widthMm, double heightMm, int cut) {

        /** Whether it is no larger than this, but for rounding. */
        boolean is(double width, double height) {
            return widthMm - width <= Stock.SLACK_MM && heightMm - height <= Stock.SLACK_MM;
        }

        /** What lies to the left of a line, once it is cut. */
        Region left(double atMm, int byCut) {
            return new Region(xMm, yMm, atMm, heightMm, byCut);
        }

        /** What lies from a place on to the right. */
        Region right(double fromMm, int byCut) {
            return new Region(xMm + fromMm, yMm, widthMm - fromMm, heightMm, byCut);
        }

        /** What lies above a line. */
        Region top(double atMm, int byCut) {
            return new Region(xMm, yMm, widthMm, atMm, byCut);
        }

        /** What lies from a place on down. */
        Region bottom(double fromMm, int byCut) {
            return new Region(xMm, yMm + fromMm, widthMm, heightMm - fromMm, byCut);
        }

        /** Whether anything is left of it. */
        boolean exists() {
            return widthMm > Stock.SLACK_MM && heightMm > Stock.SLACK_MM;
        }
    }

    /**
     * A cut.
     *
     * @param run which way
     * @param fromMm from the left or top edge of the part
     * @param part the part it divides
     */
    record Line(EdgeCut.Run run, double fromMm, Region part) {
    }

    /**
     * A piece.
     *
     * @param wanted the piece
     * @param lie how it lies
     * @param region where it lies
     */
    record Placed(Wanted wanted, Wanted.Lie lie, Region region) {
    }

    /**
     * Cuts a cloth.
     *
     * @param next gives the next piece of a kin
     */
    CutOrder(Kerf kerf, Filled filled, IntFunction<Wanted> next) {
        this.kerf = kerf;
        this.next = next;
        Stock stock = filled.stock();
        this.turning = stock.turning();
        columns(new Region(0, 0, stock.widthMm(), stock.heightMm(), 0), filled.parts());
        remnants.sort(Comparator.comparingDouble(Remnant::areaMm2).reversed());
    }

    /** The cuts, in their order. */
    List<Line> lines() {
        return lines;
    }

    /** The pieces, in the order in which they come off. */
    List<Placed> placed() {
        return placed;
    }

    /** What is left, the largest first. */
    List<Remnant> remnants() {
        return remnants;
    }

    private static boolean used(List<Filled.Part> parts) {
        return parts.stream().anyMatch(part -> !part.steps().isEmpty());
    }

    /** Cuts the columns between flaws apart, where something is cut from them. The thread before a panel is drawn from the flaw. */
    private void columns(Region cloth, List<Filled.Part> parts) {
        Region rest = cloth;
        for (double x : parts.stream().mapToDouble(part -> part.panel().xMm()).distinct().sorted().toArray()) {
            List<Filled.Part> column = parts.stream().filter(part -> part.panel().xMm() == x).toList();
            if (used(column)) {
                Region from = rest.xMm() < x ? rest.right(x - rest.xMm(), cut(EdgeCut.Run.DOWN, x - kerf.besideMm() - rest.xMm(), rest))
                        : rest;
                double width = column.get(0).panel().widthMm();
                if (from.is(width, from.heightMm())) {
                    rows(from, column);
                } else {
                    int cut = cut(EdgeCut.Run.DOWN, width, from);
                    rows(from.left(width, cut), column);
                    rest = from.right(width + kerf.besideMm(), cut);
                }
            } else {
                column.forEach(part -> remnant(part.panel()));
            }
        }
    }

    private void rows(Region column, List<Filled.Part> parts) {
        Region rest = column;
        for (Filled.Part part : parts) {
            Stock.Panel panel = part.panel();
            if (part.steps().isEmpty()) {
                remnant(panel);
            } else {
                Region from = rest.yMm() < panel.yMm()
                        ? rest.bottom(panel.yMm() - rest.yMm(), cut(EdgeCut.Run.ACROSS, panel.yMm() - kerf.belowMm() - rest.yMm(), rest))
                                : rest;
                if (from.is(from.widthMm(), panel.heightMm())) {
                    blocks(from, part);
                } else {
                    int cut = cut(EdgeCut.Run.ACROSS, panel.heightMm(), from);
                    blocks(from.top(panel.heightMm(), cut), part);
                    rest = from.bottom(panel.heightMm() + kerf.belowMm(), cut);
                }
            }
        }
    }

    private void blocks(Region panel, Filled.Part part) {
        Region rest = panel;
        for (Filled.Step step : part.steps()) {
            rest = step.run() == EdgeCut.Run.DOWN ? beside(rest, step.block()) : below(rest, step.block());
        }
        remnant(rest);
    }

    /** Cuts a block off the left of a part, and it apart; gives what is left. */
    private Region beside(Region part, Block block) {
        double width = block.widthMm() - kerf.besideMm();
        if (part.is(width, part.heightMm())) {
            apart(part, block);
            return part.right(part.widthMm(), part.cut());
        }
        int cut = cut(EdgeCut.Run.DOWN, width, part);
        apart(part.left(width, cut), block);
        return part.right(Math.min(part.widthMm(), block.widthMm()), cut);
    }

    private Region below(Region part, Block block) {
        double height = block.heightMm() - kerf.belowMm();
        if (part.is(part.widthMm(), height)) {
            apart(part, block);
            return part.bottom(part.heightMm(), part.cut());
        }
        int cut = cut(EdgeCut.Run.ACROSS, height, part);
        apart(part.top(height, cut), block);
        return part.bottom(Math.min(part.heightMm(), block.heightMm()), cut);
    }

    /** A part that is cut free, and what it is to be cut into. */
    private record Open(Region part, Block block) {
    }

    /** Cuts a block apart into its pieces; what was cut free last is taken up first. */
    private void apart(Region part, Block block) {
        Deque<Open> open = new ArrayDeque<>(List.of(new Open(part, block)));
        while (!open.isEmpty()) {
            Open next = open.pop();
            Region trimmed = trim(next.part(), next.block());
            if (next.block() instanceof Block.Single single) {
                piece(trimmed, single);
            } else if (next.block() instanceof Block.Beside pair) {
                double width = pair.left().widthMm() - kerf.besideMm();
                int cut = cut(EdgeCut.Run.DOWN, width, trimmed);
                both(new Open(trimmed.left(width, cut), pair.left()), new Open(trimmed.right(pair.left().widthMm(), cut), pair.right()),
                        open);
            } else if (next.block() instanceof Block.Below pair) {
                double height = pair.top().heightMm() - kerf.belowMm();
                int cut = cut(EdgeCut.Run.ACROSS, height, trimmed);
                both(new Open(trimmed.top(height, cut), pair.top()), new Open(trimmed.bottom(pair.top().heightMm(), cut), pair.bottom()),
                        open);
            }
        }
    }

    /** Of two parts, the one that is a piece already is taken up first. */
    private void both(Open one, Open other, Deque<Open> open) {
        boolean otherFirst = free(other) && !free(one);
        open.push(otherFirst ? one : other);
        open.push(otherFirst ? other : one);
    }

    private boolean free(Open it) {
        return it.block() instanceof Block.Single && it.part().is(it.block().widthMm() - kerf.besideMm(), it.block()
                .heightMm() - kerf.belowMm());
    }

    /**
     * Cuts off what a part has too much: all of it round a piece, and round several pieces what is worth keeping, so that
     * it stays in one. Of the two cuts that comes first whose order leaves the larger rectangle.
     */
    private Region trim(Region part, Block block) {
        boolean single = block instanceof Block.Single;
        double width = block.widthMm() - kerf.besideMm();
        double height = block.heightMm() - kerf.belowMm();
        boolean right = single ? part.widthMm() - width > Stock.SLACK_MM : kerf.usable(part.widthMm() - block.widthMm(), part.heightMm());
        boolean bottom = single ? part.heightMm() - height > Stock.SLACK_MM
                : kerf.usable(part.heightMm() - block.heightMm(), part.widthMm());
        boolean rightFirst = Math.max((part.widthMm() - block.widthMm()) * part.heightMm(), (part.heightMm() - block.heightMm()) * width)
                >= Math.max((part.heightMm() - block.heightMm()) * part.widthMm(), (part.widthMm() - block.widthMm()) * height);
        Region rest = part;
        for (boolean down : rightFirst ? new boolean[] {true, false} : new boolean[] {false, true}) {
            if (down && right) {
                int cut = cut(EdgeCut.Run.DOWN, width, rest);
                remnant(rest.right(Math.min(rest.widthMm(), block.widthMm()), cut));
                rest = rest.left(width, cut);
            } else if (!down && bottom) {
                int cut = cut(EdgeCut.Run.ACROSS, height, rest);
                remnant(rest.bottom(Math.min(rest.heightMm(), block.heightMm()), cut));
                rest = rest.top(height, cut);
            }
        }
        return rest;
    }

    private void piece(Region region, Block.Single single) {
        Wanted wanted = next.apply(single.index());
        placed.add(new Placed(wanted, wanted.lies(turning).get(single.shape()), region));
    }

    private int cut(EdgeCut.Run run, double fromMm, Region part) {
        lines.add(new Line(run, fromMm, part));
        return lines.size();
    }

    private void remnant(Stock.Panel panel) {
        remnants.add(new Remnant(panel.xMm(), panel.yMm(), panel.widthMm(), panel.heightMm(),
                kerf.usable(panel.widthMm(), panel.heightMm())));
    }

    private void remnant(Region region) {
        if (region.exists()) {
            remnants.add(new Remnant(region.xMm(), region.yMm(), region.widthMm(), region.heightMm(),
                    kerf.usable(region.widthMm(), region.heightMm())));
        }
    }

    /** The numbers of the pieces each cut sets free, by their places in {@link #placed}; a cut that frees none is not there. */
    Map<Integer, List<Integer>> frees() {
        return IntStream.rangeClosed(1, placed.size()).boxed().collect(Collectors.groupingBy(number -> placed.get(number - 1).region()
                .cut()));
    }
}
