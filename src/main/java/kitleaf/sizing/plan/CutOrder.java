package kitleaf.sizing.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Stream;

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
     */
    record Region(double xMm, double yMm, double widthMm, double heightMm) {

        /** The side that a cut parts. */
        double along(EdgeCut.Run run) {
            return run.side(widthMm, heightMm);
        }

        /** Whether it is no longer than this on that side, but for rounding. */
        boolean is(EdgeCut.Run run, double lengthMm) {
            return along(run) - lengthMm <= Stock.SLACK_MM;
        }

        /** What lies before a cut: to the left of it or above. */
        Region before(EdgeCut.Run run, double atMm) {
            return new Region(xMm, yMm, run.side(atMm, widthMm), run.side(heightMm, atMm));
        }

        /** What lies from a place on to the right or down. */
        Region after(EdgeCut.Run run, double fromMm) {
            return run == EdgeCut.Run.DOWN ? new Region(xMm + fromMm, yMm, widthMm - fromMm, heightMm)
                    : new Region(xMm, yMm + fromMm, widthMm, heightMm - fromMm);
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
        panels(new Region(0, 0, stock.widthMm(), stock.heightMm()), filled.parts(), EdgeCut.Run.DOWN);
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

    /**
     * Cuts the columns between flaws apart where something is cut from them, or the panels of a column. The thread before one is drawn
     * from the flaw.
     */
    private void panels(Region whole, List<Filled.Part> parts, EdgeCut.Run run) {
        Region rest = whole;
        for (double start : parts.stream().mapToDouble(part -> start(part, run)).distinct().sorted().toArray()) {
            List<Filled.Part> stretch = parts.stream().filter(part -> start(part, run) == start).toList();
            if (stretch.stream().allMatch(part -> part.steps().isEmpty())) {
                stretch.forEach(part -> remnant(part.panel()));
                continue;
            }
            double restMm = run.side(rest.xMm(), rest.yMm());
            Region from = rest;
            if (restMm < start) {
                cut(run, start - kerf.along(run) - restMm, rest);
                from = rest.after(run, start - restMm);
            }
            double lengthMm = run.side(stretch.get(0).panel().widthMm(), stretch.get(0).panel().heightMm());
            boolean all = from.is(run, lengthMm);
            if (!all) {
                cut(run, lengthMm, from);
            }
            Region panel = all ? from : from.before(run, lengthMm);
            if (run == EdgeCut.Run.DOWN) {
                panels(panel, stretch, EdgeCut.Run.ACROSS);
            } else {
                blocks(panel, stretch.get(0));
            }
            rest = all ? rest : from.after(run, lengthMm + kerf.along(run));
        }
    }

    private static double start(Filled.Part part, EdgeCut.Run run) {
        return run.side(part.panel().xMm(), part.panel().yMm());
    }

    private void blocks(Region panel, Filled.Part part) {
        Region rest = panel;
        for (Filled.Step step : part.steps()) {
            rest = off(step.run(), rest, step.block());
        }
        remnant(rest);
    }

    /** Cuts a block off the left or the top of a part, and it apart; gives what is left. */
    private Region off(EdgeCut.Run run, Region part, Block block) {
        double lengthMm = block.along(run) - kerf.along(run);
        if (part.is(run, lengthMm)) {
            apart(part, block);
            return part.after(run, part.along(run));
        }
        cut(run, lengthMm, part);
        apart(part.before(run, lengthMm), block);
        return part.after(run, Math.min(part.along(run), block.along(run)));
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
            } else if (next.block() instanceof Block.Pair pair) {
                EdgeCut.Run run = pair.run();
                double lengthMm = pair.one().along(run) - kerf.along(run);
                cut(run, lengthMm, trimmed);
                both(new Open(trimmed.before(run, lengthMm), pair.one()), new Open(trimmed.after(run, pair.one().along(run)), pair.other()),
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
        return it.block() instanceof Block.Single
                && Stream.of(EdgeCut.Run.values()).allMatch(run -> it.part().is(run, it.block().along(run) - kerf.along(run)));
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
        EdgeCut.Run first = rightFirst ? EdgeCut.Run.DOWN : EdgeCut.Run.ACROSS;
        for (EdgeCut.Run run : List.of(first, first.other())) {
            if (run == EdgeCut.Run.DOWN ? right : bottom) {
                double lengthMm = run.side(width, height);
                cut(run, lengthMm, rest);
                remnant(rest.after(run, Math.min(rest.along(run), block.along(run))));
                rest = rest.before(run, lengthMm);
            }
        }
        return rest;
    }

    private void piece(Region region, Block.Single single) {
        Wanted wanted = next.apply(single.index());
        placed.add(new Placed(wanted, wanted.lies(turning).get(single.shape()), region));
    }

    private void cut(EdgeCut.Run run, double fromMm, Region part) {
        lines.add(new Line(run, fromMm, part));
    }

    private void remnant(Stock.Panel panel) {
        remnant(new Region(panel.xMm(), panel.yMm(), panel.widthMm(), panel.heightMm()));
    }

    private void remnant(Region region) {
        if (region.exists()) {
            remnants.add(new Remnant(region.xMm(), region.yMm(), region.widthMm(), region.heightMm(),
                    kerf.usable(region.widthMm(), region.heightMm())));
        }
    }
}
