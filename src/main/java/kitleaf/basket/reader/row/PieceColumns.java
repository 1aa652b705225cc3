package kitleaf.basket.reader.row;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.reader.ClothReader;
import kitleaf.basket.reader.MarginReader;
import kitleaf.basket.reader.PieceReader;
import kitleaf.basket.reader.ProgressReader;
import kitleaf.basket.table.CsvTable;
import kitleaf.basket.table.Headings;

/**
 * The columns of a table of pieces: every key of a piece that has a single value, as it is declared, and a few that only tables have.
 * What stands in a list of its own, parts and threads and the log, has its own place.
 */
final class PieceColumns {

    static final String ID = "id";
    static final String WIDE = "wide";
    static final String HIGH = "high";
    static final String DONE_ON = "done-on";
    static final String STATE = "state";
    static final String SINCE = "since";

    /** Where a column's cell belongs in what a file would have said. */
    static final Map<String, List<String>> PATHS = paths();

    private static final Set<String> WORDS = Set.of(ID, "piece", "designer", "cloth", "source", "bag", "notes", "threads", STATE);

    static final CsvTable.Shape SHAPE = new CsvTable.Shape("pieces", headings(), List.of("piece"),
            columns().stream().filter(column -> !WORDS.contains(column)).collect(Collectors.toSet()),
            "piece,wide,high,kind,count,over,margin,done");

    private PieceColumns() { }

    private static Map<String, List<String>> paths() {
        Map<String, List<String>> paths = new LinkedHashMap<>();
        // How far it is is what its progress comes to where nothing else is told.
        single(PieceReader.KEYS).filter(key -> !key.equals("progress")).forEach(key -> paths.put(key, List.of(key)));
        paths.put("threads", List.of("threads"));
        single(ClothReader.KEYS).forEach(key -> paths.put(key.equals("name") ? "cloth" : key, List.of("cloth", key)));
        for (String apart : List.of("count", "shrink")) {
            for (String way : List.of("warp", "weft")) {
                paths.put(apart + "-" + way, List.of("cloth", apart, way));
            }
        }
        single(MarginReader.SIDES).forEach(side -> paths.put("margin-" + side, List.of("margin", side)));
        single(ProgressReader.PROGRESS).forEach(key -> paths.put(key, List.of("progress", key)));
        single(ProgressReader.GOAL).forEach(key -> paths.put(key, List.of("goal", key)));
        return paths;
    }

    private static Stream<String> single(Keys keys) {
        return keys.all().stream().filter(key -> key.form() != null).map(Key::name);
    }

    /** All columns, in the order to write them. */
    static List<String> columns() {
        return Stream.of(List.of(ID), PATHS.keySet(), List.of(WIDE, HIGH, DONE_ON, STATE, SINCE))
                .flatMap(Collection::stream).toList();
    }

    private static Headings headings() {
        return new Headings("pieces", columns())
                .also(ID, "piece id", "short name")
                .also("piece", "pieces", "title", "titles", "piece title", "project", "projects", "project name")
                .also("designer", "design by", "designed by")
                .also("stitches", "chart", "chart size", "stitches wide x high", "design size")
                .also(WIDE, "width", "stitches wide", "stitches across", "across")
                .also(HIGH, "height", "stitches high", "stitches down", "down", "tall")
                .also("cloth", "fabric", "cloth name", "fabric name")
                .also("kind", "cloth kind", "kind of cloth", "fabric kind", "kind of fabric", "fabric type", "cloth type")
                .also("count", "cloth count", "fabric count", "threads per inch", "count of cloth")
                .also("over", "over threads", "stitched over")
                .also("margin", "margins")
                .also("finish", "finishing", "made up as", "finished as")
                .also("started", "start", "start date", "date started", "started on", "begun on")
                .also("stitched", "date stitched", "stitched on")
                .also("finished", "finish date", "date finished", "finished on", "date completed", "completed on")
                .also("done", "progress", "percent", "percentage", "percent done", "percent complete", "done percent")
                .also(DONE_ON, "done as of", "as of")
                .also(STATE, "status")
                .also(SINCE, "state since")
                .also("source", "where the chart is", "chart in", "book", "magazine")
                .also("bag", "project bag", "kit bag")
                .also("must", "must do")
                .also("by", "wanted by", "due", "due date", "deadline", "wanted")
                .perhaps("piece", "name", "names")
                .perhaps("kind", "type");
    }
}
