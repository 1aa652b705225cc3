package kitleaf.sheet.plan;

import java.util.List;
import kitleaf.sizing.plan.CutStep;

/**
 * A cut to be made. Absent text is empty.
 *
 * @param figure its number, from its own top left corner
 * @param measure how far from the edge
 * @param other the same in the other unit
 * @param from which edge of which part
 * @param pieces what comes off by it and is a piece
 * @param left what is left over by it
 * @param cut the part it divides, and where, for a small picture
 */
public record PlanStep(PlanFigure figure, String measure, String other, String from, List<String> pieces, List<String> left, CutStep cut) {

    /** Copies the lists. */
    public PlanStep {
        pieces = List.copyOf(pieces);
        left = List.copyOf(left);
    }
}
