package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitleaf.sizing.plan.search.Counts;
import kitleaf.sizing.plan.search.Front;
import kitleaf.sizing.plan.search.Patience;

/**
 * For every selection of pieces, the smallest boxes it can be cut from by cuts from edge to edge. A box of several
 * pieces is two boxes side by side or one below the other, so the boxes of a selection follow from those of its parts;
 * going through all parts of all selections, nothing is missed.
 */
final class Fronts {

    private final Counts counts;
    private final List<List<Shape>> shapes;
    private final double mostWidthMm;
    private final double mostHeightMm;
    private final Front[] fronts;

    private Fronts(Counts counts, List<List<Shape>> shapes, double mostWidthMm, double mostHeightMm) {
        this.counts = counts;
        this.shapes = shapes;
        this.mostWidthMm = mostWidthMm;
        this.mostHeightMm = mostHeightMm;
        this.fronts = new Front[counts.states()];
    }

    /**
     * Works out all boxes that are no larger than the largest cloth.
     *
     * @param shapes the ways each type may lie
     * @param mostWidthMm no wider box is kept
     * @param mostHeightMm no higher box is kept
     * @return empty if patience ended first
     */
    static Optional<Fronts> of(Counts counts, List<List<Shape>> shapes, double mostWidthMm, double mostHeightMm, Patience patience) {
        Fronts fronts = new Fronts(counts, shapes, mostWidthMm, mostHeightMm);
        for (int state = 0; state < counts.states(); state++) {
            if (!fronts.work(state, patience)) {
                return Optional.empty();
            }
        }
        return Optional.of(fronts);
    }

    private boolean work(int state, Patience patience) {
        Front front = new Front();
        fronts[state] = front;
        if (state == 0) {
            return true;
        }
        int first = counts.first(state);
        if (counts.one(first) == state) {
            shapes.get(first).stream().filter(shape -> shape.widthMm() <= mostWidthMm && shape.heightMm() <= mostHeightMm)
                    .forEach(shape -> front.add(shape.widthMm(), shape.heightMm()));
        }
        return counts.parts(state, part -> {
            // Each pair of parts once, and neither empty.
            if (part == 0 || part > state - part) {
                return true;
            }
            Front one = fronts[part];
            Front other = fronts[state - part];
            if (one.size() == 0 || other.size() == 0) {
                return patience.step();
            }
            front.addBeside(one, other, mostWidthMm);
            front.addBeside(other, one, mostWidthMm);
            front.addBelow(one, other, mostHeightMm);
            front.addBelow(other, one, mostHeightMm);
            return patience.steps(one.size() + other.size());
        });
    }

    Counts counts() {
        return counts;
    }

    /** The boxes of a selection; none if it fits no cloth. */
    Front of(int state) {
        return fronts[state];
    }

    /** Whether a selection can be cut from a cloth. */
    boolean fits(int state, double widthMm, double heightMm) {
        return fronts[state].leastHeight(widthMm) <= heightMm;
    }

    /** A selection and a box it fits into. */
    private record Box(int state, double widthMm, double heightMm) {
    }

    /** What a box is made of: a piece, or two boxes that a cut parts which runs so. */
    private record Made(Optional<Block> piece, EdgeCut.Run run, List<Box> parts) {
    }

    /** How a selection is cut from a box that is one of its own, or larger; it must fit and not be empty. */
    Block block(int state, double widthMm, double heightMm) {
        // A thousand like pieces are a thousand boxes deep: too many for calls within calls.
        List<Made> boxes = new ArrayList<>(List.of(made(new Box(state, widthMm, heightMm))));
        for (int at = 0; at < boxes.size(); at++) {
            boxes.get(at).parts().forEach(part -> boxes.add(made(part)));
        }
        // Parts stand after their boxes and in the order of these, so from the end each box finds the two before those of the last.
        Block[] blocks = new Block[boxes.size()];
        int parts = blocks.length;
        for (int at = blocks.length - 1; at >= 0; at--) {
            Made box = boxes.get(at);
            parts -= box.parts().size();
            int one = parts;
            blocks[at] = box.piece().orElseGet(() -> Block.Pair.of(box.run(), blocks[one], blocks[one + 1]));
        }
        return blocks[0];
    }

    private Made made(Box box) {
        int state = box.state();
        Front front = fronts[state];
        double height = front.leastHeight(box.widthMm());
        double width = front.leastWidth(height);
        if (!(height <= box.heightMm())) {
            throw new IllegalArgumentException("does not fit: " + box);
        }
        int first = counts.first(state);
        if (counts.one(first) == state) {
            int way = shapes.get(first).indexOf(new Shape(width, height));
            return new Made(Optional.of(new Block.Single(first, way, width, height)), null, List.of());
        }
        Made[] found = new Made[1];
        counts.parts(state, part -> {
            if (part == 0 || part == state) {
                return true;
            }
            // Written as in the making, so that the same doubles come out.
            Front one = fronts[part];
            Front other = fronts[state - part];
            double leftWidth = one.leastWidth(height);
            double topHeight = one.leastHeight(width);
            if (leftWidth + other.leastWidth(height) == width) {
                found[0] = new Made(Optional.empty(), EdgeCut.Run.DOWN,
                        List.of(new Box(part, leftWidth, height), new Box(state - part, other.leastWidth(height), height)));
            } else if (topHeight + other.leastHeight(width) == height) {
                found[0] = new Made(Optional.empty(), EdgeCut.Run.ACROSS,
                        List.of(new Box(part, width, topHeight), new Box(state - part, width, other.leastHeight(width))));
            }
            return found[0] == null;
        });
        return found[0];
    }
}
