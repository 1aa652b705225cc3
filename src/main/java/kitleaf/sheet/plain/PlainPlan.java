package kitleaf.sheet.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kitleaf.basket.Units;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.sheet.words.ClothWords;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sizing.plan.ClothPlan;
import kitleaf.sizing.plan.CutStep;
import kitleaf.sizing.plan.EdgeCut;
import kitleaf.sizing.plan.PlannedCloth;
import kitleaf.sizing.plan.PlannedCut;
import kitleaf.sizing.plan.Remnant;

/** A cloth plan as plain lines of text, at most 80 columns wide where IDs and names allow. */
public final class PlainPlan {

    private static final int WIDTH = 24;

    private final Figures figures;
    private final ClothWords clothWords;
    private final PlainWords words;

    private PlainPlan(Units units, Locale language) {
        this.figures = new Figures(units, SheetWords.in(language));
        this.clothWords = new ClothWords(SheetWords.in(language), figures);
        this.words = new PlainWords(language, WIDTH);
    }

    /** One plan; no lines when there is nothing to cut. */
    public static List<String> of(ClothPlan plan, Units units, Locale language) {
        return plan.isEmpty() ? List.of() : new PlainPlan(units, language).lines(plan);
    }

    private List<String> lines(ClothPlan plan) {
        List<String> lines = new ArrayList<>();
        lines.add(words.say("plan"));
        for (PlannedCloth cloth : plan.cloths()) {
            cloth(cloth, plan, lines);
        }
        lines.addAll(words.rows(words.say("row.to-buy"), plan.buy(), it -> it.number() + " x " + it.cut().name(),
                it -> it.cloth().orElseGet(() -> clothWords.weave(it.kind(), it.count()))
                        + it.cost().map(cost -> ", " + figures.money(cost)).orElse("")));
        plan.cost().ifPresent(cost -> lines.add(words.row(words.say("row.cost"), figures.money(cost), "")));
        lines.addAll(words.rows(words.say("row.no-cloth"), plan.unplaced(), it -> it.piece().id(), it -> words.say("plan.needs",
                figures.cut(it.cloth().size().across().cutMm(), it.cloth().size().down().cutMm()))));
        lines.addAll(words.rows(words.say("row.stays-whole"), plan.untouched(), ClothOnHand::name,
                it -> figures.measured(it.widthMm(), it.heightMm())));
        lines.addAll(words.rows(words.say("row.nearly"), plan.nearMisses(), it -> it.piece().piece().id(),
                it -> words.say("plan.on-hand", clothWords.weave(it.cloth().kind(), it.cloth().count()))));
        return lines;
    }

    private void cloth(PlannedCloth cloth, ClothPlan plan, List<String> lines) {
        lines.add(words.row(words.say("row.cloth"), clothWords.title(cloth, plan.cloths()),
                figures.measured(cloth.widthMm(), cloth.heightMm()) + (cloth.bought() ? words.say("plan.bought") : "")));
        for (PlannedCut cut : cloth.cuts()) {
            lines.add(words.row(words.say("row.piece", cut.number()), cut.piece().piece().id(), figures.cut(cut.widthMm(), cut.heightMm())
                    + (cut.turned() ? words.say("plan.turned") : "")));
        }
        for (CutStep step : cloth.steps()) {
            lines.add(words.row(words.say("row.step", step.cut().number()), words.of("part", step.side(), step.madeBy()),
                    words.say(step.cut().run() == EdgeCut.Run.DOWN ? "plan.down" : "plan.across", figures.cutLength(step.cut().fromMm()))));
        }
        for (Remnant left : cloth.remnants()) {
            lines.add(words.row(words.say("row.left"), figures.measured(left.widthMm(), left.heightMm()),
                    words.say(left.usable() ? "plan.keep" : "plan.scrap")));
        }
        lines.add(words.row(words.say("row.proof"), words.say(cloth.proof().optimal() ? "proof.best" : "proof.none"), ""));
    }
}
