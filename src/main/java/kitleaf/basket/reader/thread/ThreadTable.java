package kitleaf.basket.reader.thread;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitleaf.basket.form.ColourText;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.key.Fields;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.place.Source;
import kitleaf.basket.table.CsvTable;
import kitleaf.basket.table.Headings;
import kitleaf.basket.yaml.Node;

/**
 * Reads a table of threads, and makes of its rows the nodes a list of threads would have been. Columns named like stitch
 * kinds become the thread's stitches. One table may serve several pieces: then each row says whose it is.
 */
final class ThreadTable {

    static final String PIECE = "piece";
    static final String PART = "part";
    private static final String COLOUR = "colour";

    private static final List<String> PLAIN =
            List.of("code", "name", "colour", "symbol", "skein", "strands", "share", "over", "lot", "mix-lots");

    /**
     * Columns that together make one value.
     *
     * @param key the value's key among the stitches, or in the thread
     * @param first the first column
     * @param firstKey what it is in the value
     * @param second the second column
     * @param secondKey what it is in the value
     * @param both whether both are needed; otherwise the first may stand alone
     * @param fault the name of the fault where one is missing
     */
    private record Together(String key, String first, String firstKey, String second, String secondKey, boolean both, String fault) {
    }

    private static final List<Together> STITCHES_TOGETHER = List.of(
            new Together("cross", "cross", "count", "cross-worked", "worked", false, "table.no-crosses"),
            new Together("satin", "satin", "count", "satin-span", "span", false, "table.no-satin"),
            new Together("other", "other", "count", "other-each", "each", true, "table.other"));
    private static final Together USED = new Together("used", "used-skeins", "skeins", "used-stitches", "stitches", true, "table.used");

    /** All columns, in the order to write them. */
    static final List<String> COLUMNS = columns();

    private static final CsvTable.Shape SHAPE = new CsvTable.Shape("threads", headings(), List.of("code"),
            Set.of("share", "other-each", "used-skeins"), "code,name,cross");

    /** The columns that say whose a row is. */
    private static final Map<String, Form<String>> OWNERS = Map.of(PIECE, new TextForm("fog-bell"), PART, new TextForm("Verse"));

    private final Source source;
    private final Problems problems;

    ThreadTable(Source source, Problems problems) {
        this.source = source;
        this.problems = problems;
    }

    private static List<String> columns() {
        List<String> columns = new ArrayList<>(List.of(PIECE, PART));
        columns.addAll(PLAIN);
        columns.addAll(StitchReader.KIND_WORDS);
        STITCHES_TOGETHER.forEach(together -> columns.add(together.second()));
        columns.add(USED.first());
        columns.add(USED.second());
        return List.copyOf(columns);
    }

    private static Headings headings() {
        Headings headings = new Headings("threads", COLUMNS).numbersCount()
                .also("symbol", "symbols", "sign", "chart symbol")
                .also("strands", "strand", "number of strands")
                .also("share", "shares", "percent", "percentage")
                .also("over", "over threads")
                .also("mix-lots", "lots mixed", "mix dye lots")
                .also(PIECE, "pieces", "piece id")
                .also(PART, "parts")
                .also("other-each", "each")
                .unclear("table.which-stitches", "stitches", "stitch",
                        "total", "totals", "count", "counts", "number of stitches", "total stitches", "stitch count");
        StitchReader.OTHER_NAMES.forEach((kind, names) -> headings.also(kind, names.toArray(String[]::new)));
        for (String kind : StitchReader.KIND_WORDS) {
            headings.also(kind, kind + "s", kind + "es", kind + " stitch", kind + " stitches", kind + "s stitch");
        }
        return headings;
    }

    /**
     * Whose a row is, as far as it says so.
     *
     * @param piece its ID
     * @param part the part's name
     */
    record Whose(Optional<String> piece, Optional<String> part) {
        static final Whose ANYBODY = new Whose(Optional.empty(), Optional.empty());
    }

    /**
     * What a table holds.
     *
     * @param named whether any row says whose it is
     * @param pieces whether any row says which piece's it is
     * @param threads the rows by whose they are, in the order of the first of each
     */
    record Rows(boolean named, boolean pieces, Map<Whose, List<Node.Mapping>> threads) {
        static final Rows NONE = new Rows(false, false, Map.of());
    }

