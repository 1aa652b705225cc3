package kitleaf.basket.cloth;

import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.Price;

/**
 * A size cloth is sold in.
 *
 * @param name what the shop calls it
 * @param widthMm {@value ClothOnHand#LEAST_MM} to {@value ClothOnHand#MOST_MM}
 * @param heightMm {@value ClothOnHand#LEAST_MM} to {@value ClothOnHand#MOST_MM}
 * @param warp which way the warp runs in it: {@code DOWN} is along its height
 * @param turning whether pieces may be cut from it turned by a quarter
 * @param price what one costs, if she said it
 * @param cloth the name of the only cloth it is sold in; any if empty
 * @param kind the only kind of cloth it is sold in; any if empty
 * @param count the only count it is sold in; any if empty
 */
public record ClothCut(String name, double widthMm, double heightMm, Cloth.WarpRun warp, boolean turning,
                       Optional<Price> price, Optional<String> cloth, Optional<Cloth.Kind> kind, Optional<Count> count) {

    /** Refuses other sizes. */
    public ClothCut {
        Objects.requireNonNull(name);
        Objects.requireNonNull(warp);
        Objects.requireNonNull(price);
        Objects.requireNonNull(cloth);
        Objects.requireNonNull(kind);
        Objects.requireNonNull(count);
        if (!ClothOnHand.sized(widthMm, heightMm)) {
            throw new IllegalArgumentException("no cloth is sold " + widthMm + " x " + heightMm);
        }
    }

    /** A cut of any cloth, warp down, without a price; pieces may be turned on it, for most are higher than such cuts. */
    public static ClothCut usual(String name, double widthMm, double heightMm) {
        return new ClothCut(name, widthMm, heightMm, Cloth.WarpRun.DOWN, true, Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty());
    }

    /**
     * Whether such a cloth is sold in this cut: its name, kind and count are the cut's, where the cut has them. Names
     * are one but for case and the spaces around them.
     */
    public boolean soldIn(Cloth sold) {
        return cloth.map(only -> sold.name().filter(name -> Cloth.sameName(only, name)).isPresent()).orElse(true)
                && kind.map(only -> only == sold.kind()).orElse(true)
                && count.map(only -> only.same(sold.count())).orElse(true);
    }
}
