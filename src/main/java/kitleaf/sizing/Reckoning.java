package kitleaf.sizing;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.basket.Units;
import kitleaf.sizing.cloth.ClothReckoning;
import kitleaf.sizing.thread.ThreadReckoning;
import kitleaf.sizing.year.YearReckoning;

/**
 * All that is reckoned of a basket.
 *
 * @param basket what she wrote
 * @param cutStepMm what cut sizes were rounded up to
 * @param pieces in the basket's order
 */
public record Reckoning(Basket basket, double cutStepMm, List<PieceReckoning> pieces) {

    /** Cut sizes step by quarter inches for those who think in inches: what a tape shows without squinting. */
    public static final double STEP_IN_MM = 6.35;

    /** Cut sizes step by half centimetres for those who think in centimetres. */
    public static final double STEP_CM_MM = 5;

    /** Copies the list. */
    public Reckoning {
        Objects.requireNonNull(basket);
        pieces = List.copyOf(pieces);
    }

    /** Reckons a whole basket. */
    public static Reckoning of(Basket basket) {
        double stepMm = basket.cutStepMm().orElse(basket.units() == Units.IN ? STEP_IN_MM : STEP_CM_MM);
        List<PieceReckoning> pieces = basket.pieces().stream()
                .map(piece -> new PieceReckoning(piece, ClothReckoning.of(piece, stepMm), StitchTally.of(piece)))
                .toList();
        return new Reckoning(basket, stepMm, pieces);
    }

    /** Its threads, its stash and what to buy; reckoned anew at every call, so keep what it gives. */
    public ThreadReckoning threads() {
        return ThreadReckoning.of(basket);
    }

    /**
     * Its goals as they look from a day; empty when the basket has none. Reckoned anew at every call, so keep what it gives.
     *
     * @param asOf the day to look from
     */
    public Optional<YearReckoning> year(LocalDate asOf) {
        return basket.goals().map(goals -> YearReckoning.of(basket, pieces, asOf));
    }
}
