package kitleaf.sheet.label;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.Swatch;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.ThreadWords;
import kitleaf.sizing.thread.ThreadNeed;
import kitleaf.sizing.thread.ThreadTotal;
import kitleaf.words.Words;

/** Puts threads into the words of their labels. */
final class LabelWords {

    private static final int MOST_KNOWN = 1000;

    private final Words words;
    private final ThreadWords threadWords;
    private final String between;
    private final String betweenSeveral;
    /** What most labels say is said again on the next. */
    private final Map<String, List<String>> known = new HashMap<>();

    LabelWords(Words words, SheetSettings settings) {
        this.words = words;
        this.threadWords = new ThreadWords(words, settings.units());
        this.between = words.say("label.between");
        this.betweenSeveral = words.say("label.between-several");
    }

    /**
     * The label of a thread.
     *
     * @param stashLots the lots it gets out of the stash
     * @param title of its piece
     */
    Label of(ThreadTotal thread, List<String> stashLots, String title, boolean first) {
        Collection<String> lots = lots(thread, stashLots);
        List<String> facts = facts(thread, lots);
        String lines = String.join(Label.LINE_END, facts);
        if (known.size() > MOST_KNOWN) {
            known.clear();
        }
        List<String> ways = known.computeIfAbsent(lines, it -> ways(thread, lots, facts));
        return new Label(Figures.code(thread.code()), ThreadWords.first(thread).name().orElse(""), together(title), lines, ways.get(0),
                ways.get(1),
                lots.isEmpty() ? "" : words.say("kit.lot", written(lots)),
                Swatch.of(ThreadWords.first(thread)), first ? title : "");
    }

    /** A title whose last word, if it is a letter or two or a number as short, does not stand on a line alone. */
    private static String together(String title) {
        int last = title.lastIndexOf(' ');
        return last > 0 && title.length() - last <= 3 ? title.substring(0, last) + Figures.NO_BREAK + title.substring(last + 1) : title;
    }

    /** The lots it names, and where the lot matters those it gets beside them; else those it gets. */
    private static Collection<String> lots(ThreadTotal thread, List<String> stashLots) {
        TreeSet<String> lots = new TreeSet<>();
        for (ThreadNeed need : thread.needs()) {
            need.thread().lot().ifPresent(lots::add);
        }
        if (lots.isEmpty() || thread.putUp().lotMatters()) {
            lots.addAll(stashLots);
        }
        return lots;
    }

    /** Strands and needle, skeins, lot: a short phrase each. */
    private List<String> facts(ThreadTotal thread, Collection<String> lots) {
        List<String> facts = new ArrayList<>(first(thread, threadWords.strands(thread), threadWords.needle(thread)));
        thread.skeins().map(skeins -> threadWords.number(skeins.likely())).ifPresent(number -> facts.add(unbroken(number.equals("1")
                ? words.say("label.skein-one", thread.putUp().name()) : words.say("label.skeins", number, thread.putUp().name()))));
        facts.add(lot(lots, "label.lot-blank", "thread.lot"));
        return facts;
    }

    /**
     * Ways to say the facts in a sentence: in short forms, then without the put-up and the skeins, which the kit list has, then without
     * the blank for a lot. A lot that is known stays, and may at last be broken where its own blanks are. All of them, and the last.
     */
    private List<String> ways(ThreadTotal thread, Collection<String> lots, List<String> facts) {
        Set<String> ways = new LinkedHashSet<>();
        // Of several strands and needles one fact has commas of its own.
        String parted = ThreadWords.differ(thread) ? betweenSeveral : between;
        ways.add(String.join(parted, facts));
        String lot = lot(lots, "label.lot-blank-brief", "thread.lot-brief");
        String needle = threadWords.needleBriefly(thread);
        List<String> brief = first(thread, threadWords.strandsBriefly(thread), needle);
        if (thread.skeins().isPresent()) {
            String number = threadWords.number(thread.skeins().get().likely());
            List<String> whole = first(thread, threadWords.strands(thread), threadWords.needle(thread));
            for (String skeins : List.of(words.say("label.skeins-brief", number, thread.putUp().name()),
                    words.say("label.skeins-least", number))) {
                ways.add(joined(parted, whole, unbroken(skeins), lot));
                ways.add(joined(parted, brief, unbroken(skeins), lot));
            }
        }
        ways.add(joined(parted, brief, lot));
        List<String> least = List.of(threadWords.strandsLeast(thread), needle);
        if (lots.isEmpty()) {
            ways.add(joined(parted, brief));
            ways.add(joined(parted, least));
        } else {
            ways.add(joined(parted, brief, words.say("thread.lot-brief", written(lots))));
            ways.add(joined(parted, least, words.say("kit.lot", written(lots))));
        }
        List<String> all = List.copyOf(ways);
        return List.of(String.join(Label.OR, all), all.get(all.size() - 1));
    }

    /** Strands and needle; two of each are too long for one line. */
    private static List<String> first(ThreadTotal thread, String strands, String needle) {
        return ThreadWords.differ(thread) ? List.of(strands, needle) : List.of(strands + ", " + needle);
    }

    private static String joined(String parted, List<String> first, String... then) {
        return String.join(parted, Stream.concat(first.stream(), Stream.of(then)).toList());
    }

    private String lot(Collection<String> lots, String blank, String written) {
        return unbroken(lots.isEmpty() ? words.say(blank) : words.say(written, Figures.code(String.join(" + ", lots))));
    }

    private static String written(Collection<String> lots) {
        return Figures.straight(String.join(" +" + Figures.NO_BREAK, lots));
    }

    private static String unbroken(String text) {
        return text.replace(' ', Figures.NO_BREAK);
    }
}
