package kitleaf.sheet.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kitleaf.basket.ClothOnHand;
import kitleaf.basket.Units;
import kitleaf.sheet.words.ClothWords;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.plan.ClothPlan;
import kitleaf.sizing.plan.CutStep;
import kitleaf.sizing.plan.EdgeCut;
import kitleaf.sizing.plan.PlannedCloth;
import kitleaf.sizing.plan.PlannedCut;
import kitleaf.sizing.plan.Proof;
import kitleaf.sizing.plan.Purchase;
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
        this.words = new PlainWords(language);
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
        List<String> buy = new ArrayList<>();
        for (Purchase purchase : plan.buy()) {
            buy.add(row(buy.isEmpty() ? words.say("row.to-buy") : "", purchase.number() + " x " + purchase.cut().name(),
                    purchase.cloth().orElseGet(() -> clothWords.weave(purchase.kind(), purchase.count()))
                            + purchase.cost().map(cost -> ", " + figures.money(cost)).orElse("")));
        }
        plan.cost().ifPresent(cost -> buy.add(row(words.say("row.cost"), figures.money(cost), "")));
        lines.addAll(buy);
        List<String> rest = new ArrayList<>();
        for (PieceReckoning piece : plan.unplaced()) {
            rest.add(row(rest.isEmpty() ? words.say("row.no-cloth") : "", piece.piece().id(),
                    words.say("plan.needs", figures.cut(piece.cloth().size().across().cutMm(), piece.cloth().size().down().cutMm()))));
        }
        lines.addAll(rest);
        List<String> whole = new ArrayList<>();
        for (ClothOnHand cloth : plan.untouched()) {
            whole.add(row(whole.isEmpty() ? words.say("row.stays-whole") : "", cloth.name(), figures.measured(cloth.widthMm(),
                    cloth.heightMm())));
        }
        lines.addAll(whole);
        List<String> near = new ArrayList<>();
        for (ClothPlan.NearMiss miss : plan.nearMisses()) {
            near.add(row(near.isEmpty() ? words.say("row.nearly") : "", miss.piece().piece().id(),
                    words.say("plan.on-hand", clothWords.weave(miss.cloth().kind(), miss.cloth().count()))));
        }
        lines.addAll(near);
        return lines;
    }

    private void cloth(PlannedCloth cloth, ClothPlan plan, List<String> lines) {
        lines.add(row(words.say("row.cloth"), clothWords.title(cloth, plan.cloths()), figures.measured(cloth.widthMm(), cloth.heightMm())
                + (cloth.bought() ? words.say("plan.bought") : "")));
        for (PlannedCut cut : cloth.cuts()) {
            lines.add(row(words.say("row.piece", cut.number()), cut.piece().piece().id(), figures.cut(cut.widthMm(), cut.heightMm())
                    + (cut.turned() ? words.say("plan.turned") : "")));
        }
        for (CutStep step : cloth.steps()) {
            lines.add(row(words.say("row.step", step.cut().number()), part(step),
                    words.say(step.cut().run() == EdgeCut.Run.DOWN ? "plan.down" : "plan.across", figures.cutLength(step.cut().fromMm()))));
        }
        for (Remnant left : cloth.remnants()) {
            lines.add(row(words.say("row.left"), figures.measured(left.widthMm(), left.heightMm()), words.say(left.usable() ? "plan.keep"
                    : "plan.scrap")));
        }
        lines.add(row(words.say("row.proof"), proof(cloth.proof()), ""));
    }

    private String part(CutStep step) {
        return switch (step.side()) {
            case WHOLE -> words.say("part.whole");
            case LEFT -> words.say("part.left", step.madeBy());
            case RIGHT -> words.say("part.right", step.madeBy());
            case ABOVE -> words.say("part.above", step.madeBy());
            case BELOW -> words.say("part.below", step.madeBy());
        };
    }

    private String proof(Proof proof) {
        return words.say(proof.optimal() ? "proof.best" : "proof.none");
    }

    private String row(String name, String first, String second) {
        return Figures.plain(words.row(name, first, WIDTH, second));
    }
}
