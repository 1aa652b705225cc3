package kitleaf.sizing.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import kitleaf.basket.Amount;
import kitleaf.basket.Goal;
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import kitleaf.basket.thread.Strands;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.StitchTally;
import kitleaf.sizing.cloth.ClothReckoning;
import org.junit.jupiter.api.Test;

/** By hand on a square cell of edge 1: a cross in rows is 2 sqrt 2 + 2, see the derivations of the thread's path. */
class EffortTests {

    private static final double CROSS = 2 * Math.sqrt(2) + 2;

    private static Effort effort(Piece piece) {
        return Effort.of(new PieceReckoning(piece, ClothReckoning.of(piece, 5), StitchTally.of(piece)));
    }

    private static CalledThread thread(StitchCount... stitches) {
        return Years.thread(OptionalInt.empty(), stitches);
    }

    @Test
    void crosses_in_rows_are_themselves() {
        Effort effort = effort(Years.threaded("p", List.of(thread(StitchCount.of(StitchKind.CROSS, 700))), List.of()));
        assertTrue(effort.byPath());
        assertEquals(700, effort.crossesLeft(), 1e-9);
        assertEquals(7, effort.hours(100), 1e-9);
    }

    /** Half: sqrt 2 + 1, half a cross. Back: 3. */
    @Test
    void other_stitches_are_worth_their_path() {
        Effort effort = effort(Years.threaded("p", List.of(thread(StitchCount.of(StitchKind.HALF, 100),
                StitchCount.of(StitchKind.BACK, 10))), List.of()));
        assertEquals(100 * 0.5 + 10 * 3 / CROSS, effort.crossesLeft(), 1e-9);
    }

    /** Over five threads of half an edge each: 2.5 + sqrt(2.5^2 + 0.5^2). */
    @Test
    void satin_is_worth_its_path() {
        StitchCount satin = new StitchCount(StitchKind.SATIN, 80, Optional.empty(), OptionalInt.of(5), OptionalDouble.empty());
        assertEquals(80 * (2.5 + Math.sqrt(6.5)) / CROSS, effort(Years.threaded("p", List.of(thread(satin)), List.of())).crossesLeft(), 1e-9);
    }

    /** By the path alone an over-one cross would be half a cross of an over-two piece; the hand makes it all the same. */
    @Test
    void an_over_one_stitch_is_never_less_than_one() {
        CalledThread verse = thread(StitchCount.of(StitchKind.CROSS, 300), StitchCount.of(StitchKind.BACK, 50));
        Piece parted = Years.threaded("p", List.of(thread(StitchCount.of(StitchKind.CROSS, 100))),
                List.of(new Part("Verse", 1, Optional.empty(), List.of(verse))));
        assertEquals(450, effort(parted).crossesLeft(), 1e-9);
        Piece over = Years.threaded("p", List.of(Years.thread(OptionalInt.of(1), StitchCount.of(StitchKind.CROSS, 300))), List.of());
        assertEquals(300, effort(over).crossesLeft(), 1e-9);
    }

    @Test
    void what_is_left_costs_what_the_whole_does() {
        Piece half = Years.threaded("p", List.of(thread(StitchCount.of(StitchKind.HALF, 1000))), List.of());
        Piece begun = new Piece("p", "p", Optional.empty(), half.stitches(), half.cloth(), Optional.empty(), half.margins(), true,
                half.threads(), List.of(), Optional.empty(),
                new Progress(Optional.empty(), Optional.empty(), Optional.of(new Amount.Stitches(400)), List.of()), Goal.NONE);
        assertEquals(300, effort(begun).crossesLeft(), 1e-9);
    }

    /** A share is crosses of its own cell: over four of an over-two piece each is two crosses long, 600 + 400 x 2. */
    @Test
    void shares_are_worth_the_crosses_of_their_own_cell() {
        Piece half = Years.threaded("p", List.of(shared(0.6, OptionalInt.empty()), shared(0.4, OptionalInt.of(4))), List.of());
        Piece covered = new Piece("p", "p", Optional.empty(), half.stitches(), half.cloth(), Optional.empty(), half.margins(), true,
                half.threads(), List.of(), Optional.of(new Amount.Stitches(1000)), Progress.NONE, Goal.NONE);
        assertEquals(1.4, effort(covered).crossesPerStitch(), 1e-9);
        assertEquals(1400, effort(covered).crossesLeft(), 1e-9);
    }

    private static CalledThread shared(double share, OptionalInt over) {
        return new CalledThread("K1", Optional.empty(), Optional.empty(), Optional.empty(), "cotton", Strands.of(2), List.of(),
                OptionalDouble.of(share), Optional.empty(), over, Optional.empty(), false);
    }

    @Test
    void one_unknown_thread_makes_every_stitch_a_cross() {
        Effort effort = effort(Years.threaded("p", List.of(thread(StitchCount.of(StitchKind.HALF, 1000)), thread()), List.of()));
        assertFalse(effort.byPath());
        // 1000 x 1000 cells, for want of counts.
        assertEquals(1_000_000, effort.crossesLeft());
    }

    @Test
    void threads_without_a_stitch_yet_take_nothing() {
        Effort effort = effort(Years.threaded("p", List.of(thread(StitchCount.of(StitchKind.CROSS, 0))), List.of()));
        assertEquals(new Effort(1, 0, false), effort);
    }

    @Test
    void a_finished_piece_takes_nothing_more() {
        assertEquals(0, effort(Years.piece("p", 500, Goal.NONE, Years.finished("2027-02-01"))).crossesLeft());
    }
}
