package kitleaf.sheet.words;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.basket.Units;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.PutUp;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import kitleaf.sizing.thread.Estimate;
import kitleaf.sizing.thread.Missing;
import kitleaf.sizing.thread.StashShare;
import kitleaf.sizing.thread.ThreadNeed;
import kitleaf.sizing.thread.ThreadTotal;
import kitleaf.words.Words;

/** Puts threads into the words and figures that labels and lists share. */
public final class ThreadWords {

    /** Between what is told of one kind of stitch and the next. */
    private static final String PARTED = ", ";

    private final Words words;
    private final Units units;
    private final Figures figures;

    /** Words of one language, with these units first where a length is told. */
    public ThreadWords(Words words, Units units) {
        this.words = words;
        this.units = units;
        this.figures = new Figures(units, words);
    }

    /** The thread as it is first called for; its name, colour and symbol stand for all of its uses in a piece. */
    public static CalledThread first(ThreadTotal total) {
        return total.needs().get(0).thread();
    }

    /** "1 strand", or "1 and 2 strands" where parts differ, or "2 strands, back stitch 1" where kinds of stitches do. */
    public String strands(ThreadTotal total) {
        return inParts(total, STRANDS) ? parts(total, this::strands) : unbroken(strands(total.needs()));
    }

    /** "1 str", or "2 str, back 1", in little room. */
    public String strandsBriefly(ThreadTotal total) {
        return inParts(total, STRANDS) ? parts(total, this::strandsBriefly) : unbroken(strandsBriefly(total.needs()));
    }

    private String strandsBriefly(List<ThreadNeed> needs) {
        return told(needs, STRANDS, this::strandsLeast, "thread.strands-of-brief", "stitch-short.");
    }

    /** "1 and 2 str", in the least room, where kinds are not told apart. */
    public String strandsLeast(ThreadTotal total) {
        return unbroken(strandsLeast(all(total.needs(), STRANDS)));
    }

    /** The same of several threads, where it may be broken. */
    public String strands(List<ThreadNeed> needs) {
        return told(needs, STRANDS, this::strandsAlike, "thread.strands-of", "stitch-full.");
    }

    private String strandsAlike(List<Integer> strands) {
        return strands.equals(List.of(1)) ? words.say("thread.strand")
                : words.say("thread.strands", join(strands, "thread.strands-joined"));
    }

    private String strandsLeast(List<Integer> strands) {
        return words.say("thread.strands-brief", join(strands, "thread.strands-joined"));
    }

    /** "needle 26", or "needle 24 and 26" where parts differ, or "needle 24, back stitch 26" where kinds of stitches do. */
    public String needle(ThreadTotal total) {
        return inParts(total, NEEDLE) ? parts(total, this::needle) : unbroken(needle(total.needs()));
    }

    /** "nd 26", or "nd 24, back 26", in the least room. */
    public String needleBriefly(ThreadTotal total) {
        return unbroken(told(total.needs(), NEEDLE, needles -> words.say("thread.needle-brief", join(needles, "thread.joined")),
                "thread.needle-of", "stitch-short."));
    }

    /** "26", or "24 and 26", of several threads, where it may be broken. */
    public String needles(List<ThreadNeed> needs) {
        return told(needs, NEEDLE, needles -> join(needles, "thread.joined"), "thread.needle-of", "stitch-full.");
    }

    private String needle(List<ThreadNeed> needs) {
        return told(needs, NEEDLE, needles -> words.say("thread.needle", join(needles, "thread.joined")),
                "thread.needle-of", "stitch-full.");
    }

    /** Whether its uses differ in strands or needle. */
    public static boolean differ(ThreadTotal total) {
        List<ThreadNeed> needs = total.needs();
        return needs.size() == 1 ? needs.get(0).thread().strands().differ()
                : all(needs, STRANDS).size() > 1 || all(needs, NEEDLE).size() > 1;
    }

    /** A number that a use of a thread has, for all its stitches or for one kind of them. */
    private interface Number {

        int usual(ThreadNeed need);

