package kitleaf.sizing;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import kitleaf.basket.Basket;
import kitleaf.basket.Units;
import kitleaf.sizing.cloth.ClothReckoning;
import kitleaf.sizing.plan.ClothPlan;
import kitleaf.sizing.plan.ClothPlanning;
import kitleaf.sizing.thread.ThreadReckoning;
import kitleaf.sizing.year.YearReckoning;

/**
 * All that is reckoned of a basket: its sizes and cuts, its threads and its cloth plan, each when it is first asked for.
 */
public final class Reckoning {

    /** Cut sizes step by quarter inches for those who think in inches: what a tape shows without squinting. */
    public static final double STEP_IN_MM = 6.35;

    /** Cut sizes step by half centimetres for those who think in centimetres. */
    public static final double STEP_CM_MM = 5;

    private final Basket basket;
    private final double cutStepMm;
    /** Kept once reckoned, since several sheets ask; null before, since some runs never do. */
    private List<PieceReckoning> pieces;
    /** Kept once reckoned, like the pieces. */
    private ThreadReckoning threads;
    /** Kept once reckoned, like the threads: no other sum takes as long. */
    private ClothPlan clothPlan;
    /** As it looked from the day asked for last, which is mostly asked for again. */
    private Optional<YearReckoning> year = Optional.empty();

    private Reckoning(Basket basket, double cutStepMm) {
        this.basket = Objects.requireNonNull(basket);
        this.cutStepMm = cutStepMm;
    }

    /** Reckons a whole basket. */
    public static Reckoning of(Basket basket) {
        double stepMm = basket.cutStepMm().orElse(basket.units() == Units.IN ? STEP_IN_MM : STEP_CM_MM);
        return new Reckoning(basket, stepMm);
    }

    /** What she wrote. */
    public Basket basket() {
        return basket;
    }

    /** What cut sizes were rounded up to, in millimetres. */
    public double cutStepMm() {
        return cutStepMm;
    }

    /** Its pieces, in the basket's order. */
    public synchronized List<PieceReckoning> pieces() {
        if (pieces == null) {
            OptionalDouble perHour = StitchPace.of(basket);
            pieces = basket.pieces().stream()
                    .map(piece -> new PieceReckoning(piece, ClothReckoning.of(piece, cutStepMm), StitchTally.of(piece, perHour)))
                    .toList();
        }
        return pieces;
    }

    /** Its threads, its stash and what to buy. */
    public synchronized ThreadReckoning threads() {
        if (threads == null) {
            threads = ThreadReckoning.of(basket);
        }
        return threads;
    }

    /** Which pieces are cut from which cloth, and what to buy. */
    public synchronized ClothPlan clothPlan() {
        if (clothPlan == null) {
            clothPlan = ClothPlanning.of(basket, pieces(), cutStepMm);
        }
        return clothPlan;
    }

    /** The cloth plan of a basket that tells of cloth on hand or of cuts in the shop; of another nobody knows what there is to cut from. */
    public Optional<ClothPlan> clothPlanToldOf() {
        return basket.clothSupply().told() ? Optional.of(clothPlan()) : Optional.empty();
    }

    /**
     * Its goals as they look from a day; empty when the basket has none.
     *
     * @param asOf the day to look from
     */
    public synchronized Optional<YearReckoning> year(LocalDate asOf) {
        if (year.isEmpty() || !year.get().asOf().equals(asOf)) {
            year = basket.goals().map(goals -> YearReckoning.of(basket, pieces(), asOf));
        }
        return year;
    }
}
