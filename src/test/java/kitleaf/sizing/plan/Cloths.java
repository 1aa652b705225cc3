package kitleaf.sizing.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import kitleaf.basket.Basket;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Goal;
import kitleaf.basket.Margins;
import kitleaf.basket.Pace;
import kitleaf.basket.Paper;
import kitleaf.basket.Piece;
import kitleaf.basket.Price;
import kitleaf.basket.Printer;
import kitleaf.basket.Progress;
import kitleaf.basket.Tags;
import kitleaf.basket.Units;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Cutting;
import kitleaf.basket.cloth.Flaw;
import kitleaf.basket.cloth.Shrink;
import kitleaf.basket.thread.PutUp;
import kitleaf.sizing.Reckoning;

/**
 * Cloths and pieces for tests. The cloth has 25.4 threads to the inch, worked over one: a stitch is 1 mm, a chart of 40 x
 * 30 without margins is cut 40 x 30 mm, and where nothing frays a cut takes one thread of 1 mm away.
 */
final class Cloths {

    static final Count FINE = new Count(25.4, 25.4);

    private Cloths() { }

    static Piece piece(String id, int widthMm, int heightMm) {
        return piece(id, widthMm, heightMm, Optional.empty());
    }

    static Piece piece(String id, int widthMm, int heightMm, Optional<String> cloth) {
        return piece(id, widthMm, heightMm, new Cloth(cloth, Cloth.Kind.LINEN, FINE, 1, Shrink.NONE, Cloth.Counted.AFTER,
                Cloth.WarpRun.DOWN, Cloth.Dyeing.NONE, false), Progress.NONE);
    }

    static Piece piece(String id, int widthMm, int heightMm, Cloth cloth, Progress progress) {
        return new Piece(id, id, Optional.empty(), new ChartSize(widthMm, heightMm), cloth, Optional.empty(), Margins.all(0), true,
                List.of(), List.of(), Optional.empty(), progress, Goal.NONE);
    }

    static ClothOnHand onHand(String name, double widthMm, double heightMm, boolean turning, Flaw... flaws) {
        return new ClothOnHand(name, Cloth.Kind.LINEN, FINE, widthMm, heightMm, Cloth.WarpRun.DOWN, Optional.empty(), turning, List.of(flaws));
    }

    static ClothCut cut(String name, double widthMm, double heightMm, String price) {
        return new ClothCut(name, widthMm, heightMm, Cloth.WarpRun.DOWN, false,
                price.isEmpty() ? Optional.empty() : Optional.of(new Price(new BigDecimal(price), "XTS")), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Supplies of which no cut frays and remnants from 2 mm on are worth keeping. */
    static ClothSupply supply(List<ClothOnHand> onHand, List<ClothCut> cuts) {
        return new ClothSupply(onHand, cuts, true, new Cutting(0, 2));
    }

    static Basket basket(ClothSupply supply, List<Piece> pieces) {
        return new Basket("Net loft", Locale.ENGLISH, new Paper("A4", 210, 297), Units.CM, false, Printer.TRUE, OptionalDouble.of(1), List.of(PutUp.COTTON), List.of(),
                Map.of(), Optional.empty(), Tags.USUAL, supply, Pace.UNSAID, List.of(), Optional.empty(), pieces);
    }

    /** The groups in which pieces are planned. */
    static List<Group> groups(ClothSupply supply, List<Piece> pieces) {
        return Grouping.of(supply, Reckoning.of(basket(supply, pieces)).pieces().stream().map(piece -> Wanted.of(piece, 1)).toList());
    }

    static ClothPlan plan(ClothSupply supply, Piece... pieces) {
        return plan(supply, List.of(pieces));
    }

    static ClothPlan plan(ClothSupply supply, List<Piece> pieces) {
        return Reckoning.of(basket(supply, pieces)).clothPlan();
    }
}
