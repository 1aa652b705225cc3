package kitleaf.sizing.year;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import kitleaf.basket.Basket;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Piece;
import kitleaf.sizing.Correction;
import kitleaf.sizing.StitchPace;
import kitleaf.sizing.StitchTally;

/**
 * What was done in a span of days.
 *
 * @param span those days
 * @param weeks every ISO week with a day in it, in order
 * @param stitched pieces whose last stitch fell in it, by day and ID
 * @param finished pieces made up in it, by day and ID
 * @param moved how each piece moved that did, by ID
 */
public record LookBack(Span span, List<Week> weeks, List<Piece> stitched, List<Piece> finished, List<Moved> moved) {

    /** Copies the lists. */
    public LookBack {
        Objects.requireNonNull(span);
        weeks = List.copyOf(weeks);
        stitched = List.copyOf(stitched);
        finished = List.copyOf(finished);
        moved = List.copyOf(moved);
    }

    /**
     * One week's sittings, as far as they lie in the span.
     *
     * @param monday its first day
     * @param hours logged, 0 or more
     * @param stitches counted, those taken out again subtracted; below 0 where more came out than went in
     * @param inferred stitches that hours alone are worth at her pace, 0 or more
     */
    public record Week(LocalDate monday, double hours, long stitches, long inferred) { }

    /**
     * How one piece moved.
     *
     * @param piece as known at the end of the span
     * @param before its tally before the first day
     * @param after its tally at the end of the last
     * @param hours logged in the span, 0 or more
     * @param putRight what readings of the span put right in all, in stitches; 0 where none did
     */
    public record Moved(Piece piece, StitchTally before, StitchTally after, double hours, long putRight) { }

    /**
     * Looks back on a span of days; facts after its last day are not looked at.
     */
    public static LookBack of(Basket basket, Span span) {
        LocalDate from = span.from();
        LocalDate to = span.to();
        Basket seen = basket.asOf(to);
        OptionalDouble perHour = StitchPace.of(seen);
        List<Moved> moved = new ArrayList<>();
        for (Piece piece : seen.pieces()) {
            StitchTally before = StitchTally.of(piece.with(piece.progress().asOf(from.minusDays(1))), perHour);
            StitchTally after = StitchTally.of(piece, perHour);
            double hours = within(piece, from).stream().mapToDouble(entry -> entry.hours().orElse(0)).sum();
            long right = Correction.of(piece, perHour).stream().filter(one -> !one.reading().on().isBefore(from))
                    .mapToLong(Correction::stitches).sum();
            if (before.done() != after.done() || hours > 0 || right != 0) {
                moved.add(new Moved(piece, before, after, hours, right));
            }
        }
        return new LookBack(span, weeks(seen, from, to, perHour), ended(seen, from, true), ended(seen, from, false), moved);
    }

    /** Hours in all. */
    public double hours() {
        return weeks.stream().mapToDouble(Week::hours).sum();
    }

    /**
     * Stitches known to be of these days: logged, inferred and put right; below 0 where more came out than went in. A piece that is
     * first heard of as half done, or as finished, says nothing of when that was stitched.
     */
    public long stitches() {
        return weeks.stream().mapToLong(week -> week.stitches() + week.inferred()).sum() + moved.stream().mapToLong(Moved::putRight).sum();
    }

    private static List<Week> weeks(Basket seen, LocalDate from, LocalDate to, OptionalDouble perHour) {
        TreeMap<LocalDate, Week> weeks = new TreeMap<>();
        for (LocalDate monday = WeeklyPace.monday(from); !monday.isAfter(to); monday = monday.plusWeeks(1)) {
            weeks.put(monday, new Week(monday, 0, 0, 0));
        }
        for (Piece piece : seen.pieces()) {
            for (LogEntry entry : within(piece, from)) {
                long inferred = entry.stitches().isPresent() ? 0 : Math.round(entry.hours().orElse(0) * perHour.orElse(0));
                weeks.computeIfPresent(WeeklyPace.monday(entry.on()), (monday, week) -> new Week(monday,
                        week.hours() + entry.hours().orElse(0), week.stitches() + entry.counted(), week.inferred() + inferred));
            }
        }
        return List.copyOf(weeks.values());
    }

    private static List<LogEntry> within(Piece piece, LocalDate from) {
        return piece.progress().log().stream().filter(entry -> !entry.on().isBefore(from)).toList();
    }

    private static List<Piece> ended(Basket seen, LocalDate from, boolean stitched) {
        TreeMap<LocalDate, List<Piece>> days = new TreeMap<>();
        for (Piece piece : seen.pieces()) {
            Optional<LocalDate> day = stitched ? piece.progress().stitched() : piece.progress().finished();
            day.filter(on -> !on.isBefore(from)).ifPresent(on -> days.computeIfAbsent(on, one -> new ArrayList<>()).add(piece));
        }
        return days.values().stream().flatMap(List::stream).toList();
    }
}
