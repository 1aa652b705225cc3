package kitleaf.sizing.plan;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.Price;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.Count;

/**
 * Shop cuts of one size and one cloth to buy.
 *
 * @param cut the shop cut
 * @param number how many, 1 or more
 * @param cloth the cloth's name, if a piece asks for one
 * @param kind how it is to be woven
 * @param count its threads to the inch
 */
public record Purchase(ClothCut cut, int number, Optional<String> cloth, Cloth.Kind kind, Count count) {

    /** Refuses a missing part. */
    public Purchase {
        Objects.requireNonNull(cut);
        Objects.requireNonNull(cloth);
        Objects.requireNonNull(kind);
        Objects.requireNonNull(count);
    }

    /** What they cost together, where the cut has a price. */
    public Optional<Price> cost() {
        return cut.price().map(price -> new Price(price.amount().multiply(BigDecimal.valueOf(number)), price.currency()));
    }

    /** The same with so many more. */
    Purchase and(int more) {
        return new Purchase(cut, number + more, cloth, kind, count);
    }
}