        int in(ThreadNeed need, StitchKind kind);
    }

    private static final Number STRANDS = new Number() {
        @Override
        public int usual(ThreadNeed need) {
            return need.thread().strands().usual();
        }

        @Override
        public int in(ThreadNeed need, StitchKind kind) {
            return need.thread().strands().in(kind);
        }
    };

    private static final Number NEEDLE = new Number() {
        @Override
        public int usual(ThreadNeed need) {
            return need.needle();
        }

        @Override
        public int in(ThreadNeed need, StitchKind kind) {
            return need.needle(kind);
        }
    };

    /** Every number of these uses once, sorted. */
    private static List<Integer> all(List<ThreadNeed> needs, Number number) {
        if (needs.size() == 1 && !needs.get(0).thread().strands().differ()) {
            return List.of(number.usual(needs.get(0)));
        }
        return needs.stream().flatMap(need -> !need.thread().strands().differ() ? Stream.of(number.usual(need))
                : need.thread().kinds().stream().map(kind -> number.in(need, kind))).distinct().sorted().toList();
    }

    /** The first use that has more than one number. */
    private static Optional<ThreadNeed> several(List<ThreadNeed> needs, Number number) {
        return needs.stream().filter(need -> need.thread().strands().differ() && all(List.of(need), number).size() > 1).findFirst();
    }

    /** The number of each kind of stitch; empty where a kind has another one elsewhere. */
    private static Map<StitchKind, Integer> kinds(List<ThreadNeed> needs, Number number) {
        Map<StitchKind, Integer> kinds = new EnumMap<>(StitchKind.class);
        for (ThreadNeed need : needs) {
            for (StitchKind kind : need.thread().kinds()) {
                Integer other = kinds.put(kind, number.in(need, kind));
                if (other != null && other != number.in(need, kind)) {
                    return Map.of();
                }
            }
        }
        return kinds;
    }

    /** Whether the numbers have to be told part by part: kinds have their own, and not the same everywhere. */
    private static boolean inParts(ThreadTotal total, Number number) {
        return several(total.needs(), number).isPresent() && kinds(total.needs(), number).isEmpty();
    }

    private String parts(ThreadTotal total, Function<List<ThreadNeed>, String> told) {
        return total.needs().stream().map(need -> need.part().map(part -> part.title() + ": ").orElse("")
                + unbroken(told.apply(List.of(need))))
                .collect(Collectors.joining("; "));
    }

    /** The usual number and those of other kinds; all numbers as one where kinds do not tell them apart. */
    private String told(List<ThreadNeed> needs, Number number, Function<List<Integer>, String> alike, String of, String kindKey) {
        Optional<ThreadNeed> first = several(needs, number);
        Map<StitchKind, Integer> kinds = first.isEmpty() ? Map.of() : kinds(needs, number);
        if (kinds.isEmpty()) {
            return alike.apply(all(needs, number));
        }
        int usual = number.usual(first.get());
        Map<Integer, List<String>> others = new LinkedHashMap<>();
        kinds.forEach((kind, own) -> {
            if (own != usual) {
                others.computeIfAbsent(own, it -> new ArrayList<>()).add(words.say(kindKey + kind.word()));
            }
        });
        StringJoiner told = new StringJoiner(PARTED).add(alike.apply(List.of(usual)));
        others.forEach((own, names) -> told.add(words.say(of, join(names, "thread.joined"), own)));
        return told.toString();
    }

    /** Unbreakable, but after the usual number and after a kind's own. */
    private static String unbroken(String text) {
        return text.replace(' ', Figures.NO_BREAK).replace("," + Figures.NO_BREAK, PARTED);
    }

    /** "ask for lot 12", or "ask for 1 of lot 9 and 2 of lot 12"; empty where any lot will do. */
    public String asked(Missing missing) {
        List<Missing.OfLot> lots = missing.asked();
        if (lots.size() < 2) {
            return lots.isEmpty() ? "" : words.say("thread.ask-lot", lot(lots.get(0)));
        }
        return words.say("thread.ask-lots", figures.list(lots.stream()
                .map(one -> words.say("thread.ask-of", one.whole(), lot(one))).toList()));
    }

