package kitleaf.sheet.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import kitleaf.basket.Units;
import kitleaf.sheet.words.Figures;
import kitleaf.sizing.thread.BuyLine;
import kitleaf.sizing.thread.BuyList;
import kitleaf.sizing.thread.Edge;
import kitleaf.sizing.thread.Estimate;
import kitleaf.sizing.thread.Missing;
import kitleaf.sizing.thread.PieceThreads;
import kitleaf.sizing.thread.ThreadNeed;
import kitleaf.sizing.thread.ThreadTotal;

/** Threads and the buy list as plain lines of text, at most 80 columns wide where codes and names allow. */
public final class PlainThreads {

    private static final int WIDTH = 23;

    private final PlainWords words;
    private final Figures figures;

    /** Threads in words of this language. */
    public PlainThreads(Locale language) {
        this.words = new PlainWords(language, WIDTH);
        // Nothing here is measured, so either units will do.
        this.figures = words.figures(Units.CM);
    }

    /** The threads of one piece, for the whole piece; no lines when it names none. */
    public List<String> of(PieceThreads piece) {
        List<String> lines = new ArrayList<>();
        for (ThreadTotal thread : piece.threads()) {
            String name = thread.needs().get(0).thread().name().map(it -> " " + it).orElse("");
            lines.add(words.row(lines.isEmpty() ? words.say("row.threads") : "", thread.code() + name, need(thread)));
        }
        if (!lines.isEmpty()) {
            lines.add(words.row("", words.say("threads.whole"), ""));
            lines.add(words.row(words.say("row.needle"), words.say("needle", needles(piece)), ""));
        }
        return lines;
    }

    /** What to buy for all unfinished pieces; no lines when they name no threads. */
    public List<String> of(BuyList list) {
        List<String> lines = new ArrayList<>();
        for (BuyLine line : list.lines()) {
            lines.add(words.row(lines.isEmpty() ? words.say("row.to-buy") : "", line.code() + " " + line.putUp().name(), bought(line)));
            if (!line.missing().asked().isEmpty()) {
                lines.add(words.row("", "", asked(line.missing().asked())));
            }
        }
        list.cost().ifPresent(cost -> lines.add(words.row(words.say("row.cost"), figures.money(cost), "")));
        return lines;
    }

    private String need(ThreadTotal thread) {
        Optional<Estimate> skeins = thread.skeins();
        if (skeins.isEmpty()) {
            boolean noCoverage = thread.needs().stream()
                    .anyMatch(need -> need instanceof ThreadNeed.Unknown unknown && unknown.why() == ThreadNeed.Why.NO_COVERAGE);
            return words.say(noCoverage ? "unknown.coverage" : "unknown.stitches");
        }
        Estimate it = skeins.get();
        return words.say("skeins", figure(it.likely()), figure(it.low()), figure(it.high()), thread.buy().orElseThrow())
                + edge(thread.edge());
    }

    private String bought(BuyLine line) {
        if (line.shares().isEmpty()) {
            return words.say("unknown");
        }
        return words.say("buy", line.buy()) + edge(line.edge())
                + (line.drawnSkeins() > 0 ? words.say("buy.stash", figure(line.drawnSkeins())) : "")
                + line.cost().filter(cost -> line.buy() > 0).map(cost -> ", " + figures.money(cost)).orElse("")
                + (line.unknown().isEmpty() ? "" : words.say("buy.more", line.unknown().size()));
    }

    /** The lots to ask for, with how many skeins of each where there are several. */
    private String asked(List<Missing.OfLot> lots) {
        return lots.size() == 1 ? words.say("buy.lot", lots.get(0).lot().orElseThrow())
                : words.say("buy.lots", lots.stream().map(one -> words.say("buy.of-lot", one.whole(), one.lot().orElseThrow()))
                        .collect(Collectors.joining(", ")));
    }

    /** Short, for the room there is: what is bought only just suffices, or hardly needed its last skein. */
    private String edge(Edge edge) {
        return switch (edge) {
            case CLEAR -> "";
            case JUST_ENOUGH -> words.say("edge.tight");
            case JUST_OVER -> words.say("edge.over");
        };
    }

    private static String needles(PieceThreads piece) {
        return piece.threads().stream().flatMap(thread -> thread.needs().stream()).flatMapToInt(ThreadNeed::needles).distinct().sorted()
                .mapToObj(String::valueOf).collect(Collectors.joining(", "));
    }

    /** Hundredths of a skein below ten, then tenths: nobody cuts finer, and nobody knows better. */
    private String figure(double skeins) {
        return skeins < 9.995 ? figures.decimal(skeins, 2) : figures.decimal(skeins, 1);
    }
}
