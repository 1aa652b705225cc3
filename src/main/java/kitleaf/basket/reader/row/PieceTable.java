package kitleaf.basket.reader.row;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.form.WholeText;
import kitleaf.basket.key.Fields;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.PieceFileName;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.place.Source;
import kitleaf.basket.table.CsvTable;
import kitleaf.basket.yaml.Node;

/** Reads a table of pieces, one a row, and makes of each row the document a file of that piece would have held. */
public final class PieceTable {

    /** Other words for states. */
    private static final Map<String, String> SAME = Map.of("not-started", "waiting", "to-do", "waiting", "started", "begun",
            "in-progress", "begun", "wip", "begun", "on-hold", "resting", "paused", "resting", "abandoned", "given-up",
            "made-up", "finished");

    /** The columns whose day a state without one of its own holds from: what she knew last. */
    private static final List<String> DAYS = List.of(PieceColumns.SINCE, PieceColumns.DONE_ON, "started");

    private final Source source;
    private final Problems problems;

    public PieceTable(Source source, Problems problems) {
        this.source = source;
        this.problems = problems;
    }

    /**
     * A row.
     *
     * @param document what a file would have held
     * @param id the piece's ID: what the row says, else its title as a file would be named after it
     */
    public record Row(Node document, String id) { }

    /** The rows below the heading, as many as can be read. */
    public List<Row> read() {
        List<Node.Mapping> rows = new CsvTable(source, PieceColumns.SHAPE, problems).read();
        if (missing(rows, Fault.of("table.missing.stitches"), Stream.of("stitches", PieceColumns.WIDE, PieceColumns.HIGH))
                | missing(rows, Fault.of("table.missing.count"), Stream.of("count", "count-warp", "count-weft", "cloth"))) {
            return List.of();
        }
        return rows.stream().flatMap(row -> row(row).stream()).toList();
    }

    /** Whether no row has what each needs, which is told once; a table without rows says nothing wrong. */
    private boolean missing(List<Node.Mapping> rows, Fault fault, Stream<String> any) {
        List<String> ways = any.toList();
        boolean missing = !rows.isEmpty() && rows.stream().noneMatch(row -> ways.stream().anyMatch(row.entries()::containsKey));
        if (missing) {
            problems.add(source.name(), fault);
        }
        return missing;
    }

    private Optional<Row> row(Node.Mapping row) {
        Map<String, Node.Entry> cells = row.entries();
        Map<String, Node.Entry> piece = new LinkedHashMap<>();
        boolean sound = size(cells, piece);
        for (Map.Entry<String, List<String>> column : PieceColumns.PATHS.entrySet()) {
            Node.Entry cell = cells.get(column.getKey());
            boolean dated = column.getKey().equals("done") && cells.containsKey(PieceColumns.DONE_ON);
            if (cell != null && !dated && !put(piece, column.getValue(), cell)) {
                problems.add(cell.key(), Fault.of("table.two-ways", column.getKey()));
                sound = false;
            }
        }
        sound &= reading(cells, piece) & state(cells, piece);
        Optional<String> id = own(cells, PieceColumns.ID)
                .or(() -> own(cells, "piece").map(PieceFileName::of));
        return sound ? id.map(own -> new Row(new Node.Mapping(row.place(), piece), own)) : Optional.empty();
    }

    private Optional<String> own(Map<String, Node.Entry> cells, String column) {
        return Optional.ofNullable(cells.get(column))
                .flatMap(cell -> Fields.scalar(cell.value(), Fields.key(column), new TextForm("fog-bell"), problems));
    }

    /** Puts a cell where it belongs, in groups that are made as they are needed; whether nothing stood there. */
    private static boolean put(Map<String, Node.Entry> into, List<String> path, Node.Entry cell) {
        String key = path.get(0);
        if (path.size() == 1) {
            return into.putIfAbsent(key, cell) == null;
        }
        Node.Entry group = into.computeIfAbsent(key, absent ->
                new Node.Entry(cell.key(), new Node.Mapping(cell.key(), new LinkedHashMap<>())));
        return group.value() instanceof Node.Mapping mapping && put(mapping.entries(), path.subList(1, path.size()), cell);
    }

    /** The chart's size in two columns. */
    private boolean size(Map<String, Node.Entry> cells, Map<String, Node.Entry> piece) {
        Node.Entry wide = cells.get(PieceColumns.WIDE);
        Node.Entry high = cells.get(PieceColumns.HIGH);
        if (wide == null && high == null) {
            return true;
        }
        if (wide == null || high == null) {
            problems.add(Objects.requireNonNullElse(wide, high).key(), Fault.of("table.wide-high"));
            return false;
        }
        Optional<Integer> across = stitches(wide, PieceColumns.WIDE);
        Optional<Integer> down = stitches(high, PieceColumns.HIGH);
        across.ifPresent(w -> down.ifPresent(h -> piece.put("stitches",
                new Node.Entry(wide.key(), new Node.Scalar(wide.key(), w + " x " + h, true)))));
        return across.isPresent() && down.isPresent();
    }

    private Optional<Integer> stitches(Node.Entry cell, String column) {
        return Fields.scalar(cell.value(), Fields.key(column), WholeText.stitches(), problems);
    }

    /** How far it was on a day. */
    private boolean reading(Map<String, Node.Entry> cells, Map<String, Node.Entry> piece) {
        Node.Entry on = cells.get(PieceColumns.DONE_ON);
        Node.Entry done = cells.get("done");
        if (on == null) {
            return true;
        }
        if (done == null) {
            problems.add(on.key(), Fault.of("table.done-on"));
            return false;
        }
        return put(piece, List.of("progress", "readings"), list(done, Map.of("on", on, "done", done)));
    }

    /** A state is said by a day and what is so from then on, or known by the day of another column. */
    private boolean state(Map<String, Node.Entry> cells, Map<String, Node.Entry> piece) {
        Node.Entry cell = cells.get(PieceColumns.STATE);
        String written = cell == null ? "waiting" : text(cell).strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
        String state = SAME.getOrDefault(written, written);
        boolean known = state.equals("waiting") || state.equals("begun") && cells.containsKey("done") || cells.containsKey(state);
        boolean dated = state.equals("stitched") || state.equals("finished");
        Optional<Node.Entry> since = DAYS.stream().flatMap(column -> Stream.ofNullable(cells.get(column))).findFirst();
        if (known) {
            return true;
        }
        if (dated || since.isEmpty()) {
            problems.add(cell.key(), Fault.of("table.state-day", Quote.bare(text(cell)), dated ? state : PieceColumns.SINCE));
            return false;
        }
        Node.Entry is = new Node.Entry(cell.key(), new Node.Scalar(cell.key(), state, true));
        return put(piece, List.of("progress", "states"), list(cell, Map.of("on", since.get(), "is", is)));
    }

    /** A list of one thing. */
    private static Node.Entry list(Node.Entry at, Map<String, Node.Entry> thing) {
        return new Node.Entry(at.key(), new Node.Sequence(at.key(), new ArrayList<>(List.of(new Node.Mapping(at.key(), thing)))));
    }

    private static String text(Node.Entry cell) {
        return ((Node.Scalar) cell.value()).text();
    }
}
