package kitleaf.sizing.plan;

import java.util.List;

/**
 * How a rectangle of cloth is cut when one rectangle of it is to stay whole: blocks are cut off one after the other, each
 * from the left or from the top of what is left.
 *
 * @param steps the blocks, in the order in which they are cut off
 */
record Chain(List<Step> steps) {

    /** Nothing is cut. */
    static final Chain NONE = new Chain(List.of());

    /**
     * One block that is cut off.
     *
     * @param run which way the cut runs: down to take the block from the left, across to take it from the top
     * @param block what is cut off
     */
    record Step(EdgeCut.Run run, Block block) {
    }

    Chain {
        steps = List.copyOf(steps);
    }
}
