package kitleaf.sizing.year;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import kitleaf.basket.Amount;
import kitleaf.basket.Basket;
import kitleaf.basket.Goal;
import kitleaf.basket.HowFar;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Pace;
import kitleaf.basket.Piece;
import kitleaf.basket.Progress;
import kitleaf.sizing.StitchTally;
import org.junit.jupiter.api.Test;

/** A spring looked back on, worked by hand: pieces of 1000 stitches, a pace of 100 an hour. */
class LookBackTests {

    private static final StitchTally.From COUNTED = StitchTally.From.COVERAGE;

    private static LocalDate day(String day) {
        return LocalDate.parse(day);
    }

    private static Piece piece(String id, Optional<LocalDate> stitched, Optional<LocalDate> finished, List<HowFar> readings,
                               LogEntry... log) {
        return Years.piece(id, 1000, Goal.NONE, new Progress(Optional.empty(), stitched, finished, Optional.empty(), readings, List.of(log),
                List.of()));
    }

    private static LogEntry timed(String day, double hours) {
        return new LogEntry(day(day), OptionalDouble.of(hours), OptionalInt.empty(), 0, Optional.empty());
    }

    private final Piece border = piece("border", Optional.empty(), Optional.empty(),
            List.of(new HowFar(day("2026-03-20"), new Amount.Stitches(500))),
            new LogEntry(day("2026-02-27"), 1, 90), new LogEntry(day("2026-03-02"), 2, 210), new LogEntry(day("2026-03-08"), 1, 100),
            timed("2026-03-25", 1.5), new LogEntry(day("2026-04-02"), 3, 300));
    private final Piece gull = piece("gull", Optional.of(day("2026-03-09")), Optional.of(day("2026-04-04")), List.of());
    private final Piece asleep = piece("asleep", Optional.empty(), Optional.empty(), List.of());
    private final Basket basket = Years.basket(new Pace(OptionalDouble.of(100), OptionalDouble.empty()), List.of(), Years.goals(2026),
            List.of(asleep, border, gull));
    private final LookBack march = LookBack.of(basket, Span.month(YearMonth.of(2026, 3)));

    /** March 2026 begins on a Sunday: six ISO weeks have a day in it, and only its own days count. */
    @Test
    void every_week_of_a_month_has_its_hours_and_stitches() {
        assertEquals(List.of("2026-02-23", "2026-03-02", "2026-03-09", "2026-03-16", "2026-03-23", "2026-03-30"),
                march.weeks().stream().map(week -> week.monday().toString()).toList());
        assertEquals(new LookBack.Week(day("2026-02-23"), 0, 0, 0), march.weeks().get(0));
        assertEquals(new LookBack.Week(day("2026-03-02"), 3, 310, 0), march.weeks().get(1));
        // An hour and a half of which nobody counted the stitches, at 100 an hour.
        assertEquals(new LookBack.Week(day("2026-03-23"), 1.5, 0, 150), march.weeks().get(4));
        assertEquals(4.5, march.hours(), 1e-12);
    }

    /** 90 before; 400 logged by the 20th, when 500 were found: 100 put right; 150 more at her pace. */
    @Test
    void a_piece_moves_from_what_was_done_before_to_what_is_done_at_the_end() {
        assertEquals(List.of(
                new LookBack.Moved(march.moved().get(0).piece(), new StitchTally(1000, 910, COUNTED),
                        new StitchTally(1000, 350, COUNTED, 150), 4.5, 100),
                new LookBack.Moved(march.moved().get(1).piece(), new StitchTally(1000, 1000, COUNTED),
                        new StitchTally(1000, 0, COUNTED), 0, 0)),
                march.moved());
        assertEquals(List.of("border", "gull"), march.moved().stream().map(one -> one.piece().id()).toList());
        // 310 and 150 of the border's weeks and 100 put right; when the gull was stitched nobody knows.
        assertEquals(560, march.stitches());
    }

    @Test
    void what_ends_within_it_is_told_by_its_day() {
        assertEquals(List.of("gull"), march.stitched().stream().map(Piece::id).toList());
        assertEquals(List.of(), march.finished());
        assertEquals(List.of("gull"), LookBack.of(basket, Span.quarter(2026, 2)).finished().stream().map(Piece::id).toList());
        assertEquals(new Span(day("2026-04-01"), day("2026-06-30")), Span.quarter(2026, 2));
        assertEquals(new Span(day("2026-01-01"), day("2026-12-31")), Span.year(2026));
    }
}
