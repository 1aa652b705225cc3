package kitleaf.sizing.plan;

/**
 * What the plan for the cloths of one kind comes to, and whether it is proved. The best plan leaves no piece without cloth, then costs
 * the least, then opens the fewest cloths on hand, then leaves the largest usable rectangle.
 *
 * @param optimal whether it is proved that no plan is better
 * @param cost what has to be bought, in money, or in square millimetres where nothing has a price; 0 or more
 * @param cloths how many cloths on hand it opens
 * @param remnantMm2 the largest usable rectangle it leaves on these cloths, opened or not, 0 where none is usable
 */
public record Proof(boolean optimal, double cost, int cloths, double remnantMm2) {
}
