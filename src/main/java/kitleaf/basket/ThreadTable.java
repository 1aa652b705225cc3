package kitleaf.basket;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a table of threads into the nodes a list of threads would have been. Columns named like stitch
 * kinds become the thread's stitches.
 */
final class ThreadTable {

    private static final String OTHER = "other";
    private static final String OTHER_EACH = "other-each";
    private static final List<String> PLAIN =
            List.of("code", "name", "colour", "symbol", "skein", "strands", "share", "over", "lot");
    private static final CsvTable.Shape SHAPE = new CsvTable.Shape("threads", columns(), List.of("code"), "code,name,cross");

    private final CsvTable table;
    private final Problems problems;

    ThreadTable(Source source, Problems problems) {
        this.table = new CsvTable(source, SHAPE, problems);
        this.problems = problems;
    }

    private static List<String> columns() {
        List<String> columns = new ArrayList<>(PLAIN);
        columns.addAll(StitchReader.KIND_WORDS);
        columns.add(OTHER_EACH);
        return columns;
    }

    /** A mapping for each row below the header. */
    List<Node> read() {
        List<Node> threads = new ArrayList<>();
        table.read().forEach(row -> threads.add(thread(row)));
        return threads;
    }

    private Node thread(Node.Mapping row) {
        Map<String, Node.Entry> thread = new LinkedHashMap<>();
        Map<String, Node.Entry> stitches = new LinkedHashMap<>();
        Map<String, Node.Entry> other = new LinkedHashMap<>();
        row.entries().forEach((column, entry) -> {
            switch (column) {
                case OTHER -> other.put("count", entry);
                case OTHER_EACH -> other.put("each", entry);
                default -> (PLAIN.contains(column) ? thread : stitches).put(column, entry);
            }
        });
        if (other.size() == 1) {
            problems.add(other.values().iterator().next().key(), "other stitches need both their number and the thread each takes",
                    "fill the columns other and other-each, such as 12 and 3 cm");
        } else {
            putGroup(stitches, OTHER, other);
        }
        putGroup(thread, "stitches", stitches);
        return new Node.Mapping(row.place(), thread);
    }

    private static void putGroup(Map<String, Node.Entry> into, String key, Map<String, Node.Entry> group) {
        if (!group.isEmpty()) {
            Place place = group.values().iterator().next().key();
            into.put(key, new Node.Entry(place, new Node.Mapping(place, group)));
        }
    }
}
