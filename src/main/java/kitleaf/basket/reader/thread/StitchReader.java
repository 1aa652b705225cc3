package kitleaf.basket.reader.thread;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import kitleaf.basket.form.Choice;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.LengthText;
import kitleaf.basket.form.WholeText;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.place.Problems;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import kitleaf.basket.yaml.Node;

/** Reads how many stitches of each kind a thread is worked in. */
final class StitchReader {

    private static final Map<String, StitchKind> KINDS = kinds();
    /** The kinds as written, in kebab-case. */
    static final List<String> KIND_WORDS = List.copyOf(KINDS.keySet());

    /** Common names of the trade that mean a kind, beside ours and those with "stitch" behind them. */
    static final Map<String, List<String>> OTHER_NAMES = Map.ofEntries(
            Map.entry("cross", List.of("crosses", "cross stitch", "cross stitches", "full cross", "full stitch", "full stitches")),
            Map.entry("half", List.of("half cross", "half cross stitch", "half stitch", "half stitches")),
            Map.entry("tent", List.of("tent stitch", "tent stitches", "petit point")),
            Map.entry("quarter", List.of("quarters", "quarter stitch", "quarter stitches")),
            Map.entry("three-quarter", List.of("three quarters", "three quarter stitch", "three quarter stitches")),
            Map.entry("back", List.of("back stitch", "back stitches", "backstitch", "backstitches")),
            Map.entry("double-running", List.of("double running stitch", "holbein", "holbein stitch")),
            Map.entry("satin", List.of("satin stitch", "satin stitches")),
            Map.entry("knot", List.of("knots", "french knot", "french knots")),
            Map.entry("long-armed", List.of("long armed cross", "long armed cross stitch", "long legged cross")),
            Map.entry("rice", List.of("rice stitch", "rice stitches")),
            Map.entry("eyelet", List.of("eyelets", "eyelet stitch", "eyelet stitches", "algerian eye", "algerian eyes", "algerian eyelet")),
            Map.entry("four-sided", List.of("four sided stitch", "four sided stitches")),
            Map.entry("satin-block", List.of("satin blocks", "satin stitch block", "satin stitch blocks")),
            Map.entry("hem", List.of("hemstitch", "hemstitches", "hem stitch", "hem stitches")),
            Map.entry("queen", List.of("queen stitch", "queen stitches", "queens stitch")));

    private static final Form<Integer> NUMBER = WholeText.stitches();
    private static final Keys CROSS = Keys.under("cross", "{count: 2310, worked: rows}");
    private static final Key<Integer> CROSSES = CROSS.must("count", NUMBER, "900");
    private static final Key<StitchCount.Worked> WORKED = CROSS.may("worked", Choice.of("choice.worked", StitchCount.Worked.class));
    private static final Keys SATIN = Keys.under("satin", "{count: 80, span: 5}");
    private static final Key<Integer> SATINS = SATIN.must("count", NUMBER, "96");
    private static final Key<Integer> SPAN = SATIN.may("span", new WholeText(1, 40, "5"), "6");
    private static final Keys OTHER = Keys.under("other", "{count: 12, each: 3 cm}");
    private static final Key<Integer> OTHERS = OTHER.must("count", NUMBER, "1", "12");
    private static final Key<Double> EACH = OTHER.must("each", new LengthText(0.1, 10_000, "stitch.each", "3 cm"));

    /** Each kind's key. */
    static final Keys KEYS = Keys.under("stitches", "{cross: 2310, back: 120}");

    static {
        KEYS.may("cross", NUMBER, CROSS, "2310", "1", "{count: 900, worked: singly}", "1420");
        KEYS.may("half", NUMBER, "40", "1");
        KEYS.may("tent", NUMBER, "60", "1");
        KEYS.may("quarter", NUMBER, "12", "1");
        KEYS.may("three-quarter", NUMBER, "8", "1");
        KEYS.may("back", NUMBER, "120", "1");
        KEYS.may("double-running", NUMBER, "90", "1");
        KEYS.may("satin", NUMBER, SATIN, "80", "1", "{count: 96, span: 6}");
        KEYS.may("knot", NUMBER, "14", "1");
        KEYS.may("long-armed", NUMBER, "60", "1");
        KEYS.may("rice", NUMBER, "24", "1");
        KEYS.may("eyelet", NUMBER, "18", "1");
        KEYS.may("four-sided", NUMBER, "36", "1");
        KEYS.may("satin-block", NUMBER, "9", "1");
        KEYS.may("hem", NUMBER, "40", "1");
        KEYS.may("queen", NUMBER, "7", "1");
        KEYS.may("other", OTHER, "{count: 1, each: 3 cm}", OTHER.example());
        OTHER_NAMES.forEach((kind, names) -> KEYS.also(kind, names.toArray(String[]::new)));
    }

    private final Problems problems;

    StitchReader(Problems problems) {
        this.problems = problems;
    }

    private static Map<String, StitchKind> kinds() {
        Map<String, StitchKind> kinds = new LinkedHashMap<>();
        for (StitchKind kind : StitchKind.values()) {
            kinds.put(kind.word(), kind);
        }
        return kinds;
    }

    /** The stitches in the order they were written. */
    List<StitchCount> read(Node node) {
        List<StitchCount> counts = new ArrayList<>();
        Optional<Fields> fields = Fields.of(node, KEYS, problems);
        if (fields.isEmpty()) {
            return counts;
        }
        for (String word : fields.get().entries().keySet()) {
            StitchKind kind = KINDS.get(word);
            Optional<Node> count = kind == null ? Optional.empty() : fields.get().node(word, "120");
            if (count.isPresent()) {
                one(fields.get(), word, kind, count.get()).ifPresent(counts::add);
            }
        }
        return counts;
    }

    private Optional<StitchCount> one(Fields fields, String word, StitchKind kind, Node node) {
        if (kind == StitchKind.OTHER) {
            return other(node);
        }
        if (node instanceof Node.Mapping && kind == StitchKind.CROSS) {
            return Fields.of(node, CROSS, problems).flatMap(cross -> {
                Optional<StitchCount.Worked> worked = cross.value(WORKED);
                return cross.value(CROSSES).map(count -> new StitchCount(kind, count, worked, OptionalInt.empty(), OptionalDouble.empty()));
            });
        }
        if (node instanceof Node.Mapping && kind == StitchKind.SATIN) {
            return Fields.of(node, SATIN, problems).flatMap(satin -> {
                Optional<Integer> span = satin.value(SPAN);
                return satin.value(SATINS).map(count -> new StitchCount(kind, count, Optional.empty(),
                        span.map(OptionalInt::of).orElseGet(OptionalInt::empty), OptionalDouble.empty()));
            });
        }
        return fields.scalar(node, Fields.key(word), NUMBER).map(count -> StitchCount.of(kind, count));
    }

    private Optional<StitchCount> other(Node node) {
        return Fields.of(node, OTHER, problems).flatMap(other -> {
            Optional<Integer> count = other.value(OTHERS);
            Optional<Double> eachMm = other.value(EACH);
            return count.flatMap(c -> eachMm.map(mm -> new StitchCount(StitchKind.OTHER, c, Optional.empty(),
                    OptionalInt.empty(), OptionalDouble.of(mm))));
        });
    }
}
