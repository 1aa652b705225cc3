package kitleaf.sizing.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothCut;
import kitleaf.basket.cloth.ClothOnHand;
import kitleaf.sizing.PieceReckoning;

/** Writes out a group's plan: which piece lies where, on the cloths as she wrote them, and in which order to cut. */
final class PlanWriter {

    private final Draft plan;
    /** How many of each kin have been given a place. */
    private final Map<Integer, Integer> taken = new HashMap<>();

    PlanWriter(Draft plan) {
        this.plan = plan;
    }

    /** The pieces without cloth, once all cloths are written. */
    List<PieceReckoning> unplaced() {
        List<PieceReckoning> unplaced = new ArrayList<>();
        for (int kin = 0; kin < plan.group().kins().size(); kin++) {
            List<Wanted> members = plan.group().kins().get(kin).members();
            members.subList(taken.getOrDefault(kin, 0), members.size()).forEach(wanted -> unplaced.add(wanted.piece()));
        }
        return unplaced;
    }

    private Wanted next(int kin) {
        int number = taken.merge(kin, 1, Integer::sum);
        return plan.group().kins().get(kin).members().get(number - 1);
    }

    /** Writes out one of its cloths; to be called once for each. */
    PlannedCloth cloth(Filled filled) {
        CutOrder order = new CutOrder(plan.group().kerf(), filled, this::next);
        boolean over = filled.stock().laidOver();
        List<PlannedCut> cuts = new ArrayList<>();
        for (CutOrder.Placed placed : order.placed()) {
            cuts.add(cut(cuts.size() + 1, placed, over));
        }
        List<EdgeCut> edgeCuts = new ArrayList<>();
        order.lines().forEach(line -> edgeCuts.add(edgeCut(edgeCuts.size() + 1, line, over)));
        List<Remnant> remnants = order.remnants().stream().map(remnant -> over ? laidBack(remnant) : remnant).toList();
        return filled.stock().onHand().map(cloth -> onHand(cloth, cuts, edgeCuts, remnants))
                .orElseGet(() -> bought(filled.stock().cut().orElseThrow(), cuts, edgeCuts, remnants));
    }

    private static PlannedCut cut(int number, CutOrder.Placed placed, boolean over) {
        CutOrder.Region at = placed.region();
        Wanted.Lie lie = placed.lie();
        // With its warp down, a cloth that was laid over lies on its side: so does a design that stood upright.
        boolean turned = lie.warp() == Cloth.WarpRun.ACROSS != over;
        return new PlannedCut(number, placed.wanted().piece(), lie.size(), over ? at.yMm() : at.xMm(), over ? at.xMm() : at.yMm(),
                over ? lie.heightMm() : lie.widthMm(), over ? lie.widthMm() : lie.heightMm(), turned, lie.warp(),
                lie.equals(placed.wanted().asAsked()));
    }

    private static EdgeCut edgeCut(int number, CutOrder.Line line, boolean over) {
        CutOrder.Region part = line.part();
        boolean down = line.run() == EdgeCut.Run.DOWN;
        double x1 = down ? part.xMm() + line.fromMm() : part.xMm();
        double y1 = down ? part.yMm() : part.yMm() + line.fromMm();
        double x2 = down ? x1 : part.xMm() + part.widthMm();
        double y2 = down ? part.yMm() + part.heightMm() : y1;
        return over ? new EdgeCut(number, line.run().other(), line.fromMm(), y1, x1, y2, x2)
                : new EdgeCut(number, line.run(), line.fromMm(), x1, y1, x2, y2);
    }

    private static Remnant laidBack(Remnant remnant) {
        return new Remnant(remnant.yMm(), remnant.xMm(), remnant.heightMm(), remnant.widthMm(), remnant.usable());
    }

    private PlannedCloth onHand(ClothOnHand cloth, List<PlannedCut> cuts, List<EdgeCut> edgeCuts, List<Remnant> remnants) {
        return new PlannedCloth(cloth.name(), Optional.of(cloth.name()), false, cloth.kind(), cloth.count(), cloth.widthMm(),
                cloth.heightMm(), cloth.warp(), cloth.selvedge(), cloth.flaws(), cuts, edgeCuts, remnants, plan.proof());
    }

    private PlannedCloth bought(ClothCut cut, List<PlannedCut> cuts, List<EdgeCut> edgeCuts, List<Remnant> remnants) {
        Optional<String> name = cuts.stream().flatMap(piece -> piece.piece().piece().cloth().name().stream()).findFirst();
        return new PlannedCloth(cut.name(), name, true, plan.group().kind(), plan.group().count(), cut.widthMm(), cut.heightMm(),
                cut.warp(), Optional.empty(), List.of(), cuts, edgeCuts, remnants, plan.proof());
    }
}
