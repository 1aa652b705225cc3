package kitleaf.sizing.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;

/**
 * Pieces that compete for the same cloths: they are planned together, and apart from all others.
 *
 * @param kind how their cloth is woven
 * @param count its threads to the inch
 * @param kerf what a cut takes away on it
 * @param kins the pieces
 * @param onHand the cloths on hand some of them may be cut from, in the order she wrote them
 * @param shop the shop cuts some of them may be cut from
 */
record Group(Cloth.Kind kind, Count count, Kerf kerf, List<Kin> kins, List<Stock> onHand, List<Stock> shop) {

    /**
     * Pieces that are alike to the knife: of one size, and to be cut from the same cloths.
     *
     * @param members the pieces, in the basket's order, 1 or more
     * @param name the cloth's name they ask for, in small letters, if they ask for one
     * @param onHand which of the group's cloths on hand they may be cut from
     * @param shop which of the group's shop cuts they may be cut from
     */
    record Kin(List<Wanted> members, Optional<String> name, Set<Integer> onHand, Set<Integer> shop) {

        Kin {
            members = List.copyOf(members);
            onHand = Set.copyOf(onHand);
            shop = Set.copyOf(shop);
        }
    }

    Group {
        kins = List.copyOf(kins);
        onHand = List.copyOf(onHand);
        shop = List.copyOf(shop);
    }

    /** How many there are of each kin. */
    List<Integer> numbers() {
        return kins.stream().map(kin -> kin.members().size()).toList();
    }

    /** The ways each kin may lie. */
    List<List<Shape>> shapes(boolean turning) {
        return kins.stream().map(kin -> kin.members().get(0).shapes(turning, kerf)).toList();
    }

    /** What a shop cut costs: its price, or its area in square millimetres where nothing has a price. */
    double cost(int cut) {
        Stock stock = shop.get(cut);
        return stock.cut().orElseThrow().price().map(price -> price.amount()).map(BigDecimal::doubleValue)
                .orElse(stock.widthMm() * stock.heightMm());
    }
}
