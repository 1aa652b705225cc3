package kitleaf.command.json;

import java.util.OptionalDouble;
import kitleaf.basket.Price;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.sizing.plan.ClothPlan;
import kitleaf.sizing.plan.CutStep;
import kitleaf.sizing.plan.PlannedCloth;
import kitleaf.sizing.plan.PlannedCut;
import kitleaf.sizing.plan.Proof;
import kitleaf.sizing.plan.Purchase;

/** Says which pieces are cut from which cloth. Places are from a cloth's top left corner; pieces are named by their IDs. */
final class ClothPlanJson {

    /** No option ends a search any more, and no key of this version is taken away. */
    private static final boolean NEVER_CUT_SHORT = false;

    private ClothPlanJson() { }

    static JsonObject of(ClothPlan plan) {
        return new JsonObject().put("optimal", plan.optimal()).put("cut-short", NEVER_CUT_SHORT)
                .put("cloths", plan.cloths(), ClothPlanJson::cloth)
                .put("buy", plan.buy(), ClothPlanJson::purchase).putCost(plan.cost())
                .put("unplaced", plan.unplaced(), piece -> piece.piece().id())
                .put("untouched", plan.untouched(), cloth -> new JsonObject().put("name", cloth.name())
                        .put("width-mm", cloth.widthMm()).put("height-mm", cloth.heightMm())
                        .put("kind", cloth.kind()).putCount(cloth.count()))
                .put("near-misses", plan.nearMisses(), miss -> new JsonObject().put("piece", miss.piece().piece().id())
                        .put("cloth", miss.cloth().name()).put("kind", miss.cloth().kind()).putCount(miss.cloth().count()));
    }

    private static JsonObject cloth(PlannedCloth cloth) {
        return new JsonObject().put("name", cloth.name()).put("bought", cloth.bought()).put("cloth", cloth.cloth())
                .put("kind", cloth.kind()).putCount(cloth.count())
                .put("width-mm", cloth.widthMm()).put("height-mm", cloth.heightMm())
                .put("warp", cloth.warp()).put("selvedge", cloth.selvedge())
                .put("flaws", cloth.flaws(), flaw -> new JsonObject().put("run", flaw.run())
                        .put("from-mm", flaw.fromMm()).put("wide-mm", flaw.wideMm()))
                .put("optimal", cloth.proof().optimal()).put("proof", proof(cloth.proof()))
                .put("cuts", cloth.cuts(), ClothPlanJson::cut)
                .put("edge-cuts", cloth.steps(), ClothPlanJson::step)
                .put("remnants", cloth.remnants(), remnant -> putBox(remnant.xMm(), remnant.yMm(), remnant.widthMm(), remnant.heightMm(),
                        new JsonObject()).put("usable", remnant.usable()));
    }

    private static JsonObject proof(Proof proof) {
        return new JsonObject().put("cut-short", NEVER_CUT_SHORT).put("cost", proof.cost())
                .putKnown("least-cost", bound(proof, proof.cost())).putKnown("cost-gap", bound(proof, 0))
                .put("cloths", proof.cloths()).putKnown("fewest-cloths", bound(proof, proof.cloths()))
                .put("remnant-mm2", proof.remnantMm2()).putKnown("largest-remnant-mm2", bound(proof, proof.remnantMm2()))
                .putKnown("remnant-gap", bound(proof, 0));
    }

    /** What no plan passes: of the best plan its own figure, of any other nobody knows. */
    private static OptionalDouble bound(Proof proof, double best) {
        return proof.optimal() ? OptionalDouble.of(best) : OptionalDouble.empty();
    }

    private static JsonObject cut(PlannedCut cut) {
        JsonObject json = new JsonObject().put("number", cut.number()).put("piece", cut.piece().piece().id());
        return putBox(cut.xMm(), cut.yMm(), cut.widthMm(), cut.heightMm(), json)
                .put("turned", cut.turned()).put("warp", cut.warp()).put("as-asked", cut.asAsked());
    }

    private static JsonObject step(CutStep step) {
        JsonObject json = new JsonObject().put("number", step.cut().number()).put("run", step.cut().run())
                .put("from-mm", step.cut().fromMm())
                .put("x1-mm", step.cut().x1Mm()).put("y1-mm", step.cut().y1Mm())
                .put("x2-mm", step.cut().x2Mm()).put("y2-mm", step.cut().y2Mm())
                .put("part", step.side());
        if (step.madeBy() > 0) {
            json.put("of-cut", step.madeBy());
        }
        return json.put("part-width-mm", step.widthMm()).put("part-height-mm", step.heightMm())
                .put("frees", step.pieces(), cut -> cut.piece().piece().id());
    }

    private static JsonObject purchase(Purchase purchase) {
        ClothCut cut = purchase.cut();
        return new JsonObject().put("cut", cut.name()).put("number", purchase.number()).put("cloth", purchase.cloth())
                .put("kind", purchase.kind()).putCount(purchase.count())
                .put("width-mm", cut.widthMm()).put("height-mm", cut.heightMm())
                .put("each", cut.price().map(Price::amount)).putCost(purchase.cost());
    }

    private static JsonObject putBox(double xMm, double yMm, double widthMm, double heightMm, JsonObject json) {
        return json.put("x-mm", xMm).put("y-mm", yMm).put("width-mm", widthMm).put("height-mm", heightMm);
    }
}
