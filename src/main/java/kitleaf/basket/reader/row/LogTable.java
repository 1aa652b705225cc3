package kitleaf.basket.reader.row;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import kitleaf.basket.place.Advice;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.place.Source;
import kitleaf.basket.place.Visible;
import kitleaf.basket.table.CsvTable;
import kitleaf.basket.table.Headings;
import kitleaf.basket.yaml.Node;
import kitleaf.words.Said;

/**
 * Reads a table of the log, an evening or a reading a row, and adds each row to the document of its piece, after what stands there. A row
 * names its piece by ID or by title.
 */
public final class LogTable {

    private static final List<String> EVENING = List.of("hours", "stitches", "unpicked", "note");
    private static final String DONE = "done";

    private static final CsvTable.Shape SHAPE = new CsvTable.Shape("log",
            new Headings("log", List.of("on", "piece", "hours", "stitches", DONE, "unpicked", "note"))
                    .also("on", "day", "date", "when").also("piece", "pieces", "title", "project", "piece id", "id")
                    .also("hours", "hour", "time").also("stitches", "stitch", "number of stitches")
                    .also(DONE, "percent", "percentage", "percent done", "progress").also("unpicked", "frogged", "taken out")
                    .also("note", "notes", "remark", "remarks", "comment", "comments"),
            List.of("on", "piece"), Set.of("hours", DONE), "day,piece,hours,stitches,done,note");

    /** A basket without one. */
    public static final LogTable NONE = new LogTable(Map.of());

    private final Map<String, List<Node.Mapping>> rows;
    /** Who took the rows of a name; two where it is the ID of one piece and the title of another. */
    private final Map<String, Set<String>> taken = new ConcurrentHashMap<>();

    private LogTable(Map<String, List<Node.Mapping>> rows) {
        this.rows = rows;
    }

    /** The rows of a text. */
    public static LogTable read(Source source, Problems problems) {
        Map<String, List<Node.Mapping>> rows = new LinkedHashMap<>();
        for (Node.Mapping row : new CsvTable(source, SHAPE, problems).read()) {
            Node.Entry piece = row.entries().get("piece");
            if (piece == null) {
                problems.add(row.place(), Fault.of("table.no-piece"));
            } else {
                rows.computeIfAbsent(key(text(piece)), key -> new ArrayList<>()).add(row);
            }
        }
        return new LogTable(rows);
    }

    /**
     * A line of a table of the log.
     *
     * @param source the table
     * @param cells what it shall hold, by column
     * @throws Fault if the table has no column for one of them
     */
    public static String line(Source source, Map<String, String> cells) throws Fault {
        return new CsvTable(source, SHAPE, new Problems()).line(cells);
    }

    /** A document with the rows of its piece added, which are then taken; may be asked from several readers at a time. */
    public Node with(Node document, String id) {
        if (rows.isEmpty() || !(document instanceof Node.Mapping piece)) {
            return document;
        }
        Stream<String> names = Stream.concat(Stream.of(id), Stream.ofNullable(piece.entries().get("piece"))
                .filter(title -> title.value() instanceof Node.Scalar).map(LogTable::text));
        List<Node.Mapping> own = names.map(LogTable::key).distinct().filter(rows::containsKey)
                .peek(name -> taken.computeIfAbsent(name, first -> ConcurrentHashMap.newKeySet()).add(id))
                .flatMap(name -> rows.get(name).stream()).toList();
        if (own.isEmpty()) {
            return document;
        }
        Map<String, Node.Entry> entries = new LinkedHashMap<>(piece.entries());
        entries.put("progress", progress(Optional.ofNullable(entries.get("progress")), own));
        return new Node.Mapping(piece.place(), entries);
    }

    private static Node.Entry progress(Optional<Node.Entry> there, List<Node.Mapping> own) {
        Map<String, Node.Entry> keys = new LinkedHashMap<>();
        there.ifPresent(entry -> {
            if (entry.value() instanceof Node.Mapping mapping) {
                keys.putAll(mapping.entries());
            } else if (!(entry.value() instanceof Node.Scalar scalar && scalar.missing())) {
                keys.put(DONE, entry);
            }
        });
        own.stream().filter(row -> row.entries().containsKey(DONE)).forEach(row -> add(keys, "readings", row, List.of(DONE)));
        own.stream().filter(row -> EVENING.stream().anyMatch(row.entries()::containsKey) || !row.entries().containsKey(DONE))
                .forEach(row -> add(keys, "log", row, EVENING));
        Place place = own.get(0).place();
        return new Node.Entry(there.map(Node.Entry::key).orElse(place), new Node.Mapping(place, keys));
    }

    private static void add(Map<String, Node.Entry> keys, String list, Node.Mapping row, List<String> columns) {
        Map<String, Node.Entry> entry = new LinkedHashMap<>();
        Stream.concat(Stream.of("on"), columns.stream()).filter(row.entries()::containsKey)
                .forEach(column -> entry.put(column, row.entries().get(column)));
        List<Node> items = new ArrayList<>(Optional.ofNullable(keys.get(list)).map(Node.Entry::value)
                .filter(Node.Sequence.class::isInstance).map(there -> ((Node.Sequence) there).items()).orElse(List.of()));
        items.add(new Node.Mapping(row.place(), entry));
        keys.put(list, new Node.Entry(row.place(), new Node.Sequence(row.place(), items)));
    }

    /**
     * Tells of rows for pieces there are not, or that may be for more than one.
     *
     * @param names of all pieces there are, by ID and by title
     */
    public void check(List<String> names, Problems problems) {
        rows.forEach((key, own) -> {
            String named = text(own.get(0).entries().get("piece"));
            int takers = taken.getOrDefault(key, Set.of()).size();
            Fault fault = takers == 0 ? Fault.of(Said.of("goals.no-piece", Quote.bare(named)), Advice.on(named, names))
                    : Fault.of("log.two-pieces", Quote.bare(named));
            if (takers != 1) {
                own.forEach(row -> problems.add(row.entries().get("piece").key(), fault));
            }
        });
    }

    private static String key(String name) {
        return Visible.of(name.strip()).toLowerCase(Locale.ROOT);
    }

    private static String text(Node.Entry cell) {
        return ((Node.Scalar) cell.value()).text();
    }
}
