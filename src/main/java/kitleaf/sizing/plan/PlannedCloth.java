package kitleaf.sizing.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kitleaf.basket.cloth.Cloth;
import kitleaf.basket.cloth.ClothSide;
import kitleaf.basket.cloth.Count;
import kitleaf.basket.cloth.Flaw;

/**
 * A cloth that is cut, on hand or to be bought, as it lies with its own width and height.
 *
 * @param name what it is called: the cloth's name on hand, the shop cut's name if it is to be bought
 * @param cloth the cloth that is asked for by name, if it is; of a cloth on hand its own name
 * @param bought whether it has to be bought first
 * @param kind how it is woven
 * @param count its threads to the inch
 * @param widthMm its width
 * @param heightMm its height
 * @param warp which way its warp runs: down along its height, or across
 * @param selvedge the side its selvedge is on, if known
 * @param flaws strips no piece covers
 * @param cuts the pieces, in the order in which they come off
 * @param edgeCuts every cut, in the order of cutting
 * @param remnants what is left, the largest first
 * @param proof what is proved of the plan this is part of
 */
public record PlannedCloth(String name, Optional<String> cloth, boolean bought, Cloth.Kind kind, Count count,
                           double widthMm, double heightMm, Cloth.WarpRun warp, Optional<ClothSide> selvedge,
                           List<Flaw> flaws, List<PlannedCut> cuts, List<EdgeCut> edgeCuts, List<Remnant> remnants,
                           Proof proof) {

    /** Copies the lists. */
    public PlannedCloth {
        Objects.requireNonNull(name);
        Objects.requireNonNull(cloth);
        Objects.requireNonNull(kind);
        Objects.requireNonNull(count);
        Objects.requireNonNull(warp);
        Objects.requireNonNull(selvedge);
        flaws = List.copyOf(flaws);
        cuts = List.copyOf(cuts);
        edgeCuts = List.copyOf(edgeCuts);
        remnants = List.copyOf(remnants);
        Objects.requireNonNull(proof);
    }

    /** The cuts as they are made: what each divides, and what comes off. */
    public List<CutStep> steps() {
        return CutStep.of(this);
    }
}