    /** The rows below the header. */
    Rows read() {
        Map<Whose, List<Node.Mapping>> threads = new LinkedHashMap<>();
        List<Node.Mapping> all = new CsvTable(source, SHAPE, problems).read();
        dropWords(all);
        boolean pieces = all.stream().anyMatch(row -> row.entries().containsKey(PIECE));
        boolean named = pieces || all.stream().anyMatch(row -> row.entries().containsKey(PART));
        for (Node.Mapping row : all) {
            Optional<String> piece = owner(row, PIECE);
            Optional<String> part = owner(row, PART);
            if (pieces && !row.entries().containsKey(PIECE)) {
                // Taken by each piece that names the table, it would be bought for each.
                problems.add(row.place(), Fault.of("table.no-piece"));
            } else if (piece.isPresent() == row.entries().containsKey(PIECE) && part.isPresent() == row.entries().containsKey(PART)) {
                threads.computeIfAbsent(new Whose(piece, part), whose -> new ArrayList<>()).add(row);
            }
        }
        return new Rows(named, pieces, threads);
    }

    /** Tells once, not in every row, of a column of colours that holds words. */
    private void dropWords(List<Node.Mapping> rows) {
        List<Node.Entry> colours = rows.stream().flatMap(row -> Stream.ofNullable(row.entries().get(COLOUR))).toList();
        if (colours.size() > 1 && colours.stream().noneMatch(cell -> Fields.scalar(cell.value(), Fields.key(COLOUR), new ColourText(),
                new Problems()).isPresent())) {
            problems.add(colours.get(0).key(), Fault.of("table.colour-words", Quote.bare(((Node.Scalar) colours.get(0).value()).text())));
            rows.forEach(row -> row.entries().remove(COLOUR));
        }
    }

    private Optional<String> owner(Node.Mapping row, String column) {
        return Optional.ofNullable(row.entries().get(column))
                .flatMap(entry -> Fields.scalar(entry.value(), Fields.key(column), OWNERS.get(column), problems));
    }

    /** Where a row says whose it is. */
    static Place whoseIsSaid(Node.Mapping row) {
        return Optional.ofNullable(row.entries().get(PIECE)).or(() -> Optional.ofNullable(row.entries().get(PART)))
                .map(Node.Entry::key).orElse(row.place());
    }

    /** The mapping a row would have been in a list of threads. */
    static Node thread(Node.Mapping row, Problems problems) {
        Map<String, Node.Entry> thread = new LinkedHashMap<>();
        Map<String, Node.Entry> stitches = new LinkedHashMap<>();
        row.entries().forEach((column, entry) -> {
            if (column.equals("strands")) {
                Node strands = StrandsReader.ofCell((Node.Scalar) entry.value(), ThreadTable::kind, problems);
                thread.put(column, new Node.Entry(entry.key(), strands));
            } else if (PLAIN.contains(column)) {
                thread.put(column, entry);
            } else if (STITCHES_TOGETHER.stream().anyMatch(together -> together.first().equals(column))) {
                stitches.put(column, entry);
            } else if (StitchReader.KIND_WORDS.contains(column)) {
                stitches.put(column, entry);
            }
        });
        STITCHES_TOGETHER.forEach(together -> put(together, row, stitches, problems));
        put(USED, row, thread, problems);
        putGroup(thread, "stitches", stitches);
        return new Node.Mapping(row.place(), thread);
    }

    /** The kind a word means, as a heading would; else the word, which is then told to be none. */
    private static String kind(String word) {
        return StitchReader.KIND_WORDS.stream().filter(kind -> SHAPE.headings().mayMean(word, kind)).findFirst().orElse(word);
    }

    /** Makes one value of two cells. */
    private static void put(Together together, Node.Mapping row, Map<String, Node.Entry> into, Problems problems) {
        Optional<Node.Entry> first = Optional.ofNullable(row.entries().get(together.first()));
        Optional<Node.Entry> second = Optional.ofNullable(row.entries().get(together.second()));
        boolean lone = first.isPresent() != second.isPresent();
        if (lone && (together.both() || second.isPresent())) {
            into.remove(together.key());
            problems.add(first.or(() -> second).orElseThrow().key(), Fault.of(together.fault()));
        } else if (first.isPresent() && second.isPresent()) {
            Map<String, Node.Entry> group = new LinkedHashMap<>();
            group.put(together.firstKey(), first.get());
            group.put(together.secondKey(), second.get());
            putGroup(into, together.key(), group);
        }
    }

    private static void putGroup(Map<String, Node.Entry> into, String key, Map<String, Node.Entry> group) {
        if (!group.isEmpty()) {
            Place place = group.values().iterator().next().key();
            into.put(key, new Node.Entry(place, new Node.Mapping(place, group)));
        }
    }
}
