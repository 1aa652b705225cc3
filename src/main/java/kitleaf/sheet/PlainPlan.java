package kitleaf.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kitleaf.basket.ClothOnHand;
import kitleaf.basket.Units;
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

    private static final String ROW = "  %-11s%-24s %s";

    private final Figures figures;
    private final PlanWords phrases;

    private PlainPlan(Units units) {
        this.figures = new Figures(units);
        this.phrases = new PlanWords(SheetWords.in(Locale.ENGLISH), units);
    }

    /** One plan; no lines when there is nothing to cut. */
    public static List<String> of(ClothPlan plan, Units units) {
        return plan.isEmpty() ? List.of() : new PlainPlan(units).lines(plan);
    }

    private List<String> lines(ClothPlan plan) {
        List<String> lines = new ArrayList<>();
        lines.add("cloth plan" + (plan.cutShort() ? ", cut short by --plan-seconds" : ""));
        for (PlannedCloth cloth : plan.cloths()) {
            cloth(cloth, plan, lines);
        }
        List<String> buy = new ArrayList<>();
        for (Purchase purchase : plan.buy()) {
            buy.add(row(buy.isEmpty() ? "to buy" : "", purchase.number() + " x " + purchase.cut().name(),
                    purchase.cloth().orElseGet(() -> phrases.weave(purchase.kind(), purchase.count()))
                            + purchase.cost().map(cost -> ", " + PlanWords.money(cost)).orElse("")));
        }
        plan.cost().ifPresent(cost -> buy.add(row("cost", PlanWords.money(cost), "")));
        lines.addAll(buy);
        List<String> rest = new ArrayList<>();
        for (PieceReckoning piece : plan.unplaced()) {
            rest.add(row(rest.isEmpty() ? "no cloth" : "", piece.piece().id(),
                    "needs " + figures.cut(piece.cloth().size().across().cutMm(), piece.cloth().size().down().cutMm())));
        }
        lines.addAll(rest);
        List<String> whole = new ArrayList<>();
        for (ClothOnHand cloth : plan.untouched()) {
            whole.add(row(whole.isEmpty() ? "stays whole" : "", cloth.name(), figures.cut(cloth.widthMm(), cloth.heightMm())));
        }
        lines.addAll(whole);
        List<String> near = new ArrayList<>();
        for (ClothPlan.NearMiss miss : plan.nearMisses()) {
            near.add(row(near.isEmpty() ? "nearly" : "", miss.piece().piece().id(), phrases.weave(miss.cloth().kind(), miss.cloth().count()) + " on hand"));
        }
        lines.addAll(near);
        return lines;
    }

    private void cloth(PlannedCloth cloth, ClothPlan plan, List<String> lines) {
        lines.add(row("cloth", phrases.title(cloth, plan.cloths()), figures.cut(cloth.widthMm(), cloth.heightMm()) + (cloth.bought() ? ", to buy" : "")));
        for (PlannedCut cut : cloth.cuts()) {
            lines.add(row("  piece " + cut.number(), cut.piece().piece().id(), figures.cut(cut.widthMm(), cut.heightMm()) + (cut.turned() ? ", turned" : "")));
        }
        for (CutStep step : cloth.steps()) {
            lines.add(row("  cut " + step.cut().number(), part(step),
                    figures.length(step.cut().fromMm()) + (step.cut().run() == EdgeCut.Run.DOWN ? " from its left, down" : " from its top, across")));
        }
        for (Remnant left : cloth.remnants()) {
            lines.add(row("  left", figures.cut(left.widthMm(), left.heightMm()), left.usable() ? "keep" : "scrap"));
        }
        lines.add(row("  proof", proof(cloth.proof()), ""));
    }

    private static String part(CutStep step) {
        return switch (step.side()) {
            case WHOLE -> "whole cloth";
            case LEFT -> "left of cut " + step.madeBy();
            case RIGHT -> "right of cut " + step.madeBy();
            case ABOVE -> "above cut " + step.madeBy();
            case BELOW -> "below cut " + step.madeBy();
        };
    }

    private static String proof(Proof proof) {
        if (proof.optimal()) {
            return "no plan is better";
        }
        int many = proof.cloths() - proof.fewestCloths();
        return String.format(Locale.ROOT, "not proved: at most %.1f %% too dear, %d cloth%s too many, %.1f %% less left", proof.costGap() * 100,
                many, many == 1 ? "" : "s", proof.remnantGap() * 100);
    }

    private static String row(String name, String first, String second) {
        return PlainFigures.plain(String.format(Locale.ROOT, ROW, name, first, second).stripTrailing());
    }
}
