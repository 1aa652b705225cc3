package kitleaf.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import kitleaf.command.speech.Voice;
import kitleaf.sheet.plain.PlainFigures;
import kitleaf.sheet.plain.PlainPlan;
import kitleaf.sheet.plain.PlainRegister;
import kitleaf.sheet.plain.PlainThreads;
import kitleaf.sheet.plain.PlainYear;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.Reckoning;
import kitleaf.sizing.thread.ThreadReckoning;
import kitleaf.sizing.year.YearReckoning;

/** Writes a reckoning for reading on a screen 80 columns wide. */
final class ReckonTable {

    private ReckonTable() { }

    /** All of one piece or of pieces she named, else a line for each. */
    static void write(Reckoning reckoning, Optional<YearReckoning> year, boolean named, Voice voice, PrintWriter out) {
        PlainThreads plainThreads = new PlainThreads(voice.language());
        boolean one = reckoning.pieces().size() == 1;
        out.println(one ? reckoning.basket().title() : voice.say("basket.pieces", reckoning.basket().title(), reckoning.pieces().size()));
        ThreadReckoning threads = reckoning.threads();
        if (one || named) {
            pieces(reckoning, threads, voice, out);
        } else {
            out.println();
            new PlainRegister(reckoning.basket().units(), voice.language()).of(reckoning.pieces()).forEach(out::println);
        }
        List<String> toBuy = plainThreads.of(threads.buyList());
        if (!toBuy.isEmpty()) {
            out.println();
            toBuy.forEach(out::println);
        }
        reckoning.clothPlanToldOf().map(plan -> PlainPlan.of(plan, reckoning.basket().units(), voice.language()))
                .filter(lines -> !lines.isEmpty()).ifPresent(lines -> {
                    out.println();
                    lines.forEach(out::println);
                });
        year.ifPresent(goals -> {
            out.println();
            new PlainYear(voice.language()).of(goals).forEach(out::println);
            if (reckoning.basket().goals().orElseThrow().proposes() && !goals.chosen().isEmpty()) {
                out.println();
                out.println(voice.say("choose.proposed"));
            }
        });
    }

    private static void pieces(Reckoning reckoning, ThreadReckoning threads, Voice voice, PrintWriter out) {
        PlainFigures figures = new PlainFigures(reckoning.basket().units(), voice.language());
        PlainThreads plainThreads = new PlainThreads(voice.language());
        for (int i = 0; i < reckoning.pieces().size(); i++) {
            PieceReckoning piece = reckoning.pieces().get(i);
            out.println();
            figures.piece(piece).forEach(out::println);
            plainThreads.of(threads.pieces().get(i)).forEach(out::println);
            if (reckoning.pieces().size() == 1) {
                out.println();
                figures.others(piece).forEach(out::println);
            }
        }
    }
}
