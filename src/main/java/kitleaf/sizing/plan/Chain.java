package kitleaf.sizing.plan;

import java.util.List;
import kitleaf.sizing.cutting.Block;

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

    /** One block cut off a panel, from the side that leaves the larger usable rectangle. */
    static Chain of(Block block, Stock.Panel panel, Kerf kerf) {
        Chain down = new Chain(List.of(new Step(EdgeCut.Run.DOWN, block)));
        Chain across = new Chain(List.of(new Step(EdgeCut.Run.ACROSS, block)));
        return down.restMm2(panel, kerf) >= across.restMm2(panel, kerf) ? down : across;
    }

    /** The area of what stays whole of a panel, 0 if it is not usable. */
    double restMm2(Stock.Panel panel, Kerf kerf) {
        double width = panel.widthMm() + kerf.besideMm();
        double height = panel.heightMm() + kerf.belowMm();
        for (Step step : steps) {
            if (step.run() == EdgeCut.Run.DOWN) {
                width -= step.block().widthMm();
            } else {
                height -= step.block().heightMm();
            }
        }
        return kerf.usableMm2(width, height);
    }
}
