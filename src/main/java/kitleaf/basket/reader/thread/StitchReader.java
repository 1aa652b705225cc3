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
import kitleaf.basket.place.Problems;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import kitleaf.basket.yaml.Node;

/** Reads how many stitches of each kind a thread is worked in. */
final class StitchReader {

    private static final Map<String, StitchKind> KINDS = kinds();
    /** The kinds as written, in kebab-case. */
    static final List<String> KIND_WORDS = List.copyOf(KINDS.keySet());
    static final String EXAMPLE = "{cross: 2310, back: 120}";

    private static final Form<Integer> COUNT = WholeText.stitches();
    private static final Form<Integer> SPAN = new WholeText(1, 40, "5");
    private static final Form<Double> EACH =
            new LengthText(0.1, 10_000, "stitch.each", "3 cm");

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
        Optional<Fields> fields = Fields.of(node, Fields.key("stitches"), EXAMPLE, KIND_WORDS, problems);
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
            return Fields.of(node, Fields.key("cross"), "{count: 2310, worked: rows}", List.of("count", "worked"), problems)
                    .flatMap(cross -> {
                Optional<StitchCount.Worked> worked =
                        cross.value("worked", Choice.of("choice.worked", StitchCount.Worked.class));
                return cross.required("count", COUNT).map(
                        count -> new StitchCount(kind, count, worked, OptionalInt.empty(), OptionalDouble.empty()));
            });
        }
        if (node instanceof Node.Mapping && kind == StitchKind.SATIN) {
            return Fields.of(node, Fields.key("satin"), "{count: 80, span: 5}", List.of("count", "span"), problems).flatMap(satin -> {
                Optional<Integer> span = satin.value("span", SPAN);
                return satin.required("count", COUNT).map(count -> new StitchCount(kind, count, Optional.empty(),
                        span.map(OptionalInt::of).orElseGet(OptionalInt::empty), OptionalDouble.empty()));
            });
        }
        return fields.scalar(node, Fields.key(word), COUNT).map(count -> StitchCount.of(kind, count));
    }

    private Optional<StitchCount> other(Node node) {
        return Fields.of(node, Fields.key("other"), "{count: 12, each: 3 cm}", List.of("count", "each"), problems).flatMap(other -> {
            Optional<Integer> count = other.required("count", COUNT);
            Optional<Double> eachMm = other.required("each", EACH);
            return count.flatMap(c -> eachMm.map(mm -> new StitchCount(StitchKind.OTHER, c, Optional.empty(),
                    OptionalInt.empty(), OptionalDouble.of(mm))));
        });
    }
}
