package kitleaf.sizing.plan;

import java.util.List;

/**
 * A cloth and how it is cut. Pieces stand in it as numbers of kins of its group.
 *
 * @param stock the cloth
 * @param parts its panels with how each is cut
 */
record Filled(Stock stock, List<Part> parts) {

    Filled {
        parts = List.copyOf(parts);
    }

    /**
     * One panel, of which one rectangle stays whole: blocks are cut off one after the other, each from the left or from the top of
     * what is left.
     *
     * @param panel the panel
     * @param steps the blocks, in the order in which they are cut off
     */
    record Part(Stock.Panel panel, List<Step> steps) {

        Part {
            steps = List.copyOf(steps);
        }

        /** A panel nothing is cut from. */
        static Part untouched(Stock.Panel panel) {
            return new Part(panel, List.of());
        }

        /** One block cut off a panel, from the side that leaves the larger usable rectangle. */
        static Part of(Stock.Panel panel, Block block, Kerf kerf) {
            Part down = new Part(panel, List.of(new Step(EdgeCut.Run.DOWN, block)));
            Part across = new Part(panel, List.of(new Step(EdgeCut.Run.ACROSS, block)));
            return down.restMm2(kerf) >= across.restMm2(kerf) ? down : across;
        }

        /** The area of what stays whole, 0 if it is not usable. */
        double restMm2(Kerf kerf) {
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

    /**
     * One block that is cut off.
     *
     * @param run which way the cut runs: down to take the block from the left, across to take it from the top
     * @param block what is cut off
     */
    record Step(EdgeCut.Run run, Block block) {
    }

    /** A cloth nothing is cut from. */
    static Filled untouched(Stock stock, Kerf kerf) {
        return new Filled(stock, stock.panels(kerf).stream().map(Part::untouched).toList());
    }

    /** The area of the largest usable rectangle that stays, 0 if there is none. */
    double remnantMm2(Kerf kerf) {
        return parts.stream().mapToDouble(part -> part.restMm2(kerf)).max().orElse(0);
    }
}
