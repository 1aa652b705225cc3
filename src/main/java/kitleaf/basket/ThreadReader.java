package kitleaf.basket;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import kitleaf.words.Said;

/** Reads the threads a chart calls for. */
final class ThreadReader {

    static final String EXAMPLE = "- {code: K12, stitches: " + StitchReader.EXAMPLE + "}";

    private static final List<String> KEYS = List.of("code", "name", "colour", "symbol", "skein", "strands", "stitches",
            "share", "used", "over", "lot");
    private static final int USUAL_STRANDS = 2;

    /** The most threads taken in one list: ten charts of every colour there is. */
    static final int MOST = 5000;

    private static final Form<Integer> STRANDS = new WholeText(1, CalledThread.MOST_STRANDS, "2");
    private static final Form<Double> SKEINS_USED =
            new NumberText(0, true, 1000, "used.skeins", "1.5");

    /**
     * The fewest stitches a whole skein is used up in; common practice, no source: eight metres of six plies make some two
     * hundred crosses of six strands on rug canvas, and thousands on linen. Tassels and cords are told as other stitches.
     */
    private static final int FEWEST_A_SKEIN = 10;

    private final Settings settings;
    private final Shares shares;
    private final Problems problems;

    /**
     * A reader of threads.
     *
     * @param shares takes what shares they have
     */
    ThreadReader(Settings settings, Shares shares, Problems problems) {
        this.settings = settings;
        this.shares = shares;
        this.problems = problems;
    }

    /** The threads that could be read, in their order. */
    List<CalledThread> read(List<Node> nodes) {
        List<CalledThread> threads = new ArrayList<>();
        if (nodes.size() > MOST) {
            problems.add(nodes.get(MOST).place(), Fault.of("thread.most", MOST));
            return threads;
        }
        Set<String> codes = new HashSet<>();
        for (Node node : nodes) {
            Fields.of(node, Said.of("thing.thread"), EXAMPLE, KEYS, problems).ifPresent(fields -> {
                Optional<String> code = fields.required("code", new TextForm("K12"));
                code.filter(c -> !codes.add(c)).ifPresent(c -> fields.wrong("code", Fault.of("thread.twice", Quote.bare(c))));
                thread(fields, code).ifPresent(threads::add);
            });
        }
        return threads;
    }

    private Optional<CalledThread> thread(Fields fields, Optional<String> code) {
        Optional<String> name = fields.value("name", new TextForm("Ebb grey"));
        Optional<Colour> colour = fields.value("colour", new ColourText());
        Optional<String> symbol = fields.value("symbol", new TextForm(3, "\"●\""));
        String skein = fields.value("skein", new PutUpName(settings.putUps(), settings.putUpsKnown())).orElse(PutUp.COTTON.name());
        int strands = fields.value("strands", STRANDS).orElse(USUAL_STRANDS);
        List<StitchCount> stitches = fields.node("stitches", StitchReader.EXAMPLE)
                .map(new StitchReader(problems)::read).orElseGet(List::of);
        Optional<Double> share = fields.value("share", PercentText.share());
        share.ifPresent(fraction -> shares.add(fields.placeOf("share"), fraction, strands));
        Optional<Used> used = used(fields, stitches.stream().anyMatch(one -> one.kind() == StitchKind.OTHER));
        Optional<Integer> over = fields.value("over", ClothReader.OVER);
        Optional<String> lot = fields.value("lot", new TextForm("7 B"));
        // The same threads come again in piece after piece; their words are kept once.
        return code.map(c -> new CalledThread(c.intern(), name.map(String::intern), colour, symbol.map(String::intern), skein, strands, stitches,
                share.map(OptionalDouble::of).orElseGet(OptionalDouble::empty), used,
                over.map(OptionalInt::of).orElseGet(OptionalInt::empty), lot));
    }

    private Optional<Used> used(Fields thread, boolean others) {
        return thread.group("used", "{skeins: 1.5, stitches: 3000}", List.of("skeins", "stitches")).flatMap(fields -> {
            Optional<Double> skeins = fields.required("skeins", SKEINS_USED);
            Optional<Integer> stitches = fields.required("stitches", new WholeText(1, WholeText.MOST, "3000"));
            Optional<Used> used = skeins.flatMap(s -> stitches.map(n -> new Used(s, n)));
            used.filter(one -> !others && one.stitches() < FEWEST_A_SKEIN * one.skeins()).ifPresent(one -> fields.wrong("stitches",
                    Fault.of("used.few", one.stitches(), BigDecimal.valueOf(one.skeins()).stripTrailingZeros().toPlainString(), FEWEST_A_SKEIN)));
            return used;
        });
    }
}
