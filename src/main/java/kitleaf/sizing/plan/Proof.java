package kitleaf.sizing.plan;

/**
 * What is proved of the plan for the cloths of one kind. The best plan leaves no piece without cloth, then costs the
 * least, then opens the fewest cloths on hand, then leaves the largest usable rectangle.
 *
 * @param optimal whether no plan is better
 * @param cutShort whether the search ended because its steps ran out, so that more of them may find a better plan
 * @param cost what has to be bought, in money, or in square millimetres where nothing has a price; 0 or more
 * @param leastCost no plan costs less; 0 to {@code cost}
 * @param cloths how many cloths on hand it opens
 * @param fewestCloths no plan that buys as little opens fewer; 0 to {@code cloths}
 * @param remnantMm2 the largest usable rectangle it leaves on these cloths, opened or not, 0 where none is usable
 * @param largestRemnantMm2 no plan that buys as little and opens as few leaves a larger one
 */
public record Proof(boolean optimal, boolean cutShort, double cost, double leastCost, int cloths, int fewestCloths,
                    double remnantMm2, double largestRemnantMm2) {

    /** The proof of a plan that is the best of all. */
    static Proof optimal(double cost, Outcome outcome) {
        return new Proof(true, false, cost, cost, outcome.cloths(), outcome.cloths(), outcome.largestMm2(), outcome.largestMm2());
    }

    /** How much more it may cost than the cheapest plan, as a part of its cost, 0 to 1. */
    public double costGap() {
        return cost > 0 ? (cost - leastCost) / cost : 0;
    }

    /** How much more rectangle the best plan may leave, as a part of that rectangle, 0 to 1. */
    public double remnantGap() {
        return largestRemnantMm2 > 0 ? (largestRemnantMm2 - remnantMm2) / largestRemnantMm2 : 0;
    }
}
