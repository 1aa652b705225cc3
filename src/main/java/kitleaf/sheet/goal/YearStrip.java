package kitleaf.sheet.goal;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.IntStream;
import kitleaf.sizing.year.PlannedPiece;
import kitleaf.sizing.year.PlannedWeek;
import kitleaf.sizing.year.YearReckoning;

/**
 * The year as a strip of weeks, one row a piece. Days are shares of the year, from 0 to 1; those outside the year stand at its ends, and
 * -1 stands for none.
 *
 * @param off weeks with time off
 * @param months where they begin
 * @param rows the pieces in their order
 * @param today the data's day
 */
public record YearStrip(List<Span> off, List<Month> months, List<Row> rows, double today) {

    /** Copies the lists. */
    public YearStrip {
        off = List.copyOf(off);
        months = List.copyOf(months);
        rows = List.copyOf(rows);
    }

    /** From one day to another. */
    public record Span(double from, double to) { }

    /**
     * A month.
     *
     * @param at where it begins
     * @param name short
     * @param letter its first letter
     */
    public record Month(double at, String name, String letter) { }

    /**
     * A piece.
     *
     * @param title its title
     * @param main weeks as the main piece
     * @param beside weeks as the second one
     * @param likely from the day it is finished in one of ten cases to that in nine of ten
     * @param past the last of these days where the year is over by then, else empty
     * @param by the day it is wanted
     */
    public record Row(String title, List<Span> main, List<Span> beside, Span likely, String past, double by) {
        /** Copies the lists. */
        public Row {
            main = List.copyOf(main);
            beside = List.copyOf(beside);
        }
    }

    /**
     * The strip of a year.
     *
     * @param day how days are written
     */
    static YearStrip of(YearReckoning year, Locale language, Function<LocalDate, String> day) {
        List<Span> off = year.weeks().stream().filter(week -> week.timeOff() > 0).map(week -> week(year, week))
                .filter(week -> week.to() > week.from()).toList();
        List<Month> months = IntStream.rangeClosed(1, 12).mapToObj(month -> LocalDate.of(year.year(), month, 1))
                .map(first -> new Month(at(year, first), first.getMonth().getDisplayName(TextStyle.SHORT, language),
                        first.getMonth().getDisplayName(TextStyle.NARROW, language))).toList();
        List<Row> rows = year.chosen().stream().map(piece -> new Row(piece.reckoning().piece().title(), weeks(year, piece, true),
                weeks(year, piece, false), new Span(at(year, piece.p10()), at(year, piece.p90())),
                piece.p90().getYear() > year.year() ? day.apply(piece.p90()) : "",
                piece.reckoning().piece().goal().by().filter(by -> by.getYear() == year.year()).map(by -> at(year, by)).orElse(-1.0)))
                .toList();
        return new YearStrip(off, months, rows, year.asOf().getYear() == year.year() ? at(year, year.asOf()) : -1);
    }

    private static List<Span> weeks(YearReckoning year, PlannedPiece piece, boolean main) {
        return year.weeks().stream().filter(week -> week.shares().stream().filter(share -> share.id().equals(piece.id())).findFirst()
                .filter(share -> share.main() == main).isPresent()).map(week -> week(year, week))
                .filter(week -> week.to() > week.from()).toList();
    }

    private static Span week(YearReckoning year, PlannedWeek week) {
        return new Span(at(year, week.monday()), at(year, week.monday().plusWeeks(1)));
    }

    private static double at(YearReckoning year, LocalDate day) {
        LocalDate first = LocalDate.of(year.year(), 1, 1);
        return Math.max(0, Math.min(1, (double) ChronoUnit.DAYS.between(first, day) / first.lengthOfYear()));
    }
}
