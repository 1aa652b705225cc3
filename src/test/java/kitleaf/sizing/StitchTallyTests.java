package kitleaf.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import kitleaf.basket.Amount;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Goal;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Margins;
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import kitleaf.basket.thread.Strands;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** By hand on a chart of 100 x 80, which has 8000 cells. */
class StitchTallyTests {

    private static final LocalDate DAY = LocalDate.parse("2026-01-06");
    private static final Optional<Amount> UNSAID = Optional.empty();

    private static Piece piece(List<CalledThread> threads, Optional<Amount> coverage, Progress progress, Part... parts) {
        return new Piece("p", "Piece", Optional.empty(), new ChartSize(100, 80), Pieces.linen(28, 2), Optional.empty(), Margins.all(50),
                true, threads, List.of(parts), coverage, progress, Goal.NONE);
    }

    private static CalledThread thread(OptionalDouble share, StitchCount... stitches) {
        return new CalledThread("K1", Optional.empty(), Optional.empty(), Optional.empty(), "cotton", Strands.of(2), List.of(stitches),
                share, Optional.empty(), OptionalInt.empty(), Optional.empty(), false);
    }

    private static CalledThread counted(int crosses) {
        return thread(OptionalDouble.empty(), StitchCount.of(StitchKind.CROSS, crosses));
    }

    private static Progress done(Amount amount) {
        return new Progress(Optional.empty(), Optional.empty(), Optional.of(amount), List.of());
    }

    private static StitchTally of(Optional<Amount> coverage, Progress progress) {
        return StitchTally.of(piece(List.of(), coverage, progress));
    }

    /** 100 crosses and 20 back stitches of the piece's own threads, 5 of its part's: 125, whatever coverage is said beside. */
    @Test
    void threads_counted_in_the_piece_and_its_parts_add_up() {
        CalledThread outlined = thread(OptionalDouble.empty(), StitchCount.of(StitchKind.CROSS, 40), StitchCount.of(StitchKind.BACK, 20));
        Part verse = new Part("Verse", 1, Optional.empty(), List.of(counted(5)));
        Piece piece = piece(List.of(counted(60), outlined), Optional.of(new Amount.Stitches(999)), Progress.NONE, verse);
        assertEquals(new StitchTally(125, 125, StitchTally.From.THREADS), StitchTally.of(piece));
    }

    /** A sum of counts would leave out what is known by its share alone, in the piece or in a part. */
    @Test
    void one_thread_without_a_count_sends_us_to_the_coverage() {
        CalledThread share = thread(OptionalDouble.of(0.5));
        Part verse = new Part("Verse", 1, Optional.empty(), List.of(share));
        Optional<Amount> coverage = Optional.of(new Amount.Stitches(999));
        StitchTally covered = new StitchTally(999, 999, StitchTally.From.COVERAGE);
        assertEquals(covered, StitchTally.of(piece(List.of(counted(60), share), coverage, Progress.NONE)));
        assertEquals(covered, StitchTally.of(piece(List.of(counted(60)), coverage, Progress.NONE, verse)));
        assertEquals(StitchTally.From.CELLS, StitchTally.of(piece(List.of(counted(60), share), UNSAID, Progress.NONE)).from());
    }

    /** Three eighths of 8000 cells are 3000; without threads and coverage each cell counts. */
    @Test
    void a_coverage_is_a_number_or_a_share_of_the_cells() {
        assertEquals(new StitchTally(3000, 3000, StitchTally.From.COVERAGE), of(Optional.of(new Amount.Share(0.375)), Progress.NONE));
        assertEquals(new StitchTally(8000, 8000, StitchTally.From.CELLS), of(UNSAID, Progress.NONE));
    }

    /** A quarter of 8000 is 2000; sittings of 300 and 50 are 350. What is finished has nothing left, whatever else is said. */
    @Test
    void what_is_left_follows_the_last_day_then_the_figure_then_the_log() {
        List<LogEntry> log = List.of(new LogEntry(DAY, 2, 300), new LogEntry(DAY.plusDays(1), 1, 50));
        assertEquals(7650, of(UNSAID, new Progress(Optional.empty(), Optional.empty(), Optional.empty(), log)).left());
        assertEquals(6000, of(UNSAID, new Progress(Optional.empty(), Optional.empty(), Optional.of(new Amount.Share(0.25)), log)).left());
        assertEquals(7900, of(UNSAID, done(new Amount.Stitches(100))).left());
        StitchTally finished = of(UNSAID, new Progress(Optional.empty(), Optional.of(DAY), Optional.of(new Amount.Share(0.25)), log));
        assertEquals(0, finished.left());
        assertEquals(8000, finished.done());
    }

    /** 60 stitches counted and 70 made, as unpicking brings: none are left, and not ten fewer than none. */
    @Test
    void more_done_than_there_is_leaves_nothing() {
        Piece piece = piece(List.of(counted(60)), UNSAID, done(new Amount.Stitches(70)));
        assertEquals(new StitchTally(60, 0, StitchTally.From.THREADS), StitchTally.of(piece));
    }

    /** 1 of 8 is 12.5 %, halves up; 1 in 1000 would round to nothing, 999 to all, and are neither; nothing of nothing is nothing. */
    @ParameterizedTest
    @CsvSource({"8, 7, 13", "1000, 999, 1", "1000, 1, 99", "1000, 1000, 0", "1000, 0, 100", "200, 100, 50", "0, 0, 0"})
    void percents_are_whole_and_only_all_is_a_hundred(long total, long left, int percent) {
        StitchTally tally = new StitchTally(total, left, StitchTally.From.CELLS);
        assertEquals(percent, tally.percentDone());
        assertEquals(total - left, tally.done());
    }

    @ParameterizedTest
    @CsvSource({"10, -1", "10, 11", "-1, -1"})
    void what_does_not_add_up_is_refused(long total, long left) {
        assertThrows(IllegalArgumentException.class, () -> new StitchTally(total, left, StitchTally.From.CELLS));
    }
}
