package kitleaf.command;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitleaf.basket.Price;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Flaw;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.plan.ClothPlan;
import kitleaf.sizing.plan.CutStep;
import kitleaf.sizing.plan.PlannedCloth;
import kitleaf.sizing.plan.PlannedCut;
import kitleaf.sizing.plan.Proof;
import kitleaf.sizing.plan.Purchase;
import kitleaf.sizing.plan.Remnant;

/** Writes which pieces are cut from which cloth. Places are from a cloth's top left corner; pieces are named by their IDs. */
final class ClothPlanJson {

    /** No option ends a search any more, and no key of this version is taken away. */
    private static final boolean NEVER_CUT_SHORT = false;

    private ClothPlanJson() { }

    static void write(ClothPlan plan, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("cloth-plan");
        json.writeBooleanField("optimal", plan.optimal());
        json.writeBooleanField("cut-short", NEVER_CUT_SHORT);
        json.writeArrayFieldStart("cloths");
        for (PlannedCloth cloth : plan.cloths()) {
            write(cloth, json);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("buy");
        for (Purchase purchase : plan.buy()) {
            write(purchase, json);
        }
        json.writeEndArray();
        write(plan.cost(), json);
        ids("unplaced", plan.unplaced(), json);
        json.writeArrayFieldStart("untouched");
        for (ClothOnHand cloth : plan.untouched()) {
            json.writeStartObject();
            json.writeStringField("name", cloth.name());
            json.writeNumberField("width-mm", cloth.widthMm());
            json.writeNumberField("height-mm", cloth.heightMm());
            json.writeStringField("kind", word(cloth.kind()));
            write(cloth.count(), json);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("near-misses");
        for (ClothPlan.NearMiss miss : plan.nearMisses()) {
            json.writeStartObject();
            json.writeStringField("piece", miss.piece().piece().id());
            json.writeStringField("cloth", miss.cloth().name());
            json.writeStringField("kind", word(miss.cloth().kind()));
            write(miss.cloth().count(), json);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void write(PlannedCloth cloth, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", cloth.name());
        json.writeBooleanField("bought", cloth.bought());
        if (cloth.cloth().isPresent()) {
            json.writeStringField("cloth", cloth.cloth().get());
        }
        json.writeStringField("kind", word(cloth.kind()));
        write(cloth.count(), json);
        json.writeNumberField("width-mm", cloth.widthMm());
        json.writeNumberField("height-mm", cloth.heightMm());
        json.writeStringField("warp", word(cloth.warp()));
        if (cloth.selvedge().isPresent()) {
            json.writeStringField("selvedge", word(cloth.selvedge().get()));
        }
        json.writeArrayFieldStart("flaws");
        for (Flaw flaw : cloth.flaws()) {
            json.writeStartObject();
            json.writeStringField("run", word(flaw.run()));
            json.writeNumberField("from-mm", flaw.fromMm());
            json.writeNumberField("wide-mm", flaw.wideMm());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeBooleanField("optimal", cloth.proof().optimal());
        write(cloth.proof(), json);
        json.writeArrayFieldStart("cuts");
        for (PlannedCut cut : cloth.cuts()) {
            write(cut, json);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("edge-cuts");
        for (CutStep step : cloth.steps()) {
            write(step, json);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("remnants");
        for (Remnant remnant : cloth.remnants()) {
            json.writeStartObject();
            box(remnant.xMm(), remnant.yMm(), remnant.widthMm(), remnant.heightMm(), json);
            json.writeBooleanField("usable", remnant.usable());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void write(Proof proof, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("proof");
        json.writeBooleanField("cut-short", NEVER_CUT_SHORT);
        json.writeNumberField("cost", proof.cost());
        bound("least-cost", proof, proof.cost(), json);
        bound("cost-gap", proof, 0, json);
        json.writeNumberField("cloths", proof.cloths());
        bound("fewest-cloths", proof, proof.cloths(), json);
        json.writeNumberField("remnant-mm2", proof.remnantMm2());
        bound("largest-remnant-mm2", proof, proof.remnantMm2(), json);
        bound("remnant-gap", proof, 0, json);
        json.writeEndObject();
    }

    /** What no plan passes: of the best plan its own figure, of any other nobody knows. */
    private static void bound(String name, Proof proof, double best, JsonGenerator json) throws IOException {
        if (proof.optimal()) {
            json.writeNumberField(name, best);
        } else {
            json.writeNullField(name);
        }
    }

    private static void write(PlannedCut cut, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeNumberField("number", cut.number());
        json.writeStringField("piece", cut.piece().piece().id());
        box(cut.xMm(), cut.yMm(), cut.widthMm(), cut.heightMm(), json);
        json.writeBooleanField("turned", cut.turned());
        json.writeStringField("warp", word(cut.warp()));
        json.writeBooleanField("as-asked", cut.asAsked());
        json.writeEndObject();
    }

    private static void write(CutStep step, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeNumberField("number", step.cut().number());
        json.writeStringField("run", word(step.cut().run()));
        json.writeNumberField("from-mm", step.cut().fromMm());
        json.writeNumberField("x1-mm", step.cut().x1Mm());
        json.writeNumberField("y1-mm", step.cut().y1Mm());
        json.writeNumberField("x2-mm", step.cut().x2Mm());
        json.writeNumberField("y2-mm", step.cut().y2Mm());
        json.writeStringField("part", word(step.side()));
        if (step.madeBy() > 0) {
            json.writeNumberField("of-cut", step.madeBy());
        }
        json.writeNumberField("part-width-mm", step.widthMm());
        json.writeNumberField("part-height-mm", step.heightMm());
        json.writeArrayFieldStart("frees");
        for (PlannedCut cut : step.pieces()) {
            json.writeString(cut.piece().piece().id());
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void write(Purchase purchase, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("cut", purchase.cut().name());
        json.writeNumberField("number", purchase.number());
        if (purchase.cloth().isPresent()) {
            json.writeStringField("cloth", purchase.cloth().get());
        }
        json.writeStringField("kind", word(purchase.kind()));
        write(purchase.count(), json);
        json.writeNumberField("width-mm", purchase.cut().widthMm());
        json.writeNumberField("height-mm", purchase.cut().heightMm());
        if (purchase.cut().price().isPresent()) {
            json.writeNumberField("each", purchase.cut().price().get().amount());
        }
        write(purchase.cost(), json);
        json.writeEndObject();
    }

    private static void box(double xMm, double yMm, double widthMm, double heightMm, JsonGenerator json) throws IOException {
        json.writeNumberField("x-mm", xMm);
        json.writeNumberField("y-mm", yMm);
        json.writeNumberField("width-mm", widthMm);
        json.writeNumberField("height-mm", heightMm);
    }

    private static void write(Count count, JsonGenerator json) throws IOException {
        json.writeNumberField("warp-per-inch", count.warpPerInch());
        json.writeNumberField("weft-per-inch", count.weftPerInch());
    }

    private static void write(Optional<Price> cost, JsonGenerator json) throws IOException {
        if (cost.isPresent()) {
            json.writeNumberField("cost", cost.get().amount());
            json.writeStringField("currency", cost.get().currency());
        }
    }

    private static void ids(String name, List<PieceReckoning> pieces, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(name);
        for (PieceReckoning piece : pieces) {
            json.writeString(piece.piece().id());
        }
        json.writeEndArray();
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
