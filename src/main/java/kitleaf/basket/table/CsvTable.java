package kitleaf.basket.table;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Source;
import kitleaf.basket.place.WorkbookName;
import kitleaf.basket.yaml.Node;
import kitleaf.words.NearMiss;

/**
 * Reads a table (CSV, RFC 4180, with commas, semicolons or tabs) row by row into mappings, each cell with its place in
 * the table. Rows with nothing in them and cells past the last heading with nothing in them are what spreadsheets leave behind.
 */
public final class CsvTable {

    /**
     * What a table may hold.
     *
     * @param what whose columns they are: {@code threads}
     * @param headings what its columns may be called
     * @param required those that must be there
     * @param decimals those that hold numbers with decimals; parted by semicolons, they may have a decimal comma
     * @param example a first line, to show her
     */
    public record Shape(String what, Headings headings, List<String> required, Set<String> decimals, String example) {
        public Shape {
            required = List.copyOf(required);
            decimals = Set.copyOf(decimals);
        }
    }

    /** The most columns taken; there are not thirty that mean anything. */
    static final int MOST_COLUMNS = 200;

    private static final String DECIMAL_COMMA = "(\\s*[0-9]*),([0-9]+[^0-9.,]*)";

    /** The most rows taken below the header; nobody's stash has a tenth of them. */
    static final int MOST_ROWS = 5000;

    private final Source source;
    private final Shape shape;
    private final Problems problems;

    public CsvTable(Source source, Shape shape, Problems problems) {
        this.source = source;
        this.shape = shape;
        this.problems = problems;
    }

    /** The filled cells of each row below the header, by column, in the order of the columns. */
    public List<Node.Mapping> read() {
        if (source.text().isBlank()) {
            problems.add(source.name(), Fault.of("table.empty", shape.example()));
            return List.of();
        }
        int first = 1;
        while (source.line(first).orElseThrow().isEmpty()) {
            first++;
        }
        String line = source.line(first).orElseThrow();
        try {
            Separator separator = WorkbookName.is(source.name().toString()) ? Separator.TAB : Separator.of(line, shape.headings()::knows);
            List<Separator.Span> cells = separator.spans(upToLastHeading(line, separator));
            if (cells.size() > MOST_COLUMNS) {
                // Told before the rows are read, whose reader stops at a number of its own.
                problems.add(new Place(source, first, cells.get(MOST_COLUMNS).from() + 1, 1),
                        Fault.of("table.most-columns", MOST_COLUMNS + 1, MOST_COLUMNS));
                return List.of();
            }
            return read(separator);
        } catch (Fault fault) {
            problems.add(new Place(source, first, 1, line.codePointCount(0, line.length())), fault);
            return List.of();
        }
    }

    /**
     * A line for cells by column, in the order and with the signs of the headings there are; it is not ended.
     *
     * @throws Fault if none of the headings means one of these columns
     */
    public String line(Map<String, String> cells) throws Fault {
        int first = 1;
        while (source.line(first).orElseThrow().isEmpty()) {
            first++;
        }
        Separator separator = Separator.of(source.line(first).orElseThrow(), shape.headings()::knows);
        List<Optional<String>> columns = header(separator, rows(separator)).orElse(List.of());
        for (String column : cells.keySet()) {
            if (!columns.contains(Optional.of(column))) {
                throw Fault.of("log-table.column", column, source.name().toString());
            }
        }
        StringWriter line = new StringWriter();
        CsvWriter.builder().fieldSeparator(separator.sign()).build(line).writeRecord(columns.stream()
                .map(column -> column.map(name -> written(separator, name, cells.getOrDefault(name, ""))).orElse("")).toList());
        return line.toString().replaceFirst("\\R$", "");
    }

    private String written(Separator separator, String column, String cell) {
        return separator == Separator.SEMICOLON && shape.decimals().contains(column) ? cell.replace('.', ',') : FormulaGuard.guarded(cell);
    }

    private static String upToLastHeading(String line, Separator separator) {
        int end = line.length();
        while (end > 0 && (line.charAt(end - 1) == separator.sign() || Character.isWhitespace(line.charAt(end - 1)))) {
            end--;
        }
        return line.substring(0, end);
    }

    private List<Node.Mapping> read(Separator separator) {
        List<CsvRecord> rows = rows(separator);
        if (rows.isEmpty()) {
            return List.of();
        }
        return header(separator, rows).map(columns -> {
            List<Node.Mapping> read = new ArrayList<>();
            for (CsvRecord row : rows.subList(1, rows.size())) {
                row(separator, columns, row).ifPresent(read::add);
            }
            return read;
        }).orElseGet(List::of);
    }

