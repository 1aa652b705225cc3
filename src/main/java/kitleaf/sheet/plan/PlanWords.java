package kitleaf.sheet.plan;

import java.util.List;
import java.util.stream.Stream;
import kitleaf.basket.Units;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.Count;
import kitleaf.sheet.page.Box;
import kitleaf.sheet.words.ClothWords;
import kitleaf.sheet.words.Figures;
import kitleaf.sizing.plan.ClothPlan;
import kitleaf.sizing.plan.CutStep;
import kitleaf.sizing.plan.EdgeCut;
import kitleaf.sizing.plan.PlannedCloth;
import kitleaf.sizing.plan.PlannedCut;
import kitleaf.sizing.plan.Proof;
import kitleaf.sizing.plan.Purchase;
import kitleaf.sizing.plan.Remnant;
import kitleaf.words.Words;

/** Puts a cloth plan into words and figures. */
final class PlanWords {

    private static final int LETTERS = 26;
    /** A list of more things than these is not read to its end; on the pages of its cloth each has a line of its own. */
    private static final int MOST_NAMED = 40;
    /** What rounds to less than a sixteenth of an inch, or a millimetre. */
    private static final double NARROW_MM = 0.8;

    private final Words words;
    private final Figures figures;
    private final ClothWords clothWords;

    PlanWords(Words words, Units units) {
        this.words = words;
        this.figures = new Figures(units, words);
        this.clothWords = new ClothWords(words, figures);
    }

    /** The letter of what is left over, by its place from 0: A to Z, then AA, AB... */
    static String letter(int place) {
        StringBuilder letters = new StringBuilder();
        for (int rest = place; rest >= 0; rest = rest / LETTERS - 1) {
            letters.insert(0, (char) ('A' + rest % LETTERS));
        }
        return letters.toString();
    }

    /** Both sizes of what is left over; a strip too narrow for her ruler is not nought. */
    String leftSize(Remnant left) {
        double longMm = Math.max(left.widthMm(), left.heightMm());
        return Math.min(left.widthMm(), left.heightMm()) < NARROW_MM
                ? words.say("plan.both", words.say("plan.narrow", figures.length(longMm)), figures.other(longMm))
                : clothWords.size(left.widthMm(), left.heightMm());
    }

    /** The first of several things, as a list of the language, with how many more there are. */
    String first(List<String> things) {
        int more = things.size() - MOST_NAMED;
        return figures.list(more <= 0 ? things : Stream.concat(things.stream().limit(MOST_NAMED), Stream.of(words.say("plan.more", more)))
                .toList());
    }

    /** A drawing's scale, such as {@code 1 : 2.5}. */
    String scale(PlanScale scale) {
        return "1" + Figures.NO_BREAK + ":" + Figures.NO_BREAK + figures.decimal(scale.one(), 1);
    }

    /** What a rectangle of the drawing says below its number. */
    PlanNote inRectangle(Box box, PlannedCut cut) {
        return new PlanNote(box, cut.piece().piece().title(), lies(cut, true), cut.turned() ? words.say("plan.turned-short") : "");
    }

    /** What a remnant of the drawing says below its letter. */
    PlanNote inRemnant(Box box, Remnant left) {
        return new PlanNote(box, words.say(left.usable() ? "plan.keep" : "plan.scrap"), "", "");
    }

    /** Which way a piece lies, where that needs a word. */
    String lies(PlannedCut cut, boolean brief) {
        String warp = warp(cut.warp());
        if (cut.turned()) {
            return words.say(brief ? "plan.turned" : cut.asAsked() ? "plan.turned-asked" : "plan.turned-not-asked", warp);
        }
        return cut.asAsked() ? "" : words.say(brief ? "plan.other-warp" : "plan.other-warp-not-asked", warp);
    }

