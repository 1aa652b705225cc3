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

/**
 * Reads a table of threads (CSV, RFC 4180) into the nodes a list of threads would have been, cell by
 * cell with its place in the table. Columns named like stitch kinds become the thread's stitches.
 */
final class ThreadTable {

    private static final String OTHER = "other";
    private static final String OTHER_EACH = "other-each";
    private static final List<String> PLAIN =
            List.of("code", "name", "colour", "symbol", "skein", "strands", "share", "over", "lot");
    private static final List<String> COLUMNS = columns();

    private final Source source;
    private final Problems problems;

    ThreadTable(Source source, Problems problems) {
        this.source = source;
        this.problems = problems;
    }

    private static List<String> columns() {
        List<String> columns = new ArrayList<>(PLAIN);
        columns.addAll(StitchReader.KIND_WORDS);
        columns.add(OTHER_EACH);
        return List.copyOf(columns);
    }

    /** A mapping for each row below the header. */
    List<Node> read() {
        if (source.text().isBlank()) {
            problems.add(source.name(), "this table is empty", "write a first line of column names, such as code,name,cross");
            return List.of();
        }
        List<CsvRecord> rows = rows();
        if (rows.isEmpty()) {
            return List.of();
        }
        return header(rows.get(0)).map(header -> {
            List<Node> threads = new ArrayList<>();
            for (CsvRecord row : rows.subList(1, rows.size())) {
                thread(header, row).ifPresent(threads::add);
            }
            return threads;
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
            } else if (!COLUMNS.contains(name)) {
                problems.add(places.get(i), Quote.of(name) + " is not a column of threads", NearMiss.advice(name, COLUMNS));
            } else if (!seen.add(name)) {
                problems.add(places.get(i), Quote.of(name) + " stands twice here", "keep one of the two");
            }
        }
        boolean codeMeant = names.stream().anyMatch(name -> NearMiss.of(name, COLUMNS).equals(Optional.of("code")));
        if (!seen.contains("code") && !codeMeant) {
            problems.add(places.get(0), "this table has no column code", "write column names in the first line, code among them");
        }
        // Without codes every row would be told to have none.
        return seen.contains("code") ? Optional.of(names) : Optional.empty();
    }

    private Optional<Node> thread(List<String> header, CsvRecord row) {
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
        Map<String, Node.Entry> thread = new LinkedHashMap<>();
        Map<String, Node.Entry> stitches = new LinkedHashMap<>();
        Map<String, Node.Entry> other = new LinkedHashMap<>();
        for (int i = 0; i < header.size(); i++) {
            String cell = row.getField(i);
            if (cell.isBlank()) {
                continue;
            }
            Node.Entry entry = new Node.Entry(places.get(i), new Node.Scalar(places.get(i), cell, true));
            switch (header.get(i)) {
                case OTHER -> other.putIfAbsent("count", entry);
                case OTHER_EACH -> other.putIfAbsent("each", entry);
                default -> {
                    if (PLAIN.contains(header.get(i))) {
                        thread.putIfAbsent(header.get(i), entry);
                    } else if (COLUMNS.contains(header.get(i))) {
                        stitches.putIfAbsent(header.get(i), entry);
                    }
                }
            }
        }
        if (other.size() == 1) {
            problems.add(other.values().iterator().next().key(), "other stitches need both their number and the thread each takes",
                    "fill the columns other and other-each, such as 12 and 3 cm");
        } else {
            putGroup(stitches, OTHER, other);
        }
        putGroup(thread, "stitches", stitches);
        return Optional.of(new Node.Mapping(places.get(0), thread));
    }

    private static void putGroup(Map<String, Node.Entry> into, String key, Map<String, Node.Entry> group) {
        if (!group.isEmpty()) {
            Place place = group.values().iterator().next().key();
            into.put(key, new Node.Entry(place, new Node.Mapping(place, group)));
        }
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
