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
}
