package kitleaf.sizing.year;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.Stream;
import kitleaf.basket.Amount;
import kitleaf.basket.Basket;
import kitleaf.basket.ChartSize;
import kitleaf.basket.Goal;
import kitleaf.basket.Goals;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Margins;
import kitleaf.basket.Pace;
import kitleaf.basket.Paper;
import kitleaf.basket.Part;
import kitleaf.basket.Piece;
import kitleaf.basket.Printer;
import kitleaf.basket.Progress;
import kitleaf.basket.Tags;
import kitleaf.basket.TimeOff;
import kitleaf.basket.Units;
import kitleaf.basket.cloth.ClothSupply;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.Strands;
import kitleaf.sizing.Pieces;
import kitleaf.sizing.Reckoning;

/** Pieces and baskets for tests of the year, on linen of 28 over two. */
public final class Years {

    private Years() { }

    /** So many plain crosses, nothing done. */
    public static Piece piece(String id, int stitches, Goal goal) {
        return piece(id, stitches, goal, Progress.NONE);
    }

    static Piece piece(String id, int stitches, Goal goal, Progress progress) {
        return new Piece(id, id, Optional.empty(), new ChartSize(1000, 1000), Pieces.linen(28, 2), Optional.empty(), Margins.all(50), true,
                List.of(), List.of(), Optional.of(new Amount.Stitches(stitches)), progress, goal);
    }

    static Piece threaded(String id, List<CalledThread> threads, List<Part> parts) {
        return new Piece(id, id, Optional.empty(), new ChartSize(1000, 1000), Pieces.linen(28, 2), Optional.empty(), Margins.all(50), true,
                threads, parts, Optional.empty(), Progress.NONE, Goal.NONE);
    }

    static CalledThread thread(OptionalInt over, StitchCount... stitches) {
        return new CalledThread("K1", Optional.empty(), Optional.empty(), Optional.empty(), "cotton", Strands.of(2), List.of(stitches),
                OptionalDouble.empty(), Optional.empty(), over, Optional.empty(), false);
    }

    /** Entries such as {@code 2026-03-01 2.5 260}: day, hours, stitches. */
    static Progress log(String... entries) {
        return new Progress(Optional.empty(), Optional.empty(), Optional.empty(), Stream.of(entries).map(entry -> entry.split(" "))
                .map(it -> new LogEntry(LocalDate.parse(it[0]), Double.parseDouble(it[1]), Integer.parseInt(it[2]))).toList());
    }

    static Progress finished(String day) {
        return new Progress(Optional.empty(), Optional.of(LocalDate.parse(day)), Optional.empty(), List.of());
    }

    static Goal due(String day) {
        return new Goal(false, Optional.of(LocalDate.parse(day)), 1);
    }

    /** Stitches an hour and hours a week. */
    public static Pace pace(double stitches, double hours) {
        return new Pace(OptionalDouble.of(stitches), OptionalDouble.of(hours));
    }

    /** Goals by number, as many as fit. */
    public static Goals goals(int year, String... named) {
        return goals(year, OptionalInt.empty(), 0.7, named);
    }

    static Goals goals(int year, OptionalInt choose, double mainShare, String... named) {
        return new Goals(year, choose, List.of(named), Goals.By.NUMBER, mainShare, Optional.empty(), Optional.empty(), OptionalLong.empty());
    }

    /** A basket of these. */
    public static Basket basket(Pace pace, List<TimeOff> timeOff, Goals goals, List<Piece> pieces) {
        return new Basket("Net loft", Locale.ENGLISH, new Paper("A4", 210, 297), Units.IN, false, Printer.TRUE, OptionalDouble.empty(), List.of(), List.of(),
                Map.of(), Optional.empty(), Tags.USUAL, ClothSupply.NONE, pace, timeOff, Optional.of(goals), pieces);
    }

    static TimeOff off(String from, String to) {
        return new TimeOff(LocalDate.parse(from), LocalDate.parse(to), Optional.empty());
    }

    static YearReckoning reckon(Basket basket, String asOf) {
        return Reckoning.of(basket).year(LocalDate.parse(asOf)).orElseThrow();
    }
}
