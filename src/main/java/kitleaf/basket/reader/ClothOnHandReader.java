package kitleaf.basket.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.ClothSide;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Flaw;
import kitleaf.basket.form.Choice;
import kitleaf.basket.form.CountText;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.LengthText;
import kitleaf.basket.form.SizeText;
import kitleaf.basket.form.SizeText.Size;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.form.YesNo;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Millimetres;
import kitleaf.basket.place.Problems;
import kitleaf.basket.yaml.Node;
import kitleaf.words.Said;

/** Reads the cloth she has already. */
final class ClothOnHandReader {

    /**
     * The most flaws of one cloth; common practice, no source: a bolt of 20 m that was folded every 10 cm has as many creases. What
     * lies between more of them is too narrow for a piece, and a plan weighs every panel between those that cross.
     */
    static final int MOST_FLAWS = 200;

    private static final Form<Double> FROM = new LengthText(0, ClothOnHand.MOST_MM, "flaw.from", "22 cm");
    private static final Keys FLAW = Keys.of("thing.flaw", "- {from-left: 22 cm, wide: 1 cm}");
    private static final Key<Double> FROM_LEFT = FLAW.may("from-left", FROM);
    private static final Key<Double> FROM_TOP = FLAW.may("from-top", FROM, "40 cm");
    private static final Key<Double> WIDE = FLAW.must("wide", new LengthText(Double.MIN_VALUE, ClothOnHand.MOST_MM, "flaw.wide", "1 cm"),
            "1 cm", "2 cm");

    static final Keys KEYS = Keys.of("thing.cloth-on-hand", "- {name: Sea-mist, kind: linen, count: 36, size: 70 cm x 90 cm}");
    private static final Key<String> NAME = KEYS.must("name", new TextForm("Sea-mist"), "Sea-mist", "Oyster");
    private static final Key<Cloth.Kind> KIND = KEYS.must("kind", ClothReader.KIND_FORM);
    private static final Key<Double> COUNT = KEYS.must("count", new CountText(), ClothReader.COUNT_APART.keys(),
            "36", "{warp: 35.5, weft: 71 in 2 in}");
    private static final Key<Size> SIZE = KEYS.must("size", size("70 cm x 90 cm"), "70 cm x 90 cm", "27 in x 18 in");
    private static final Key<Cloth.WarpRun> WARP = KEYS.may("warp", ClothReader.WARP_FORM);
    private static final Key<ClothSide> SELVEDGE = KEYS.may("selvedge", Choice.of("choice.cloth-side", ClothSide.class));
    private static final Key<Boolean> TURNING = KEYS.may("turning", new YesNo());
    private static final Key<Void> FLAWS = KEYS.list("flaws", FLAW, "[{from-left: 22 cm, wide: 1 cm}, {from-top: 40 cm, wide: 2 cm}]");

    private final Problems problems;

    ClothOnHandReader(Problems problems) {
        this.problems = problems;
    }

    /** How the size of a cloth is written, the width first. */
    static Form<Size> size(String example) {
        LengthText side = new LengthText(ClothOnHand.LEAST_MM, ClothOnHand.MOST_MM, "cloth.side", "70 cm");
        return new SizeText(side, false, "size.two", example);
    }

    /**
     * What came of reading.
     *
     * @param cloths those that could be read, in their order
     * @param whole whether those are all
     */
    record OnHand(List<ClothOnHand> cloths, boolean whole) {
    }

    OnHand read(Fields basket) {
        if (!basket.meant("cloth-on-hand")) {
            return new OnHand(List.of(), true);
        }
        Optional<Node> node = basket.node(SettingsReader.CLOTH_ON_HAND);
        List<ClothOnHand> cloths = new ArrayList<>();
        boolean whole = node.filter(Node.Sequence.class::isInstance).isPresent();
        for (Node item : node.map(list -> basket.items(list, SettingsReader.CLOTH_ON_HAND)).orElseGet(List::of)) {
            Optional<ClothOnHand> cloth = Fields.of(item, KEYS, problems).flatMap(this::cloth);
            cloth.ifPresent(cloths::add);
            whole &= cloth.isPresent();
        }
        return new OnHand(cloths, whole);
    }

