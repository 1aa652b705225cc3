package kitleaf.sizing.plan;

import java.util.List;

/**
 * A cloth and how it is cut. Pieces stand in it as numbers of kins of its group.
 *
 * @param stock the cloth
 * @param parts its panels with how each is cut
 */
record Filled(Stock stock, List<Part> parts) {

    /**
     * One panel.
     *
     * @param panel the panel
     * @param chain how it is cut
     */
    record Part(Stock.Panel panel, Chain chain) {
    }

    Filled {
        parts = List.copyOf(parts);
    }

    /** A cloth nothing is cut from. */
    static Filled untouched(Stock stock, Kerf kerf) {
        return new Filled(stock, stock.panels(kerf).stream().map(panel -> new Part(panel, Chain.NONE)).toList());
    }

    /** The area of the largest usable rectangle that stays, 0 if there is none. */
    double remnantMm2(Kerf kerf) {
        return parts.stream().mapToDouble(part -> part.chain().restMm2(part.panel(), kerf)).max().orElse(0);
    }
}
