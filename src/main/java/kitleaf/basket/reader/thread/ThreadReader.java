package kitleaf.basket.reader.thread;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import kitleaf.basket.form.ColourText;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.NumberText;
import kitleaf.basket.form.PercentText;
import kitleaf.basket.form.PutUpName;
import kitleaf.basket.form.TextForm;
import kitleaf.basket.form.WholeText;
import kitleaf.basket.form.YesNo;
import kitleaf.basket.key.Fields;
import kitleaf.basket.key.Key;
import kitleaf.basket.key.Keys;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.reader.ClothReader;
import kitleaf.basket.reader.Settings;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.Colour;
import kitleaf.basket.thread.PutUp;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import kitleaf.basket.thread.Strands;
import kitleaf.basket.thread.Used;
import kitleaf.basket.yaml.Node;

/** Reads the threads a chart calls for. */
public final class ThreadReader {

    private static final Keys USED = Keys.under("used", "{skeins: 1.5, stitches: 3000}");
    private static final Key<Double> SKEINS_USED = USED.must("skeins", new NumberText(0, true, 1000, "used.skeins", "1.5"));
    private static final Key<Integer> STITCHES_USED = USED.must("stitches", new WholeText(1, WholeText.MOST, "3000"));

    public static final Keys KEYS = Keys.of("thing.thread", "- {code: K12, stitches: " + StitchReader.KEYS.example() + "}");
    static {
        KEYS.also("colour", "color");
    }

    private static final Key<String> CODE = KEYS.must("code", new TextForm("K12"), "K12", "K15", "K16", "H21");
    private static final Key<String> NAME = KEYS.may("name", new TextForm("Ebb grey"));
    private static final Key<Colour> COLOUR = KEYS.may("colour", new ColourText());
    private static final Key<String> SYMBOL = KEYS.may("symbol", new TextForm(3, "\"●\""));
    private static final Key<String> SKEIN = KEYS.may("skein", PutUpName.ANY, "cotton", "hand-dyed");
    static final Key<Integer> STRANDS = KEYS.may("strands", StrandsReader.NUMBER, StrandsReader.KEYS, "1", """
            {cross: 2, half: 1, tent: 1, quarter: 2, three-quarter: 2, back: 1, double-running: 1, satin: 3, knot: 2, long-armed: 1,
             rice: 1, eyelet: 1, four-sided: 1, satin-block: 1, hem: 1, queen: 1, other: 1, else: 2}""");
    private static final Key<Void> STITCHES = KEYS.may("stitches", StitchReader.KEYS,
            "{cross: 2310, half: 40, tent: 60, quarter: 12, three-quarter: 8, back: 120, double-running: 90, satin: 80, knot: 14}", """
            {cross: 1, half: 1, tent: 1, quarter: 1, three-quarter: 1, back: 1, double-running: 1, satin: 1, knot: 1,
             long-armed: 1, rice: 1, eyelet: 1, four-sided: 1, satin-block: 1, hem: 1, queen: 1, other: {count: 1, each: 3 cm}}""",
            "{long-armed: 60, rice: 24, eyelet: 18, four-sided: 36, satin-block: 9, hem: 40, queen: 7}",
            "{cross: {count: 900, worked: singly}, satin: {count: 96, span: 6}, other: {count: 12, each: 3 cm}}",
            "{cross: 1420}");
    private static final Key<Double> SHARE = KEYS.may("share", PercentText.share());
    private static final Key<Void> USED_UP = KEYS.may("used", USED);
    private static final Key<Integer> OVER = KEYS.may("over", ClothReader.OVER_FORM, "1");
    private static final Key<String> LOT = KEYS.may("lot", new TextForm("7 B"));
    private static final Key<Boolean> MIX_LOTS = KEYS.may("mix-lots", new YesNo());

    /** The most threads taken in one list: ten charts of every colour there is. */
    static final int MOST = 5000;

    /**
     * The fewest stitches a whole skein is used up in; common practice, no source: eight metres of six plies make some two
     * hundred crosses of six strands on rug canvas, and thousands on linen. Tassels and cords are told as other stitches.
     */
    private static final int FEWEST_A_SKEIN = 10;

    private final SharedValues recurring;
    private final Shares shares;
    private final Problems problems;
    private final Form<String> skein;

    /**
     * A reader of threads.
     *
     * @param recurring what other threads had already
     * @param shares takes what shares they have
     */
    public ThreadReader(Settings settings, SharedValues recurring, Shares shares, Problems problems) {
        this.skein = new PutUpName(settings.putUps(), settings.putUpsKnown());
        this.recurring = recurring;
        this.shares = shares;
        this.problems = problems;
    }

    /** The threads that could be read, in their order. */
    public List<CalledThread> read(List<Node> nodes) {
        List<CalledThread> threads = new ArrayList<>();
        if (nodes.size() > MOST) {
            problems.add(nodes.get(MOST).place(), Fault.of("thread.most", MOST));
            return threads;
        }
        Set<String> codes = new HashSet<>();
        for (Node node : nodes) {
            Optional<Fields> fields = Fields.of(node, KEYS, problems);
            if (fields.isPresent()) {
                Optional<String> code = fields.get().value(CODE);
                if (code.isPresent() && !codes.add(code.get())) {
                    fields.get().wrong("code", Fault.of("thread.twice", Quote.bare(code.get())));
                }
                thread(fields.get(), code).ifPresent(threads::add);
            }
        }
        return threads;
    }

    private Optional<CalledThread> thread(Fields fields, Optional<String> code) {
        Optional<String> name = fields.value(NAME);
        Optional<Colour> colour = fields.value(COLOUR);
        Optional<String> symbol = fields.value(SYMBOL);
        String putUp = fields.value(SKEIN, skein).orElse(PutUp.COTTON.name());
        Optional<Node> written = fields.node(STITCHES);
        List<StitchCount> stitches = written.isEmpty() ? List.of() : new StitchReader(problems).read(written.get());
        Strands strands = new StrandsReader(problems).read(fields, written, stitches);
        Optional<Double> share = fields.value(SHARE);
        if (share.isPresent()) {
            shares.add(fields.placeOf("share"), share.get(), strands.in(StitchKind.CROSS));
        }
        Optional<Used> used = used(fields, stitches.stream().anyMatch(one -> one.kind() == StitchKind.OTHER));
        Optional<Integer> over = fields.value(OVER);
        Optional<String> lot = fields.value(LOT);
        boolean mixLots = fields.value(MIX_LOTS).orElse(false);
        if (code.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new CalledThread(recurring.words(code).get(), recurring.words(name), recurring.colour(colour),
                recurring.words(symbol),
                putUp, strands, recurring.stitches(stitches), share.isPresent() ? OptionalDouble.of(share.get()) : OptionalDouble.empty(),
                used, over.isPresent() ? OptionalInt.of(over.get()) : OptionalInt.empty(), recurring.words(lot), mixLots));
    }

    private Optional<Used> used(Fields thread, boolean others) {
        return thread.group(USED_UP, USED).flatMap(fields -> {
            Optional<Double> skeins = fields.value(SKEINS_USED);
            Optional<Integer> stitches = fields.value(STITCHES_USED);
            Optional<Used> used = skeins.flatMap(s -> stitches.map(n -> new Used(s, n)));
            used.filter(one -> !others && one.stitches() < FEWEST_A_SKEIN * one.skeins()).ifPresent(one -> fields.wrong("stitches",
                    Fault.of("used.few", one.stitches(), BigDecimal.valueOf(one.skeins()).stripTrailingZeros().toPlainString(),
                            FEWEST_A_SKEIN)));
            return used;
        });
    }
}
