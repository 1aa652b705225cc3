package kitleaf.sizing.plan;

import java.util.List;
import java.util.Optional;
import kitleaf.basket.Price;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.sizing.PieceReckoning;

/**
 * Which pieces are cut from which cloth, and what has to be bought for the others.
 *
 * @param cloths those that are cut, on hand in the order she wrote them, then those to be bought
 * @param buy shop cuts to buy
 * @param unplaced pieces no cloth on hand and no shop cut is large enough for
 * @param untouched cloths on hand that stay whole
 * @param nearMisses pieces whose cloth is on hand by name, but of another kind or count
 */
public record ClothPlan(List<PlannedCloth> cloths, List<Purchase> buy, List<PieceReckoning> unplaced,
                        List<ClothOnHand> untouched, List<NearMiss> nearMisses) {

    /** Copies the lists. */
    public ClothPlan {
        cloths = List.copyOf(cloths);
        buy = List.copyOf(buy);
        unplaced = List.copyOf(unplaced);
        untouched = List.copyOf(untouched);
        nearMisses = List.copyOf(nearMisses);
    }

    /**
     * A cloth on hand of the name a piece asks for that is not the cloth it describes.
     *
     * @param piece the piece
     * @param cloth the cloth on hand
     */
    public record NearMiss(PieceReckoning piece, ClothOnHand cloth) {
    }

    /** Whether every part of it is proved to be the best. */
    public boolean optimal() {
        return cloths.stream().allMatch(cloth -> cloth.proof().optimal());
    }

    /** What all purchases that have a price cost together; empty when none has one. */
    public Optional<Price> cost() {
        return buy.stream().flatMap(purchase -> purchase.cost().stream()).reduce(Price::and);
    }

    /** Whether there is nothing to cut, to buy or to tell of. */
    public boolean isEmpty() {
        return cloths.isEmpty() && unplaced.isEmpty();
    }
}
