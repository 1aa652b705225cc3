package kitleaf.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import kitleaf.basket.Amount;
import kitleaf.basket.Basket;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Goal;
import kitleaf.basket.Goals;
import kitleaf.basket.Margins;
import kitleaf.basket.Pace;
import kitleaf.basket.Paper;
import kitleaf.basket.Piece;
import kitleaf.basket.Printer;
import kitleaf.basket.Progress;
import kitleaf.basket.Tags;
import kitleaf.basket.Units;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Cutting;
import kitleaf.basket.cloth.Shrink;
import kitleaf.sizing.cloth.ClothReckoning;
import org.junit.jupiter.api.Test;

class ReckoningTests {

    private static final ClothSupply A_CLOTH = new ClothSupply(List.of(new ClothOnHand("Sailcloth", Cloth.Kind.LINEN, new Count(28, 28),
            600, 500, Cloth.WarpRun.DOWN, Optional.empty(), false, List.of())), List.of(), false, Cutting.USUAL);
    private static final Goals GOALS = new Goals(2027, OptionalInt.empty(), List.of(), Goals.By.NUMBER, 0.7, Optional.empty(), Optional.empty(),
            OptionalLong.empty());
    private static final OptionalDouble USUAL_STEP = OptionalDouble.empty();
    private static final Optional<Goals> NO_GOALS = Optional.empty();

    private static Basket basket(Units units, OptionalDouble stepMm, ClothSupply supply, Optional<Goals> goals) {
        return new Basket("Net loft", Locale.ENGLISH, new Paper("A4", 210, 297), units, false, Printer.TRUE, stepMm, List.of(), List.of(),
                Map.of(), Optional.empty(), Tags.USUAL, supply, new Pace(OptionalDouble.of(10), OptionalDouble.of(7)), List.of(), goals,
                List.of(piece(false, Progress.NONE)));
    }

    /** 28 stitches over two on 28 threads to the inch are 50.8 mm; with margins of 2 mm 54.8. */
    private static Piece piece(boolean cut, Progress progress) {
        Cloth cloth = new Cloth(Optional.empty(), Cloth.Kind.LINEN, new Count(28, 28), 2, Shrink.NONE, Cloth.Counted.AFTER,
                Cloth.WarpRun.DOWN, Cloth.Dyeing.NONE, cut);
        return new Piece("p", "Piece", Optional.empty(), new ChartSize(28, 28), cloth, Optional.empty(), Margins.all(2), true, List.of(),
                List.of(), Optional.empty(), progress, Goal.NONE);
    }

    private static PieceReckoning reckoned(boolean cut, Progress progress) {
        Piece piece = piece(cut, progress);
        return new PieceReckoning(piece, ClothReckoning.of(piece, 5), StitchTally.of(piece));
    }

    private static double cutMm(Basket basket) {
        return Reckoning.of(basket).pieces().get(0).cloth().size().across().cutMm();
    }

    /** By hand: 54.8 mm up to the next quarter inch are 9 x 6.35 = 57.15; to the next half centimetre 55; to her own next 20 mm 60. */
    @Test
    void cuts_step_by_her_own_step_or_by_that_of_her_units() {
        assertEquals(57.15, cutMm(basket(Units.IN, USUAL_STEP, ClothSupply.NONE, NO_GOALS)), 1e-9);
        assertEquals(55, cutMm(basket(Units.CM, USUAL_STEP, ClothSupply.NONE, NO_GOALS)), 1e-9);
        Basket own = basket(Units.IN, OptionalDouble.of(20), ClothSupply.NONE, NO_GOALS);
        assertEquals(60, cutMm(own), 1e-9);
        assertEquals(20, Reckoning.of(own).cutStepMm());
        assertSame(own, Reckoning.of(own).basket());
    }

    /** One piece of 57.15 mm, one cloth of 600 x 500: it is cut from that. */
    @Test
    void what_several_sheets_ask_for_is_reckoned_once() {
        Reckoning reckoning = Reckoning.of(basket(Units.IN, USUAL_STEP, A_CLOTH, NO_GOALS));
        assertSame(reckoning.pieces(), reckoning.pieces());
        assertSame(reckoning.threads(), reckoning.threads());
        assertSame(reckoning.clothPlan(), reckoning.clothPlan());
        assertEquals("p", reckoning.threads().pieces().get(0).piece().id());
        assertEquals(1, reckoning.clothPlan().cloths().size());
    }

    @Test
    void a_cloth_plan_is_told_of_where_cloth_is() {
        Reckoning with = Reckoning.of(basket(Units.IN, USUAL_STEP, A_CLOTH, NO_GOALS));
        assertSame(with.clothPlan(), with.clothPlanToldOf().orElseThrow());
        assertTrue(Reckoning.of(basket(Units.IN, USUAL_STEP, ClothSupply.NONE, NO_GOALS)).clothPlanToldOf().isEmpty());
    }

    /** By hand: 784 cells at 10 an hour and an hour a day are 79 days. */
    @Test
    void a_year_is_reckoned_where_there_are_goals() {
        LocalDate newYear = LocalDate.parse("2027-01-01");
        Reckoning with = Reckoning.of(basket(Units.IN, USUAL_STEP, ClothSupply.NONE, Optional.of(GOALS)));
        assertEquals(LocalDate.parse("2027-03-20"), with.year(newYear).orElseThrow().chosen().get(0).finish());
        assertTrue(Reckoning.of(basket(Units.IN, USUAL_STEP, ClothSupply.NONE, NO_GOALS)).year(newYear).isEmpty());
    }

    /** A day or a stitch that is written down tells of a needle; one of no stitches does not. Nobody stitches on cloth that is not cut. */
    @Test
    void a_piece_is_begun_by_a_day_or_a_stitch_and_then_its_cloth_is_cut() {
        Progress day = new Progress(Optional.of(LocalDate.parse("2026-01-06")), Optional.empty(), Optional.empty(), List.of());
        Progress stitch = new Progress(Optional.empty(), Optional.empty(), Optional.of(new Amount.Stitches(1)), List.of());
        Progress none = new Progress(Optional.empty(), Optional.empty(), Optional.of(new Amount.Stitches(0)), List.of());
        for (Progress begun : List.of(day, stitch)) {
            assertTrue(reckoned(false, begun).begun());
            assertTrue(reckoned(false, begun).cutAlready());
        }
        for (Progress not : List.of(none, Progress.NONE)) {
            assertFalse(reckoned(false, not).begun());
            assertFalse(reckoned(false, not).cutAlready());
            assertTrue(reckoned(true, not).cutAlready());
        }
    }
}
