package kitleaf.basket.table.workbook;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Source;

/**
 * The cells of a sheet, gathered by row and column, and the text they make: a line for each row, cells parted by tabs, as if she had
 * saved the sheet so.
 */
final class Cells {

    /** Further right and further down there is nothing of hers; a cell there is kept so far that it is told. */
    static final int MOST_COLUMNS = 201;
    static final int MOST_ROWS = 10_000;

    /** The most cells taken, repeated ones among them: five thousand rows of fifty. */
    static final int MOST_CELLS = 250_000;

    /** A number's figures that mean something: those a double keeps. */
    private static final MathContext FIGURES = new MathContext(15);

    /** Numbers of more figures before or after the point are no stitcher's. */
    private static final int MOST_FIGURES = 20;

    /** The last day that is written with a year of four figures, counted as spreadsheets do. */
    private static final double LAST_DAY = 2_958_465;

    private final SortedMap<Integer, SortedMap<Integer, String>> rows = new TreeMap<>();
    private final List<Wrong> wrong = new ArrayList<>();

    private int taken;

    private record Wrong(int row, int column, Fault fault) { }

    /**
     * Puts a cell where it stands.
     *
     * @param row from 1
     * @param column from 1
     * @throws Parts.TooLarge if there are too many
     */
    void put(int row, int column, String text) throws Parts.TooLarge {
        if (!text.isBlank()) {
            count();
            row(row).put(within(column, MOST_COLUMNS), text.replaceAll("\\s+", " ").strip());
        }
    }

    /** A cell that holds no value, and why. */
    void wrong(int row, int column, Fault fault) throws Parts.TooLarge {
        count();
        row(row).put(within(column, MOST_COLUMNS), "");
        wrong.add(new Wrong(within(row, MOST_ROWS + 1), within(column, MOST_COLUMNS), fault));
    }

    private void count() throws Parts.TooLarge {
        taken++;
        if (taken > MOST_CELLS) {
            throw new Parts.TooLarge();
        }
    }

    private static int within(int number, int most) {
        return Math.max(1, Math.min(number, most));
    }

    private SortedMap<Integer, String> row(int row) {
        return rows.computeIfAbsent(within(row, MOST_ROWS + 1), first -> new TreeMap<>());
    }

    /** A number as she would type it; what is none, or beyond all measure, as it stands. */
    static String number(String value) {
        return measured(value).map(Cells::plain).orElse(value);
    }

    static String percent(String value) {
        return measured(value).map(number -> plain(number.movePointRight(2)) + "%").orElse(value);
    }

    private static Optional<BigDecimal> measured(String value) {
        try {
            return Optional.of(new BigDecimal(value))
                    .filter(number -> Math.abs((long) number.precision() - number.scale()) <= MOST_FIGURES);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    private static String plain(BigDecimal number) {
        BigDecimal rounded = number.round(FIGURES);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** A day that is so many after another; what is none as it stands. */
    static String day(LocalDate zero, String days) {
        return days(days).map(number -> zero.plusDays(number.longValue()).toString()).orElse(days);
    }

    private static Optional<Double> days(String value) {
        return measured(value).map(BigDecimal::doubleValue).filter(days -> days >= 0 && days < LAST_DAY + 1);
    }

    /** The time that is a part of a day, or several. */
    static String time(String days) {
        return days(days).map(number -> time(number * 24)).orElse(days);
    }

    /** A time as tables have it, in hours to the hundredth: 1:15 is {@code 1.25}. */
    static String time(double hours) {
        return plain(BigDecimal.valueOf(Math.round(hours * 100), 2));
    }

    /** The text, with what is wrong in it told. */
    Source source(Path name, Problems problems) {
        StringBuilder text = new StringBuilder();
        List<List<Integer>> starts = new ArrayList<>();
        int last = rows.isEmpty() ? 0 : rows.lastKey();
        // A sheet has as many cells in each row as it has headings, whether or not anything stands in the last.
        int wide = rows.isEmpty() ? 0 : rows.get(rows.firstKey()).lastKey();
        for (int row = 1; row <= last; row++) {
            starts.add(line(rows.getOrDefault(row, new TreeMap<>()), rows.containsKey(row) ? wide : 0, text));
        }
        Source source = new Source(name, text.toString());
        wrong.forEach(one -> problems.add(
                new Place(source, one.row(), starts.get(one.row() - 1).get(one.column() - 1) + 1, 1), one.fault()));
        return source;
    }

    /** Where each cell of a row begins in its line. */
    private static List<Integer> line(SortedMap<Integer, String> cells, int wide, StringBuilder text) {
        List<Integer> starts = new ArrayList<>();
        int from = text.length();
        int last = cells.isEmpty() ? 0 : Math.max(wide, cells.lastKey());
        for (int column = 1; column <= last; column++) {
            text.append(column > 1 ? "\t" : "");
            starts.add(text.codePointCount(from, text.length()));
            String cell = cells.getOrDefault(column, "");
            text.append(cell.startsWith("\"") ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell);
        }
        text.append('\n');
        return starts;
    }
}
