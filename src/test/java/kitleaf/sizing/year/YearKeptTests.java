package kitleaf.sizing.year;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import kitleaf.basket.Amount;
import kitleaf.basket.Basket;
import kitleaf.basket.Goal;
import kitleaf.basket.HowFar;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Pace;
import kitleaf.basket.Piece;
import kitleaf.basket.PieceState;
import kitleaf.basket.Progress;
import kitleaf.basket.SaidState;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A year of sixty pieces and two hundred evenings, of each of which she wrote one fact or two. What is true is kept beside it as the
 * evenings go by: stitches left, hours known and the state of each piece are compared on six days.
 */
class YearKeptTests {

    private static final int PIECES = 60;
    private static final int EVENINGS = 200;
    private static final LocalDate NEW_YEAR = LocalDate.of(2026, 1, 1);
    /** A quarter of an hour is 30 stitches: with this one pace, hours alone tell the stitches exactly. */
    private static final int QUARTER = 30;

    /** One piece as it truly is, and what she wrote of it. */
    private static final class True {
        private final int total;
        private int done;
        private double hours;
        private PieceState state = PieceState.WAITING;
        private Optional<LocalDate> stitched = Optional.empty();
        private Optional<LocalDate> finished = Optional.empty();
        private final List<HowFar> readings = new ArrayList<>();
        private final List<LogEntry> log = new ArrayList<>();
        private final List<SaidState> states = new ArrayList<>();

        private True(int total) {
            this.total = total;
        }

        private Progress progress() {
            return new Progress(Optional.empty(), stitched, finished, Optional.empty(), readings, log, states);
        }
    }

    /** What is true at the end of a day. */
    private record Snapshot(LocalDate on, List<Long> left, List<Double> hours, List<PieceState> states) { }

    private static Snapshot snapshot(LocalDate on, List<True> pieces) {
        return new Snapshot(on, pieces.stream().map(it -> (long) (it.total - it.done)).toList(),
                pieces.stream().map(it -> it.hours).toList(),
                pieces.stream().map(it -> it.state).toList());
    }

    private static void evening(True piece, LocalDate on, Random random) {
        if (piece.state == PieceState.STITCHED) {
            piece.finished = Optional.of(on);
            piece.state = PieceState.MADE_UP;
            return;
        }
        if (piece.state == PieceState.MADE_UP) {
            return;
        }
        if (piece.state == PieceState.BEGUN && random.nextInt(12) == 0) {
            piece.state = random.nextInt(4) == 0 ? PieceState.GIVEN_UP : PieceState.RESTING;
            piece.states.add(new SaidState(on, piece.state));
            return;
        }
        int quarters = 1 + random.nextInt(12);
        int stitches = Math.min(quarters * QUARTER, (piece.total - piece.done) / QUARTER * QUARTER);
        OptionalDouble hours = OptionalDouble.of(stitches / (4.0 * QUARTER));
        if (stitches == 0 || random.nextInt(15) == 0) {
            piece.done = piece.total;
            piece.stitched = Optional.of(on);
            piece.state = PieceState.STITCHED;
            return;
        }
        piece.done += stitches;
        piece.state = piece.done == piece.total ? PieceState.STITCHED : PieceState.BEGUN;
        // What she did not count all along ends with a day, or it would not be known to have ended.
        piece.stitched = piece.state == PieceState.STITCHED ? Optional.of(on) : Optional.empty();
        switch (random.nextInt(piece.state == PieceState.STITCHED ? 3 : 5)) {
            case 0 -> piece.log.add(new LogEntry(on, hours, OptionalInt.of(stitches), 0, Optional.empty()));
            case 1 -> piece.log.add(new LogEntry(on, hours, OptionalInt.empty(), 0, Optional.empty()));
            case 2 -> piece.log.add(new LogEntry(on, OptionalDouble.empty(), OptionalInt.of(stitches), 0, Optional.empty()));
            case 3 -> {
                int out = Math.min(piece.done, random.nextInt(40));
                piece.done -= out;
                piece.log.add(new LogEntry(on, OptionalDouble.empty(), OptionalInt.of(stitches), out, Optional.empty()));
            }
            default -> {
                piece.readings.add(new HowFar(on, new Amount.Stitches(piece.done)));
                piece.states.add(new SaidState(on, PieceState.BEGUN));
            }
        }
        piece.hours += piece.log.stream().filter(entry -> entry.on().equals(on)).mapToDouble(entry -> entry.hours().orElse(0)).sum();
    }

    private static Basket basket(List<True> pieces, LocalDate until) {
        return Years.basket(new Pace(OptionalDouble.of(4.0 * QUARTER), OptionalDouble.empty()), List.of(), Years.goals(2026),
                IntStream.range(0, PIECES).mapToObj(i -> piece("p%02d".formatted(i), pieces.get(i), until)).toList());
    }

    /** Only what was written by a day: as she had it in her files then. */
    private static Piece piece(String id, True it, LocalDate until) {
        Progress known = new Progress(Optional.empty(), it.stitched.filter(day -> !day.isAfter(until)),
                it.finished.filter(day -> !day.isAfter(until)), Optional.empty(),
                it.readings.stream().filter(one -> !one.on().isAfter(until)).toList(),
                it.log.stream().filter(one -> !one.on().isAfter(until)).toList(),
                it.states.stream().filter(one -> !one.on().isAfter(until)).toList());
        return Years.piece(id, it.total, Goal.NONE, known);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 20261130, -7})
    void what_is_left_what_was_worked_and_how_a_piece_stands_are_true_on_every_day(long seed) {
        Random random = new Random(seed);
        List<True> pieces = IntStream.range(0, PIECES).mapToObj(i -> new True(300 + random.nextInt(40) * QUARTER)).toList();
        List<LocalDate> evenings = random.ints(EVENINGS, 0, 365).distinct().mapToObj(NEW_YEAR::plusDays).sorted(Comparator.naturalOrder())
                .toList();
        List<Snapshot> truth = new ArrayList<>();
        for (int i = 0; i < evenings.size(); i++) {
            evening(pieces.get(random.nextInt(PIECES)), evenings.get(i), random);
            if (i % (evenings.size() / 6) == evenings.size() / 6 - 1 && truth.size() < 6) {
                truth.add(snapshot(evenings.get(i), pieces));
            }
        }
        assertEquals(6, truth.size());
        Basket all = basket(pieces, LocalDate.MAX);
        for (Snapshot then : truth) {
            Reckoning seen = Reckoning.of(all.asOf(then.on()));
            assertEquals(then.left(), seen.pieces().stream().map(it -> it.tally().left()).toList(), () -> "left on " + then.on());
            assertEquals(then.states(), seen.pieces().stream().map(PieceReckoning::state).toList(), () -> "states on " + then.on());
            assertEquals(then.hours(), seen.pieces().stream().map(it -> it.piece().progress().log().stream()
                    .mapToDouble(entry -> entry.hours().orElse(0)).sum()).toList());
            // Whatever is dated later has no effect: the plan is the one of files that end on that day.
            Basket written = basket(pieces, then.on());
            assertEquals(written, all.asOf(then.on()));
            assertEquals(Reckoning.of(written).year(then.on()), seen.year(then.on()));
        }
    }
}
