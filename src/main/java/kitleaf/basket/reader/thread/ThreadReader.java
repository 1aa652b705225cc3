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
import kitleaf.words.Said;

/** Reads the threads a chart calls for. */
public final class ThreadReader {

    public static final String EXAMPLE = "- {code: K12, stitches: " + StitchReader.EXAMPLE + "}";

    private static final List<String> KEYS = List.of("code", "name", "colour", "symbol", "skein", "strands", "stitches",
            "share", "used", "over", "lot", "mix-lots");

    /** The most threads taken in one list: ten charts of every colour there is. */
    static final int MOST = 5000;

    private static final Said THREAD = Said.of("thing.thread");
    private static final Form<String> CODE = new TextForm("K12");
    private static final Form<String> NAME = new TextForm("Ebb grey");
    private static final Form<Colour> COLOUR = new ColourText();
    private static final Form<String> SYMBOL = new TextForm(3, "\"●\"");
    private static final Form<Double> SHARE = PercentText.share();
    private static final Form<String> LOT = new TextForm("7 B");
    private static final Form<Boolean> MIX_LOTS = new YesNo();
    private static final Form<Double> SKEINS_USED =
            new NumberText(0, true, 1000, "used.skeins", "1.5");

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
            Optional<Fields> fields = Fields.of(node, THREAD, EXAMPLE, KEYS, problems);
            if (fields.isPresent()) {
                Optional<String> code = fields.get().required("code", CODE);
                if (code.isPresent() && !codes.add(code.get())) {
                    fields.get().wrong("code", Fault.of("thread.twice", Quote.bare(code.get())));
                }
                thread(fields.get(), code).ifPresent(threads::add);
            }
        }
        return threads;
    }

    private Optional<CalledThread> thread(Fields fields, Optional<String> code) {
        Optional<String> name = fields.value("name", NAME);
        Optional<Colour> colour = fields.value("colour", COLOUR);
        Optional<String> symbol = fields.value("symbol", SYMBOL);
        String putUp = fields.value("skein", skein).orElse(PutUp.COTTON.name());
        Optional<Node> written = fields.node("stitches", StitchReader.EXAMPLE);
        List<StitchCount> stitches = written.isEmpty() ? List.of() : new StitchReader(problems).read(written.get());
        Strands strands = new StrandsReader(problems).read(fields, written, stitches);
        Optional<Double> share = fields.value("share", SHARE);
        if (share.isPresent()) {
            shares.add(fields.placeOf("share"), share.get(), strands.in(StitchKind.CROSS));
        }
        Optional<Used> used = used(fields, stitches.stream().anyMatch(one -> one.kind() == StitchKind.OTHER));
        Optional<Integer> over = fields.value("over", ClothReader.OVER);
        Optional<String> lot = fields.value("lot", LOT);
        boolean mixLots = fields.value("mix-lots", MIX_LOTS).orElse(false);
        if (code.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new CalledThread(recurring.words(code).get(), recurring.words(name), recurring.colour(colour),
                recurring.words(symbol),
                putUp, strands, recurring.stitches(stitches), share.isPresent() ? OptionalDouble.of(share.get()) : OptionalDouble.empty(),
                used, over.isPresent() ? OptionalInt.of(over.get()) : OptionalInt.empty(), recurring.words(lot), mixLots));
    }

    private Optional<Used> used(Fields thread, boolean others) {
        return thread.group("used", "{skeins: 1.5, stitches: 3000}", List.of("skeins", "stitches")).flatMap(fields -> {
            Optional<Double> skeins = fields.required("skeins", SKEINS_USED);
            Optional<Integer> stitches = fields.required("stitches", new WholeText(1, WholeText.MOST, "3000"));
            Optional<Used> used = skeins.flatMap(s -> stitches.map(n -> new Used(s, n)));
            used.filter(one -> !others && one.stitches() < FEWEST_A_SKEIN * one.skeins()).ifPresent(one -> fields.wrong("stitches",
                    Fault.of("used.few", one.stitches(), BigDecimal.valueOf(one.skeins()).stripTrailingZeros().toPlainString(),
                            FEWEST_A_SKEIN)));
            return used;
        });
    }
}
