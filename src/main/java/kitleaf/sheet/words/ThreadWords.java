package kitleaf.sheet.words;

import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import kitleaf.basket.CalledThread;
import kitleaf.basket.PutUp;
import kitleaf.basket.StitchCount;
import kitleaf.basket.Units;
import kitleaf.sizing.thread.Estimate;
import kitleaf.sizing.thread.StashShare;
import kitleaf.sizing.thread.ThreadNeed;
import kitleaf.sizing.thread.ThreadTotal;
import kitleaf.words.Words;

/** Puts threads into the words and figures that labels and lists share. */
public final class ThreadWords {

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

    /** "1 strand", or "1 and 2 strands" where parts differ. */
    public String strands(ThreadTotal total) {
        return strands(total.needs()).replace(' ', Figures.NO_BREAK);
    }

    /** "1 str", in the least room. */
    public String strandsBriefly(ThreadTotal total) {
        return words.say("thread.strands-brief", join(strandsOf(total.needs()), "thread.strands-joined")).replace(' ', Figures.NO_BREAK);
    }

    /** The same of several threads, where it may be broken. */
    public String strands(List<ThreadNeed> needs) {
        List<Integer> strands = strandsOf(needs);
        return strands.equals(List.of(1)) ? words.say("thread.strand") : words.say("thread.strands", join(strands, "thread.strands-joined"));
    }

    /** "needle 26", or "needle 24 and 26" where parts differ. */
    public String needle(ThreadTotal total) {
        return needle(total.needs()).replace(' ', Figures.NO_BREAK);
    }

    /** "nd 26", in the least room. */
    public String needleBriefly(ThreadTotal total) {
        return words.say("thread.needle-brief", join(needlesOf(total.needs()), "thread.joined")).replace(' ', Figures.NO_BREAK);
    }

    /** The same of several threads, where it may be broken. */
    public String needle(List<ThreadNeed> needs) {
        return words.say("thread.needle", join(needlesOf(needs), "thread.joined"));
    }

    private static List<Integer> strandsOf(List<ThreadNeed> needs) {
        return needs.size() == 1 ? List.of(needs.get(0).thread().strands())
                : needs.stream().map(need -> need.thread().strands()).distinct().sorted().toList();
    }

    private static List<Integer> needlesOf(List<ThreadNeed> needs) {
        return needs.size() == 1 ? List.of(needs.get(0).needle()) : needs.stream().map(ThreadNeed::needle).distinct().sorted().toList();
    }

    /** Whether its uses differ in strands or needle. */
    public static boolean differ(ThreadTotal total) {
        List<ThreadNeed> needs = total.needs();
        return needs.size() > 1 && (needs.stream().mapToInt(need -> need.thread().strands()).distinct().count() > 1
                || needs.stream().mapToInt(ThreadNeed::needle).distinct().count() > 1);
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
        String kind = words.say("stitch." + count.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        return words.say("thread.stitches", count.count(), kind).replace(' ', Figures.NO_BREAK);
    }

    /** "1.1 (0.9–1.4)"; one figure where its ends read the same, or are too little for a tenth. */
    public String skeins(Estimate skeins) {
        if (number(skeins.low()).equals(number(skeins.high())) || tiny(skeins.low()) && number(skeins.likely()).equals(number(skeins.high()))) {
            return number(skeins.likely());
        }
        if (tiny(skeins.likely())) {
            return words.say("thread.up-to", number(skeins.high())).replace(' ', Figures.NO_BREAK);
        }
        return words.say("thread.skeins", number(skeins.likely()), number(skeins.low()), number(skeins.high())).replace(' ', Figures.NO_BREAK);
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
            drawn.add(number(one.skeins()) + one.lot().map(lot -> ", " + words.say("kit.lot", lot)).orElse(""));
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
    private String join(List<Integer> numbers, String joined) {
        return numbers.stream().map(String::valueOf).reduce((before, next) -> words.say(joined, before, next)).orElse("");
    }
}
