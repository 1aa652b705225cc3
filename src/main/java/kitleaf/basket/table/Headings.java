package kitleaf.basket.table;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.regex.Pattern;
import kitleaf.basket.place.Advice;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.words.NearMiss;
import kitleaf.words.Said;

/**
 * Finds the column a heading means. Capitals, blanks, hyphens and the like do not count, nor does {@code color} for {@code colour}.
 * Words that surely mean a column are taken for it; a word that may mean it is, where nothing else does. A word near a column's is a
 * problem and not passed over: a misspelt column of stitches would quietly cost a skein. Any other is hers alone and is told.
 */
public final class Headings {

    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}]");
    private static final Set<String> HER_OWN = Set.of("note", "notes", "remark", "remarks", "comment", "comments");

    /** What columns are called besides their own names, whichever table they are in. */
    private static final Map<String, List<String>> ALSO = Map.of(
            "code", List.of("codes", "thread code", "colour code", "thread number", "colour number"),
            "colour", List.of("colours", "hex", "hex colour", "colour hex"),
            "lot", List.of("lots", "dye lot", "dye lots"),
            "name", List.of("names", "colour name", "thread name"),
            "skein", List.of("put-up"));

    /** What may be meant where nothing else in the table is. */
    private static final Map<String, List<String>> PERHAPS = Map.of("code", List.of("thread", "threads", "number", "no"));

    private final String what;
    private final List<String> columns;
    private final Map<String, String> meant = new HashMap<>();
    private final Map<String, String> loose = new HashMap<>();
    private final Map<String, String> unclear = new HashMap<>();
    private boolean numbersCount;

    /**
     * Headings of a table.
     *
     * @param what whose columns they are: {@code threads}
     * @param columns their own names
     */
    public Headings(String what, List<String> columns) {
        this.what = what;
        this.columns = List.copyOf(columns);
        columns.forEach(column -> meant.put(key(column), column));
        for (String column : columns) {
            also(column, ALSO.getOrDefault(column, List.of()).toArray(String[]::new));
            perhaps(column, PERHAPS.getOrDefault(column, List.of()).toArray(String[]::new));
        }
    }

    /** Other words that surely mean a column. */
    public Headings also(String column, String... words) {
        for (String word : words) {
            meant.putIfAbsent(key(word), column);
        }
        return this;
    }

    /** Words that mean a column where no other heading does. */
    public Headings perhaps(String column, String... words) {
        for (String word : words) {
            loose.put(key(word), column);
        }
        return this;
    }

    /** Words that are near enough to be written and too unclear to be taken. */
    public Headings unclear(String fault, String... words) {
        for (String word : words) {
            unclear.put(key(word), fault);
        }
        return this;
    }

    /** Refuses a column of numbers that nobody knows, which may be stitches of some kind. */
    public Headings numbersCount() {
        numbersCount = true;
        return this;
    }

    List<String> columns() {
        return columns;
    }

    /** Whether a heading is a word for a column, if perhaps for others too. */
    public boolean mayMean(String heading, String column) {
        return column.equals(loose.get(key(heading))) || column.equals(meant.get(key(heading)));
    }

    /** Whether a heading is one that can be taken or passed over. */
    boolean knows(String heading) {
        return herOwn(heading) || meant.containsKey(key(heading)) || loose.containsKey(key(heading));
    }

    /**
     * The column of each heading, nothing for those that are passed over or cannot be taken; what is wrong is told.
     *
     * @param headings as written, in the order of the cells
     * @param places where each stands
     * @param numbers whether the column of that index holds numbers and nothing else
     */
    List<Optional<String>> read(List<String> headings, List<Place> places, IntPredicate numbers, Problems problems) {
        List<Optional<String>> read = new ArrayList<>();
        List<String> passedOver = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (int i = 0; i < headings.size(); i++) {
            if (hersAlone(headings.get(i)) && !(numbersCount && numbers.test(i))) {
                passedOver.add(Quote.bare(headings.get(i)));
                read.add(Optional.empty());
                continue;
            }
            Optional<String> column = sure(headings.get(i), places.get(i), problems);
            if (column.isPresent() && !seen.add(column.get())) {
                problems.add(places.get(i), headings.get(i).equals(column.get()) ? Fault.of("fields.twice", Quote.bare(column.get()))
                        : Fault.of("table.column-twice", Quote.bare(headings.get(i)), column.get()));
                column = Optional.empty();
            }
            read.add(column);
        }
        if (!passedOver.isEmpty()) {
            problems.remark(places.get(0).source().name(), Fault.of("table.passed-over", String.join(", ", passedOver)));
        }
        for (int i = 0; i < headings.size(); i++) {
            String key = key(headings.get(i));
            Optional<String> column = Optional.ofNullable(loose.get(key)).filter(c -> !meant.containsKey(key));
            if (column.isPresent() && alone(column.get(), headings, seen)) {
                read.set(i, column);
            } else if (column.isPresent()) {
                problems.add(places.get(i), Fault.of("table.column-loose", Quote.bare(headings.get(i)), column.get()));
            }
        }
        return read;
    }

    /** Whether nothing else among the headings means a column, surely or perhaps. */
    private boolean alone(String column, List<String> headings, Set<String> seen) {
        return !seen.contains(column) && headings.stream().map(Headings::key)
                .filter(key -> !meant.containsKey(key) && column.equals(loose.get(key))).count() == 1;
    }

    private Optional<String> sure(String heading, Place place, Problems problems) {
        String key = key(heading);
        if (meant.containsKey(key)) {
            return Optional.of(meant.get(key));
        }
        if (heading.isEmpty()) {
            problems.add(place, Fault.of("table.nameless"));
        } else if (unclear.containsKey(key)) {
            problems.add(place, Fault.of(unclear.get(key), Quote.bare(heading)));
        } else if (!herOwn(heading) && !loose.containsKey(key)) {
            problems.add(place, Fault.of(Said.of("table.column", Quote.bare(heading), what),
                    NearMiss.of(heading, columns).or(() -> NearMiss.of(key(heading), meant.keySet()).map(meant::get))
                            .map(Advice::meant).orElseGet(() -> Said.of("table.pass-over",
                            Advice.on(heading, columns)))));
        }
        return Optional.empty();
    }

    /** Whether a heading is nothing that is known, nor near it. */
    private boolean hersAlone(String heading) {
        return !key(heading).isEmpty() && !knows(heading) && !unclear.containsKey(key(heading)) && NearMiss.of(heading, columns).isEmpty()
                && NearMiss.of(key(heading), meant.keySet()).isEmpty();
    }

    private static boolean herOwn(String heading) {
        return HER_OWN.contains(key(heading)) || heading.startsWith("(") && heading.endsWith(")");
    }

    /** The letters and digits of a heading, small, in one spelling. */
    private static String key(String heading) {
        return BETWEEN.matcher(Normalizer.normalize(heading, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT)).replaceAll("")
                .replace("color", "colour");
    }
}