    /** Kind, count, size, and where the cloth comes from. */
    String subtitle(PlannedCloth cloth) {
        return String.join(" · ", clothWords.weave(cloth.kind(), cloth.count()), clothWords.size(cloth),
                words.say(cloth.bought() ? "plan.to-buy" : "plan.on-hand"));
    }

    /** One cut to be made: how far, from which edge of which part, and what comes off. */
    PlanStep step(CutStep step, PlannedCloth cloth, PlanFigure figure) {
        double fromMm = step.cut().fromMm();
        String part = words.say(switch (step.side()) {
            case WHOLE -> "plan.part-whole";
            case LEFT -> "plan.part-left";
            case RIGHT -> "plan.part-right";
            case ABOVE -> "plan.part-above";
            case BELOW -> "plan.part-below";
        }, step.madeBy());
        return new PlanStep(figure, figures.cutLength(fromMm), figures.swapped().cutLength(fromMm),
                words.say(step.cut().run() == EdgeCut.Run.DOWN ? "plan.step-down" : "plan.step-across", part),
                step.pieces().stream().map(piece -> words.say("plan.off-piece", piece.number(), piece.piece().piece().title())).toList(),
                step.remnants().stream().map(place -> words.say(cloth.remnants().get(place).usable() ? "plan.off-keep" : "plan.off-scrap",
                        letter(place))).toList(), step);
    }

    /** What every cut takes away. */
    String kerf(PlannedCloth cloth, double frayMm) {
        boolean block = cloth.kind() == Cloth.Kind.BLOCK;
        return frayMm > 0 ? words.say(block ? "plan.kerf-block" : "plan.kerf", figures.decimal(frayMm, 1) + figures.unit("mm"))
                : words.say(block ? "plan.kerf-none-block" : "plan.kerf-none");
    }

    /** What is proved of the plan a cloth is part of. */
    String proof(Proof proof) {
        return words.say(proof.optimal() ? "plan.proved" : "plan.not-proved");
    }

    /** Which cloth it is to be, how large one is, and what one costs. */
    String purchaseBelow(Purchase purchase) {
        return clothWords.purchased(purchase) + purchase.cut().price().map(price -> " · " + words.say("plan.each", figures.money(price)))
                .orElse("");
    }

    /** What is left of a cloth that is worth keeping. */
    String left(PlannedCloth cloth) {
        List<Remnant> kept = cloth.remnants().stream().filter(Remnant::usable).toList();
        return kept.isEmpty() ? words.say("plan.left-nothing")
                : words.say("plan.left", first(kept.stream().map(it -> figures.measured(it.widthMm(), it.heightMm())).toList()));
    }

    /** Which cloth a piece without one asks for, and which way its warp runs. */
    String unplaced(Cloth cloth) {
        return words.say("plan.unplaced-below", clothWords.cloth(cloth.name(), cloth.kind(), cloth.count()), warp(cloth.warp()));
    }

    private String warp(Cloth.WarpRun run) {
        return words.say(run == Cloth.WarpRun.DOWN ? "plan.warp-down" : "plan.warp-across");
    }

    /** What keeps a cloth on hand from serving a piece that asks for it by name. */
    String nearMiss(ClothPlan.NearMiss miss) {
        Cloth asked = miss.piece().piece().cloth();
        String title = miss.piece().piece().title();
        if (asked.kind() != miss.cloth().kind()) {
            return words.say("plan.near-kind", miss.cloth().name(), words.say("kind." + Words.word(miss.cloth().kind())), title,
                    words.say("kind." + Words.word(asked.kind())));
        }
        boolean block = asked.kind() == Cloth.Kind.BLOCK;
        return words.say(block ? "plan.near-count-block" : "plan.near-count", miss.cloth().name(), count(miss.cloth().count()), title,
                count(asked.count()));
    }

    private String count(Count count) {
        // Counts that differ by little must not read alike.
        String warp = figures.decimal(count.warpPerInch(), 3);
        return count.even() ? warp : warp + Figures.TIMES + figures.decimal(count.weftPerInch(), 3);
    }
}
