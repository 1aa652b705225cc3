package kitleaf.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import kitleaf.basket.Price;
import kitleaf.sizing.thread.BuyLine;
import kitleaf.sizing.thread.BuyList;
import kitleaf.sizing.thread.Edge;
import kitleaf.sizing.thread.Estimate;
import kitleaf.sizing.thread.PieceThreads;
import kitleaf.sizing.thread.ThreadNeed;
import kitleaf.sizing.thread.ThreadTotal;

/** Threads and the buy list as plain lines of text, at most 80 columns wide where codes and names allow. */
public final class PlainThreads {

    private static final String ROW = "  %-11s%-23s %s";

    private PlainThreads() { }

    /** The threads of one piece, for the whole piece; no lines when it names none. */
    public static List<String> of(PieceThreads piece) {
        List<String> lines = new ArrayList<>();
        for (ThreadTotal thread : piece.threads()) {
            String name = thread.needs().get(0).thread().name().map(it -> " " + it).orElse("");
            lines.add(row(lines.isEmpty() ? "threads" : "", thread.code() + name, need(thread)));
        }
        if (!lines.isEmpty()) {
            lines.add(row("needle", "tapestry " + needles(piece), ""));
        }
        return lines;
    }

    /** What to buy for all unfinished pieces; no lines when they name no threads. */
    public static List<String> of(BuyList list) {
        List<String> lines = new ArrayList<>();
        for (BuyLine line : list.lines()) {
            lines.add(row(lines.isEmpty() ? "to buy" : "", line.code() + " " + line.putUp().name(), bought(line)));
        }
        list.cost().ifPresent(cost -> lines.add(row("cost", money(cost), "")));
        return lines;
    }

    private static String need(ThreadTotal thread) {
        Optional<Estimate> skeins = thread.skeins();
        if (skeins.isEmpty()) {
            boolean noCoverage = thread.needs().stream()
                    .anyMatch(need -> need instanceof ThreadNeed.Unknown unknown && unknown.why() == ThreadNeed.Why.NO_COVERAGE);
            return "not known without " + (noCoverage ? "coverage" : "stitches or a share");
        }
        Estimate it = skeins.get();
        return figure(it.likely()) + " (" + figure(it.low()) + " to " + figure(it.high()) + ") skeins, buy "
                + thread.buy().orElseThrow() + edge(thread.edge());
    }

    private static String bought(BuyLine line) {
        if (line.shares().isEmpty()) {
            return "not known";
        }
        return "buy " + line.buy() + edge(line.edge()) + (line.drawnSkeins() > 0 ? ", stash " + figure(line.drawnSkeins()) : "")
                + line.cost().filter(cost -> line.buy() > 0).map(cost -> ", " + money(cost)).orElse("")
                + (line.unknown().isEmpty() ? "" : "; more for " + line.unknown().size() + " unknown");
    }

    /** Short, for the room there is: what is bought only just suffices, or hardly needed its last skein. */
    private static String edge(Edge edge) {
        return switch (edge) {
            case CLEAR -> "";
            case JUST_ENOUGH -> ", tight";
            case JUST_OVER -> ", just over";
        };
    }

    private static String needles(PieceThreads piece) {
        return piece.threads().stream().flatMap(thread -> thread.needs().stream()).map(ThreadNeed::needle).distinct().sorted()
                .map(String::valueOf).collect(Collectors.joining(", "));
    }

    private static String money(Price price) {
        return price.amount().toPlainString() + " " + price.currency();
    }

    /** Hundredths of a skein below ten, then tenths: nobody cuts finer, and nobody knows better. */
    private static String figure(double skeins) {
        return skeins < 9.995 ? Figures.decimal(skeins, 2) : Figures.decimal(skeins, 1);
    }

    private static String row(String name, String first, String second) {
        return String.format(Locale.ROOT, ROW, name, first, second).stripTrailing();
    }
}
