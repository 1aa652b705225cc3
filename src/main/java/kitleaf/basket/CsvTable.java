package kitleaf.basket;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads a table (CSV, RFC 4180) row by row into mappings, each cell with its place in the table. */
final class CsvTable {

    /**
     * What a table may hold.
     *
     * @param what whose columns they are: {@code threads}
     * @param columns all that may stand in the first line
     * @param required those that must
     * @param example a first line, to show her
     */
    record Shape(String what, List<String> columns, List<String> required, String example) {
        Shape {
            columns = List.copyOf(columns);
            required = List.copyOf(required);
        }
    }

    private final Source source;
    private final Shape shape;
    private final Problems problems;

    CsvTable(Source source, Shape shape, Problems problems) {
        this.source = source;
        this.shape = shape;
        this.problems = problems;
    }

    /** The filled cells of each row below the header, by column, in the order of the columns. */
    List<Node.Mapping> read() {
        if (source.text().isBlank()) {
            problems.add(source.name(), "this table is empty", "write a first line of column names, such as " + shape.example());
            return List.of();
        }
        List<CsvRecord> rows = rows();
        if (rows.isEmpty()) {
            return List.of();
        }
        return header(rows.get(0)).map(header -> {
            List<Node.Mapping> read = new ArrayList<>();
            for (CsvRecord row : rows.subList(1, rows.size())) {
                row(header, row).ifPresent(read::add);
            }
            return read;
        }).orElseGet(List::of);
    }

    /** All rows, or none and a problem. */
    private List<CsvRecord> rows() {
        List<CsvRecord> rows = new ArrayList<>();
        int next = 1;
        try (CsvReader<CsvRecord> reader = CsvReader.builder().ignoreDifferentFieldCount(true)
                .acceptCharsAfterQuotes(false).ofCsvRecord(source.text())) {
            for (CsvRecord row : reader) {
                rows.add(row);
                next = (int) row.getStartingLineNumber() + 1;
            }
            return rows;
        } catch (CsvParseException e) {
            problems.add(new Place(source, Math.min(next, source.lineCount()), 1, 1), "a quote goes wrong in this row",
                    "put a whole cell in \" or none of it, and write \"\" for a \" inside");
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory could not be read", e);
        }
        return List.of();
    }

    /** The column names, or nothing if a table cannot be made of them. */
    private Optional<List<String>> header(CsvRecord row) {
        List<Place> places = places(row);
        List<String> names = row.getFields().stream().map(String::strip).toList();
        for (String separator : List.of(";", "\t")) {
            if (names.size() == 1 && names.get(0).contains(separator)) {
                problems.add(places.get(0), "these columns are parted by " + (separator.equals(";") ? "semicolons" : "tabs"),
                        "save the table with commas between columns");
                return Optional.empty();
            }
        }
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i);
            if (name.isEmpty()) {
                problems.add(places.get(i), "this column has no name", "name it, or take it out");
            } else if (!shape.columns().contains(name)) {
                problems.add(places.get(i), Quote.of(name) + " is not a column of " + shape.what(),
                        NearMiss.advice(name, shape.columns()));
            } else if (!seen.add(name)) {
                problems.add(places.get(i), Quote.of(name) + " stands twice here", "keep one of the two");
            }
        }
        for (String needed : shape.required()) {
            boolean meant = names.stream().anyMatch(name -> NearMiss.of(name, shape.columns()).equals(Optional.of(needed)));
            if (!seen.contains(needed) && !meant) {
                problems.add(places.get(0), "this table has no column " + needed,
                        "write column names in the first line, " + needed + " among them");
            }
        }
        // Without one of these every row would be told to have none.
        return seen.containsAll(shape.required()) ? Optional.of(names) : Optional.empty();
    }

    private Optional<Node.Mapping> row(List<String> header, CsvRecord row) {
        List<Place> places = places(row);
        for (int i = 0; i < row.getFieldCount(); i++) {
            if (row.getField(i).matches("(?s).*[\\r\\n].*")) {
                problems.add(places.get(i), "this cell does not end on its line", "close its \" before the end of the line");
                return Optional.empty();
            }
        }
        if (row.getFieldCount() != header.size()) {
            problems.add(places.get(0), "this row has " + row.getFieldCount() + " cells under " + header.size() + " columns",
                    "give each row as many cells as the first, in quotes where a cell holds a comma");
            return Optional.empty();
        }
        Map<String, Node.Entry> cells = new LinkedHashMap<>();
        for (int i = 0; i < header.size(); i++) {
            String cell = row.getField(i);
            if (!cell.isBlank() && shape.columns().contains(header.get(i))) {
                cells.putIfAbsent(header.get(i), new Node.Entry(places.get(i), new Node.Scalar(places.get(i), cell, true)));
            }
        }
        return Optional.of(new Node.Mapping(places.get(0), cells));
    }

    /** Where each cell of a row begins; the reader of CSV tells only the row's line. */
    private List<Place> places(CsvRecord row) {
        int line = (int) row.getStartingLineNumber();
        int[] text = source.line(line).orElse("").codePoints().toArray();
        List<Place> places = new ArrayList<>();
        int at = 0;
        for (int i = 0; i < row.getFieldCount(); i++) {
            int end = at;
            boolean quoted = false;
            while (end < text.length && (quoted || text[end] != ',')) {
                quoted ^= text[end] == '"';
                end++;
            }
            places.add(new Place(source, line, Math.min(at, text.length) + 1, Math.max(1, end - at)));
            at = end + 1;
        }
        return places;
    }
}
