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
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Place;
import kitleaf.basket.place.Problems;
import kitleaf.basket.yaml.Node;

/** Reads what a piece is stitched on. */
public final class ClothReader {

    public static final Form<Integer> OVER_FORM = new WholeText(1, Cloth.MOST_OVER, "2");
    /** Common words of the trade are understood beside ours, in both languages. */
    public static final Form<Cloth.Kind> KIND_FORM = Choice.of("choice.cloth-kind", Cloth.Kind.class)
            .also(Cloth.Kind.BLOCK, "aida", "aida cloth", "block cloth", "block weave", "blockweave",
                    "Blockgewebe", "Aida-Stoff", "Aidastoff")
            .also(Cloth.Kind.EVENWEAVE, "even weave", "evenweave cloth", "Zählstoff", "gleichfädig")
            .also(Cloth.Kind.LINEN, "linen cloth", "Leinen", "Zählleinen");
    static final Form<Cloth.WarpRun> WARP_FORM = Choice.of("choice.warp", Cloth.WarpRun.class);

    /** The two counts of a cloth that is no evenweave. */
    static final Fields.Pair<Double> COUNT_APART = warpAndWeft("count", new CountText(),
            List.of("35.5", "71 in 2 in"), List.of("71 in 2 in", "145 in 10 cm"));
    private static final Form<Double> SHRINK_FORM = new PercentText(Shrink.MOST, "cloth.shrink", "2%");
    private static final Fields.Pair<Double> SHRINK_APART = warpAndWeft("shrink", SHRINK_FORM, List.of("3%"), List.of("2%"));

    public static final Keys KEYS = Keys.under("cloth", "{kind: linen, count: 36, over: 2}");
    private static final Key<String> NAME = KEYS.may("name", new TextForm("Sea-mist"));
    static final Key<Cloth.Kind> KIND = KEYS.may("kind", KIND_FORM);
    static final Key<Double> COUNT = KEYS.may("count", new CountText(), COUNT_APART.keys(),
            "36", "{warp: 71 in 2 in, weft: 145 in 10 cm}", "16");
    private static final Key<Integer> OVER = KEYS.may("over", OVER_FORM);
    private static final Key<Double> SHRINK = KEYS.may("shrink", SHRINK_FORM, SHRINK_APART.keys(), "2%", "{warp: 3%, weft: 2%}");
    private static final Key<Cloth.Counted> COUNTED = KEYS.may("counted", Choice.of("choice.counted", Cloth.Counted.class));
    private static final Key<Cloth.WarpRun> WARP = KEYS.may("warp", WARP_FORM);
    private static final Key<Cloth.Dyeing> OVER_DYED = KEYS.may("over-dyed", Choice
            .of("choice.over-dyed", Cloth.Dyeing.class, when -> when != Cloth.Dyeing.NONE)
            .also(Cloth.Dyeing.BEFORE, "yes", "true").also(Cloth.Dyeing.NONE, "no", "false"), "before", "after", "yes");
    private static final Key<Boolean> CUT = KEYS.may("cut", new YesNo());

    /** The name of the fault of a begun piece whose cloth is not cut. */
    public static final String UNCUT = "cloth.uncut";

    private static Fields.Pair<Double> warpAndWeft(String name, Form<Double> form, List<String> warps, List<String> wefts) {
        Keys keys = Keys.under(name, "{warp: " + form.example() + ", weft: " + form.example() + "}");
        return new Fields.Pair<>(keys, keys.must("warp", form, warps.toArray(String[]::new)),
                keys.must("weft", form, wefts.toArray(String[]::new)));
    }

    private final KnownCloths onHand;
    private final Problems problems;

    ClothReader(KnownCloths onHand, Problems problems) {
        this.onHand = onHand;
        this.problems = problems;
    }

    Optional<Cloth> read(Node node) {
        return Fields.of(node, KEYS, problems).flatMap(this::read);
    }

    private Optional<Cloth> read(Fields fields) {
        Optional<String> name = fields.value(NAME);
        ClothTaken taken = ClothTaken.read(fields, name, onHand);
        Optional<Integer> over = over(fields, taken.kind());
        Shrink shrink = fields.oneOrTwo(SHRINK, SHRINK_APART, x -> new Shrink(x, x), Shrink::new)
                .orElse(Shrink.NONE);
        Cloth.Counted counted = fields.value(COUNTED)
                .orElse(Cloth.Counted.AFTER);
        Cloth.WarpRun warp = fields.value(WARP).orElse(Cloth.WarpRun.DOWN);
        Cloth.Dyeing dyeing = fields.value(OVER_DYED).orElse(Cloth.Dyeing.NONE);
        boolean cut = fields.value(CUT).orElse(false);
        return taken.kind().flatMap(k -> taken.count().flatMap(c -> over.map(
                o -> new Cloth(name, k, c, o, shrink, counted, warp, dyeing, cut))));
    }

    /** Where a cloth is said not to be cut yet, if it is. */
    static Optional<Place> saidUncut(Node cloth) {
        return Optional.of(cloth).filter(Node.Mapping.class::isInstance).map(keys -> ((Node.Mapping) keys).entries().get("cut"))
                .filter(cut -> cut.value() instanceof Node.Scalar said
                        && List.of("no", "false").contains(said.text().strip().toLowerCase(Locale.ROOT)))
                .map(cut -> cut.value().place());
    }

    /** The count of a cloth, in any of the forms it can take. */
    static Optional<Count> count(Fields fields, Key<Double> count) {
        return fields.oneOrTwo(count, COUNT_APART, x -> new Count(x, x), Count::new);
    }

    private static Optional<Integer> over(Fields fields, Optional<Cloth.Kind> kind) {
        if (kind.isPresent() && kind.get() != Cloth.Kind.BLOCK) {
            return fields.required(OVER);
        }
        Optional<Integer> over = fields.value(OVER);
        if (kind.isPresent() && over.isPresent() && over.get() != 1) {
            fields.wrong("over", Fault.of("cloth.block-over", over.get()));
            return Optional.empty();
        }
        return fields.has("over") ? over : Optional.of(1);
    }
}