    private static String lot(Missing.OfLot missing) {
        return Figures.asTyped(missing.lot().orElseThrow());
    }

    /** "2310 cross, 120 back; Verse: 1420 cross". */
    public String stitches(ThreadTotal total) {
        StringJoiner parts = new StringJoiner("; ");
        for (ThreadNeed need : total.needs()) {
            String stitches = stitches(need);
            if (!stitches.isEmpty()) {
                parts.add(need.part().map(part -> part.title() + ": ").orElse("") + stitches);
            }
        }
        return parts.toString();
    }

    private String stitches(ThreadNeed need) {
        if (!need.thread().stitches().isEmpty()) {
            return need.thread().stitches().stream().map(this::stitches).collect(Collectors.joining(", "));
        }
        return need instanceof ThreadNeed.Known known ? words.say("thread.share", Math.round(known.stitches())) : "";
    }

    private String stitches(StitchCount count) {
        String kind = words.say("stitch." + count.kind().word());
        return words.say("thread.stitches", count.count(), kind).replace(' ', Figures.NO_BREAK);
    }

    /** "1.1 (0.9–1.4)"; one figure where its ends read the same, or are too little for a tenth. */
    public String skeins(Estimate skeins) {
        String range = range(skeins);
        return range.isEmpty() ? likely(skeins) : words.say("thread.skeins", likely(skeins), range).replace(' ', Figures.NO_BREAK);
    }

    /** "1.1"; the most it may be, where what is likely is too little for a tenth. */
    public String likely(Estimate skeins) {
        return tiny(skeins.likely()) && !alike(skeins) ? words.say("thread.up-to", number(skeins.high())).replace(' ', Figures.NO_BREAK)
                : number(skeins.likely());
    }

    /** "0.9–1.4"; empty where {@link #likely} says it all. */
    public String range(Estimate skeins) {
        return alike(skeins) || tiny(skeins.likely()) ? ""
                : words.say("thread.range", number(skeins.low()), number(skeins.high())).replace(' ', Figures.NO_BREAK);
    }

    private boolean alike(Estimate skeins) {
        return number(skeins.low()).equals(number(skeins.high()))
                || tiny(skeins.low()) && number(skeins.likely()).equals(number(skeins.high()));
    }

    /** A number of skeins to a tenth; what is too little for that is said to be under it. */
    public String number(double skeins) {
        return tiny(skeins) ? words.say("thread.under").replace(' ', Figures.NO_BREAK) : figures.decimal(skeins, 1);
    }

    /** Whether a tenth would be nought. */
    private static boolean tiny(double skeins) {
        return skeins > 0 && skeins < 0.05;
    }

    /** "0.5, lot 7 + 1, lot 9"; empty when nothing comes from the stash. */
    public String drawn(StashShare share) {
        StringJoiner drawn = new StringJoiner(" + ");
        for (StashShare.Drawn one : share.drawn()) {
            drawn.add(number(one.skeins()) + one.lot().map(lot -> ", " + words.say("kit.lot", Figures.asTyped(lot))).orElse(""));
        }
        return drawn.toString().replace(' ', Figures.NO_BREAK);
    }

    /** "hand-dyed: 5 m of 6 plies a skein; buy one lot". */
    public String putUp(PutUp putUp) {
        String length = units == Units.CM || putUp.lengthMm() % 1000 == 0
                ? figures.decimal(putUp.lengthMm() / 1000, 2) + figures.unit("m")
                : figures.decimal(putUp.lengthMm() / 914.4, 2) + figures.unit("yd") ;
        return words.say(putUp.lotMatters() ? "thread.put-up-lot" : "thread.put-up", putUp.name(), length, putUp.plies());
    }

    /** Numbers joined by a word, since a stroke would make a fraction of them. */
    private String join(List<?> numbers, String joined) {
        return numbers.stream().map(String::valueOf).reduce((before, next) -> words.say(joined, before, next)).orElse("");
    }
}
