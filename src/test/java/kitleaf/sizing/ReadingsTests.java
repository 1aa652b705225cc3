package kitleaf.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import kitleaf.basket.Amount;
import kitleaf.basket.Goal;
import kitleaf.basket.HowFar;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Piece;
import kitleaf.basket.PieceState;
import kitleaf.basket.Progress;
import kitleaf.basket.SaidState;
import kitleaf.sizing.year.Years;
import org.junit.jupiter.api.Test;

/** Readings, sittings and states of a piece of 1000 stitches, each figure worked by hand. */
class ReadingsTests {

    private static final OptionalDouble NO_PACE = OptionalDouble.empty();

    private static LocalDate day(int day) {
        return LocalDate.of(2026, 3, day);
    }

    private static HowFar reading(int day, long stitches) {
        return new HowFar(day(day), new Amount.Stitches(stitches));
    }

    private static LogEntry counted(int day, int stitches) {
        return new LogEntry(day(day), OptionalDouble.empty(), OptionalInt.of(stitches), 0, Optional.empty());
    }

    private static LogEntry timed(int day, double hours) {
        return new LogEntry(day(day), OptionalDouble.of(hours), OptionalInt.empty(), 0, Optional.empty());
    }

    private static LogEntry unpicked(int day, int stitches) {
        return new LogEntry(day(day), OptionalDouble.empty(), OptionalInt.empty(), stitches, Optional.empty());
    }

    private static Piece piece(Optional<LocalDate> started, Optional<Amount> done, List<HowFar> readings, List<LogEntry> log,
                               SaidState... states) {
        return Years.piece("p", 1000, Goal.NONE).with(new Progress(started, Optional.empty(), Optional.empty(), done, readings, log,
                List.of(states)));
    }

    private static Piece piece(List<HowFar> readings, List<LogEntry> log, SaidState... states) {
        return piece(Optional.empty(), Optional.empty(), readings, log, states);
    }

    private static long done(Piece piece, OptionalDouble perHour) {
        return StitchTally.of(piece, perHour).done();
    }

    /** 220 read, then evenings of 30 and 40: 290. What was logged until the reading's day is in it. */
    @Test
    void what_is_logged_after_a_reading_is_added_to_it() {
        assertEquals(290, done(piece(List.of(reading(10, 220)),
                List.of(counted(9, 500), counted(10, 60), counted(11, 30), counted(12, 40))),
                NO_PACE));
    }

    /** Two readings: only the later one counts, whatever order they are written in. */
    @Test
    void a_later_reading_puts_the_sum_right_and_says_by_how_much() {
        Piece piece = piece(List.of(reading(20, 300), reading(10, 220)), List.of(counted(11, 30), counted(12, 40), counted(21, 5)));
        assertEquals(305, done(piece, NO_PACE));
        // 220 + 30 + 40 = 290 were thought done on the 20th, and 300 were found.
        assertEquals(List.of(new Correction(reading(20, 300), 10)), Correction.of(piece, NO_PACE));
    }

    /** A figure without a day is of the day the piece was started: ten evenings of 10 come on top of 22 %, or 220. */
    @Test
    void a_piece_entered_with_a_percentage_moves_when_evenings_are_read_back_after_it() {
        List<HowFar> dated = List.of(new HowFar(day(1), new Amount.Share(0.22)));
        List<LogEntry> evenings = IntStream.rangeClosed(2, 11).mapToObj(day -> counted(day, 10)).toList();
        assertEquals(320, done(piece(dated, evenings), NO_PACE));
        assertEquals(Optional.of(day(1)), piece(Optional.of(day(1)), Optional.of(new Amount.Share(0.22)), List.of(), List.of())
                .progress().doneOn());
    }

    /** Beside a log it stands on the log's last day, so that nothing is counted twice. */
    @Test
    void a_figure_without_a_day_beside_a_log_holds_what_is_logged() {
        Piece piece = piece(Optional.of(day(1)), Optional.of(new Amount.Stitches(220)), List.of(),
                List.of(counted(2, 100), counted(5, 90)));
        assertEquals(220, done(piece, NO_PACE));
        assertEquals(100, StitchTally.of(piece.with(piece.progress().asOf(day(4)))).done());
    }

    /** 2 h at 120 an hour are 240 stitches, which nobody counted; unpicked ones count against those put in. */
    @Test
    void hours_alone_are_worth_what_the_pace_makes_of_them() {
        Piece piece = piece(List.of(), List.of(timed(1, 1.25), timed(2, 0.75), counted(3, 50), unpicked(4, 20)));
        StitchTally tally = StitchTally.of(piece, OptionalDouble.of(120));
        assertEquals(270, tally.done());
        assertEquals(240, tally.inferred());
        assertEquals(30, done(piece, NO_PACE));
    }

    /** 9 h at 120 an hour would be 1080 of 1000: what nobody counted does not end a piece. */
    @Test
    void hours_alone_end_no_piece() {
        Piece piece = piece(List.of(), List.of(timed(1, 9)));
        assertEquals(1, StitchTally.of(piece, OptionalDouble.of(120)).left());
        assertEquals(0, StitchTally.of(piece(List.of(), List.of(counted(1, 1080))), OptionalDouble.of(120)).left());
    }

    /** 300 stitches in 3 h, less 30 taken out: 90 an hour. A sitting of which only one figure is known teaches nothing. */
    @Test
    void only_full_sittings_teach_the_pace() {
        LogEntry full = new LogEntry(day(1), OptionalDouble.of(3), OptionalInt.of(300), 30, Optional.empty());
        assertEquals(90, StitchPace.learned(List.of(full, timed(2, 5), counted(3, 700), unpicked(4, 10))).orElseThrow(), 1e-12);
        assertTrue(StitchPace.learned(List.of(timed(2, 5), counted(3, 700))).isEmpty());
    }

    private static PieceState state(Piece piece) {
        return Standing.of(piece.progress(), StitchTally.of(piece));
    }

    @Test
    void a_state_is_what_was_said_last_unless_a_sitting_or_the_last_stitch_says_otherwise() {
        SaidState resting = new SaidState(day(10), PieceState.RESTING);
        assertEquals(PieceState.WAITING, state(piece(List.of(), List.of())));
        assertEquals(PieceState.WAITING, state(piece(List.of(reading(1, 0)), List.of())));
        assertEquals(PieceState.BEGUN, state(piece(List.of(reading(1, 5)), List.of())));
        assertEquals(PieceState.RESTING, state(piece(List.of(), List.of(counted(10, 5)), resting)));
        assertEquals(PieceState.RESTING, state(piece(List.of(reading(12, 50)), List.of(counted(2, 5)), resting)));
        assertEquals(PieceState.BEGUN, state(piece(List.of(), List.of(counted(11, 5)), resting)));
        assertEquals(PieceState.BEGUN, state(piece(List.of(), List.of(), resting, new SaidState(day(12), PieceState.BEGUN))));
        assertEquals(PieceState.GIVEN_UP, state(piece(List.of(), List.of(), new SaidState(day(12), PieceState.GIVEN_UP), resting)));
        assertEquals(PieceState.STITCHED, state(piece(List.of(reading(9, 1000)), List.of(), resting)));
        Progress madeUp = new Progress(Optional.empty(), Optional.of(day(15)), Optional.empty(), List.of());
        assertEquals(PieceState.MADE_UP, state(piece(List.of(), List.of(), resting).with(madeUp)));
        assertEquals(PieceState.WAITING, state(piece(List.of(), List.of()).with(madeUp.asOf(day(14)))));
    }
}
