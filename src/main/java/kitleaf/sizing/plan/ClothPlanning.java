package kitleaf.sizing.plan;

import java.util.List;
import kitleaf.basket.Basket;
import kitleaf.sizing.PieceReckoning;

/** Plans which pieces are cut from which cloth. */
public final class ClothPlanning {

    private ClothPlanning() {
    }

    /**
     * The plan for all pieces that are not cut yet: neither begun, nor finished, nor said to be cut.
     *
     * @param pieces the basket's pieces, reckoned
     * @param stepMm what cut sizes are rounded up to, in millimetres, above 0
     * @param stopwatch how long to search
     */
    public static ClothPlan of(Basket basket, List<PieceReckoning> pieces, double stepMm, Stopwatch stopwatch) {
        throw new UnsupportedOperationException();
    }
}