    private Optional<ClothOnHand> cloth(Fields fields) {
        Optional<String> name = fields.value(NAME);
        Optional<Cloth.Kind> kind = fields.value(KIND);
        Optional<Count> count = ClothReader.count(fields, COUNT);
        Optional<Size> size = fields.value(SIZE);
        Optional<ClothSide> selvedge = fields.value(SELVEDGE);
        Cloth.WarpRun warp = warp(fields, selvedge);
        boolean turning = fields.value(TURNING).orElse(false);
        List<Flaw> flaws = flaws(fields, size);
        // A selvedge that contradicts the warp has been told; without it the cloth can still be made.
        return name.flatMap(n -> kind.flatMap(k -> count.flatMap(c -> size.map(s -> new ClothOnHand(n, k, c, s.acrossMm(),
                s.downMm(), warp, selvedge.filter(side -> side.warp() == warp), turning, flaws)))));
    }

    /** Which way the warp runs: as she says, or along the selvedge. */
    private static Cloth.WarpRun warp(Fields fields, Optional<ClothSide> selvedge) {
        Optional<Cloth.WarpRun> warp = fields.value(WARP);
        Cloth.WarpRun along = selvedge.map(ClothSide::warp).orElse(Cloth.WarpRun.DOWN);
        if (warp.isPresent() && selvedge.isPresent() && warp.get() != along) {
            fields.wrong("warp", Fault.of("on-hand.warp", Said.of("side." + word(selvedge.get())), word(along)));
        }
        return warp.orElse(along);
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private List<Flaw> flaws(Fields cloth, Optional<Size> size) {
        List<Flaw> flaws = new ArrayList<>();
        List<Node> nodes = cloth.list(FLAWS);
        if (nodes.size() > MOST_FLAWS) {
            problems.add(nodes.get(MOST_FLAWS).place(), Fault.of("flaw.most", MOST_FLAWS));
            return flaws;
        }
        for (Node node : nodes) {
            Fields.of(node, FLAW, problems).flatMap(fields -> flaw(fields, size))
                    .ifPresent(flaws::add);
        }
        return flaws;
    }

    private static Optional<Flaw> flaw(Fields fields, Optional<Size> size) {
        Optional<Double> left = fields.value(FROM_LEFT);
        Optional<Double> top = fields.value(FROM_TOP);
        Optional<Double> wide = fields.value(WIDE);
        if (fields.has("from-left") && fields.has("from-top")) {
            fields.wrong("from-top", Fault.of("flaw.both"));
            return Optional.empty();
        }
        if (!fields.meant("from-left") && !fields.meant("from-top")) {
            fields.wrong("from-left", Fault.of("flaw.neither"));
        }
        Flaw.Run run = fields.has("from-left") ? Flaw.Run.DOWN : Flaw.Run.ACROSS;
        Optional<Flaw> flaw = left.or(() -> top).flatMap(from -> wide.map(mm -> new Flaw(run, from, mm)));
        Optional<Double> clothMm = size.map(s -> run == Flaw.Run.DOWN ? s.acrossMm() : s.downMm());
        if (flaw.isPresent() && clothMm.isPresent() && !flaw.get().within(clothMm.get())) {
            Millimetres.Pair told = Millimetres.apart(flaw.get().toMm(), clothMm.get());
            boolean down = run == Flaw.Run.DOWN;
            fields.wrong(down ? "from-left" : "from-top",
                    Fault.of(down ? "flaw.outside.wide" : "flaw.outside.high", told.first(), told.second()));
            return Optional.empty();
        }
        return flaw;
    }
}
