package kitleaf.sizing.plan;

import java.math.BigDecimal;
import java.util.List;
import kitleaf.basket.Cloth;
import kitleaf.basket.Count;
import kitleaf.sizing.cutting.Shape;

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

    Group {
        kins = List.copyOf(kins);
        onHand = List.copyOf(onHand);
        shop = List.copyOf(shop);
    }

    /** How many there are of each kin. */
    List<Integer> numbers() {
        return kins.stream().map(Kin::number).toList();
    }

    /** The ways each kin may lie. */
    List<List<Shape>> shapes(boolean turning) {
        return kins.stream().map(kin -> kin.shapes(turning, kerf)).toList();
    }

    /** What a shop cut costs: its price, or its area in square millimetres where nothing has a price. */
    double cost(int cut) {
        Stock stock = shop.get(cut);
        return stock.cut().orElseThrow().price().map(price -> price.amount()).map(BigDecimal::doubleValue)
                .orElse(stock.widthMm() * stock.heightMm());
    }
}