    /** All rows, or none and a problem. */
    private List<CsvRecord> rows(Separator separator) {
        List<CsvRecord> rows = new ArrayList<>();
        int next = 1;
        try (CsvReader<CsvRecord> reader = CsvReader.builder().fieldSeparator(separator.sign()).ignoreDifferentFieldCount(true)
                .acceptCharsAfterQuotes(false).ofCsvRecord(source.text())) {
            for (CsvRecord row : reader) {
                if (rows.size() > MOST_ROWS) {
                    problems.add(new Place(source, (int) row.getStartingLineNumber(), 1, 1), Fault.of("table.most-rows", MOST_ROWS));
                    return List.of();
                }
                rows.add(row);
                next = (int) row.getStartingLineNumber() + 1;
            }
            return rows;
        } catch (CsvParseException e) {
            int line = Math.min(next, source.lineCount());
            // The reader of CSV gives up on some tens of thousands of cells by itself.
            if (source.line(line).orElse("").chars().filter(c -> c == separator.sign()).count() >= MOST_COLUMNS) {
                tooWide(line);
                return List.of();
            }
            problems.add(new Place(source, line, 1, 1), Fault.of("table.quote"));
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory could not be read", e);
        }
        return List.of();
    }

    private void tooWide(int line) {
        problems.add(new Place(source, line, 1, 1), Fault.of("table.wide-row", MOST_COLUMNS));
    }

    /** The column of each cell, or nothing if a table cannot be made of them. */
    private Optional<List<Optional<String>>> header(Separator separator, List<CsvRecord> rows) {
        CsvRecord row = rows.get(0);
        List<Place> places = places(separator, row);
        List<String> headings = row.getFields().stream().map(String::strip).toList();
        int last = headings.size();
        while (last > 1 && headings.get(last - 1).isEmpty()) {
            last--;
        }
        headings = headings.subList(0, last);
        List<Optional<String>> columns = shape.headings().read(headings, places,
                column -> numbers(rows.subList(1, rows.size()), column), problems);
        for (String needed : shape.required()) {
            boolean meant = headings.stream().anyMatch(heading -> NearMiss.of(heading, shape.headings().columns())
                    .equals(Optional.of(needed))
                    || shape.headings().mayMean(heading, needed));
            if (!columns.contains(Optional.of(needed)) && !meant) {
                problems.add(places.get(0), Fault.of("table.missing", needed));
            }
        }
        // Without one of these every row would be told to have none.
        return shape.required().stream().allMatch(needed -> columns.contains(Optional.of(needed))) ? Optional.of(columns)
                : Optional.empty();
    }

    /** Whether a column holds numbers and nothing else. */
    private static boolean numbers(List<CsvRecord> rows, int column) {
        List<String> cells = rows.stream().filter(row -> column < row.getFieldCount()).map(row -> row.getField(column).strip())
                .filter(cell -> !cell.isEmpty()).toList();
        return !cells.isEmpty() && cells.stream().allMatch(cell -> cell.matches("[0-9][0-9.,\\s]*%?"));
    }

    private Optional<Node.Mapping> row(Separator separator, List<Optional<String>> columns, CsvRecord row) {
        if (row.getFields().stream().allMatch(String::isBlank)) {
            return Optional.empty();
        }
        List<Place> places = places(separator, row);
        for (int i = 0; i < row.getFieldCount(); i++) {
            if (row.getField(i).matches("(?s).*[\\r\\n].*")) {
                problems.add(places.get(i), Fault.of("table.open-cell"));
                return Optional.empty();
            }
        }
        int cells = row.getFieldCount();
        while (cells > columns.size() && row.getField(cells - 1).isBlank()) {
            cells--;
        }
        if (cells != columns.size()) {
            problems.add(places.get(0), Fault.of("table.cells", cells, columns.size(), separator.told()));
            return Optional.empty();
        }
        Map<String, Node.Entry> filled = new LinkedHashMap<>();
        for (int i = 0; i < cells; i++) {
            String cell = row.getField(i);
            if (!cell.isBlank() && columns.get(i).isPresent()) {
                String column = columns.get(i).get();
                filled.put(column, new Node.Entry(places.get(i), new Node.Scalar(places.get(i), text(separator, column, cell), true)));
            }
        }
        return Optional.of(new Node.Mapping(places.get(0), filled));
    }

    private String text(Separator separator, String column, String cell) {
        if (separator == Separator.SEMICOLON && shape.decimals().contains(column) && cell.matches(DECIMAL_COMMA)) {
            // Where a comma parts no cells, it parts decimals.
            return cell.replaceFirst(DECIMAL_COMMA, "$1.$2");
        }
        return FormulaGuard.unguarded(cell);
    }

    /** Where each cell of a row begins; the reader of CSV tells only the row's line. */
    private List<Place> places(Separator separator, CsvRecord row) {
        int line = (int) row.getStartingLineNumber();
        String text = source.line(line).orElse("");
        int end = text.codePointCount(0, text.length());
        List<Separator.Span> spans = separator.spans(text);
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < row.getFieldCount(); i++) {
            // A cell that goes on below its line ends it; what follows is marked at the line's end.
            Separator.Span span = i < spans.size() ? spans.get(i) : new Separator.Span(end, end);
            places.add(new Place(source, line, Math.min(span.from(), end) + 1, Math.max(1, span.to() - span.from())));
        }
        return places;
    }
}
