package kitleaf.basket.cloth;

import java.util.List;
import java.util.Objects;

/**
 * The cloth she has, the sizes she can buy, and how she cuts.
 *
 * @param onHand what she has, in the order she wrote it
 * @param cuts the sizes cloth is sold in, in the order she wrote them; the usual ones if she gave none
 * @param cutsGiven whether she gave them herself
 * @param cutting how she cuts
 */
public record ClothSupply(List<ClothOnHand> onHand, List<ClothCut> cuts, boolean cutsGiven, Cutting cutting) {

    /**
     * The sizes cloth is usually sold in, the width across the bolt (common practice, no source). Inches are 25.4 mm:
     * 27 x 18 in, 13 x 18 in and 54 x 18 in.
     */
    public static final List<ClothCut> USUAL_CUTS = List.of(
            ClothCut.usual("fat quarter", 27 * 25.4, 18 * 25.4),
            ClothCut.usual("fat eighth", 13 * 25.4, 18 * 25.4),
            ClothCut.usual("half yard", 54 * 25.4, 18 * 25.4),
            ClothCut.usual("50 x 70 cm cut", 700, 500));

    /** No cloth on hand, the usual cuts and the usual cutting. */
    public static final ClothSupply NONE = new ClothSupply(List.of(), USUAL_CUTS, false, Cutting.USUAL);

    /** Whether she wrote of cloth at all, so that a plan is among what she waits for. */
    public boolean told() {
        return cutsGiven || !onHand.isEmpty();
    }

    /** Copies the lists. */
    public ClothSupply {
        onHand = List.copyOf(onHand);
        cuts = List.copyOf(cuts);
        Objects.requireNonNull(cutting);
    }
}
