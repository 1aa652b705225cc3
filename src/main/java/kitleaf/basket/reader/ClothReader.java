package kitleaf.basket.reader;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Shrink;
import kitleaf.basket.form.Choice;
import kitleaf.basket.form.CountText;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.PercentText;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.form.WholeText;
import kitleaf.basket.form.YesNo;
import kitleaf.basket.key.Fields;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problems;
import kitleaf.basket.yaml.Node;

/** Reads what a piece is stitched on. */
public final class ClothReader {

    static final String EXAMPLE = "{kind: linen, count: 36, over: 2}";

    private static final List<String> KEYS =
            List.of("name", "kind", "count", "over", "shrink", "counted", "warp", "over-dyed", "cut");

    public static final Form<Integer> OVER = new WholeText(1, Cloth.MOST_OVER, "2");
    private static final Form<Double> SHRINK = new PercentText(Shrink.MOST, "cloth.shrink", "2%");

    public static final Form<Cloth.Kind> KIND = Choice.of("choice.cloth-kind", Cloth.Kind.class);
    static final Form<Cloth.WarpRun> WARP = Choice.of("choice.warp", Cloth.WarpRun.class);
    static final String COUNT_EXAMPLE = "36";

    /** The name of the fault of a begun piece whose cloth is not cut. */
    public static final String UNCUT = "cloth.uncut";

    private final KnownCloths onHand;
    private final Problems problems;

    ClothReader(KnownCloths onHand, Problems problems) {
        this.onHand = onHand;
        this.problems = problems;
    }

    Optional<Cloth> read(Node node) {
        return Fields.of(node, Fields.key("cloth"), EXAMPLE, KEYS, problems).flatMap(this::read);
    }

    private Optional<Cloth> read(Fields fields) {
        Optional<String> name = fields.value("name", new TextForm("Sea-mist"));
        ClothTaken taken = ClothTaken.read(fields, name, onHand);
        Optional<Integer> over = over(fields, taken.kind());
        Shrink shrink = fields.oneOrTwo("shrink", SHRINK, "warp", "weft", x -> new Shrink(x, x), Shrink::new)
                .orElse(Shrink.NONE);
        Cloth.Counted counted = fields.value("counted", Choice.of("choice.counted", Cloth.Counted.class))
                .orElse(Cloth.Counted.AFTER);
        Cloth.WarpRun warp = fields.value("warp", WARP).orElse(Cloth.WarpRun.DOWN);
        boolean overDyed = fields.value("over-dyed", new YesNo()).orElse(false);
        boolean cut = fields.value("cut", new YesNo()).orElse(false);
        return taken.kind().flatMap(k -> taken.count().flatMap(c -> over.map(
                o -> new Cloth(name, k, c, o, shrink, counted, warp, overDyed, cut))));
    }

    /** Where a cloth is said not to be cut yet, if it is. */
    static Optional<Place> saidUncut(Node cloth) {
        return Optional.of(cloth).filter(Node.Mapping.class::isInstance).map(keys -> ((Node.Mapping) keys).entries().get("cut"))
                .filter(cut -> cut.value() instanceof Node.Scalar said
                        && List.of("no", "false").contains(said.text().strip().toLowerCase(Locale.ROOT)))
                .map(cut -> cut.value().place());
    }

    /** The count of a cloth, in any of the forms it can take. */
    static Optional<Count> count(Fields fields) {
        return fields.oneOrTwo("count", new CountText(), "warp", "weft", x -> new Count(x, x), Count::new);
    }

    private static Optional<Integer> over(Fields fields, Optional<Cloth.Kind> kind) {
        if (kind.isPresent() && kind.get() != Cloth.Kind.BLOCK) {
            return fields.required("over", OVER);
        }
        Optional<Integer> over = fields.value("over", OVER);
        if (kind.isPresent() && over.isPresent() && over.get() != 1) {
            fields.wrong("over", Fault.of("cloth.block-over", over.get()));
            return Optional.empty();
        }
        return fields.has("over") ? over : Optional.of(1);
    }
}
