package kitleaf.sheet.plan;

import java.util.List;
import kitleaf.sheet.page.TypeScale;

/**
 * How large the numbers and letters in a cloth plan's drawing are, and what room they want around the cloth.
 *
 * @param words whether names, sizes, selvedge and flaws are told in the drawing; else it has numbers and
 *        letters alone, those of cuts white on dark, since sizes cannot tell them from those of pieces
 * @param numbers of pieces in points, the largest first
 * @param letters of what is left over, the same
 * @param cuts sizes of cut numbers, the same, each with how high its box is in millimetres; the first may have scissors
 * @param leaderPt words at the ends of lines
 * @param leaderStepMm from one of them to the next
 * @param leftMm room left of the cloth
 * @param topMm room above it
 * @param rightMm room right of it
 * @param belowMm room below it
 * @param arrowBelowMm room below that for a warp arrow that points across
 */
record PlanMarks(boolean words, List<Double> numbers, List<Double> letters, List<Cut> cuts, double leaderPt, double leaderStepMm,
                 double leftMm, double topMm, double rightMm, double belowMm, double arrowBelowMm) {

    PlanMarks {
        numbers = List.copyOf(numbers);
        letters = List.copyOf(letters);
        cuts = List.copyOf(cuts);
    }

    /**
     * A try at a cut's number.
     *
     * @param sizePt its size
     * @param highMm how high its box is
     * @param clearMm what its box is wider than it
     * @param scissors whether scissors stand before it
     */
    record Cut(double sizePt, double highMm, double clearMm, boolean scissors) { }

    /** Of ordinary sheets. */
    static final PlanMarks ORDINARY = new PlanMarks(true, PlanType.NUMBERS, PlanType.LETTERS,
            List.of(new Cut(PlanType.LEAST + 0.5, 2.9, 0.8, true), new Cut(PlanType.LEAST + 0.5, 2.9, 0.8, false),
                    new Cut(PlanType.LEAST, 2.2, 0.2, false)),
            PlanType.MARK, 3.1, 19, 7, 12, 10, 5);

    /** Of large print: nothing under its smallest size; what has no number has the words of the other pages. */
    static final PlanMarks LARGE = new PlanMarks(false, List.of(40.0, 32.0, 26.0, 22.0, 20.0, 18.0, TypeScale.LEAST_LARGE_PT),
            List.of(24.0, 20.0, 18.0, TypeScale.LEAST_LARGE_PT), List.of(new Cut(TypeScale.LEAST_LARGE_PT, 5.8, 2, false)),
            TypeScale.LEAST_LARGE_PT, 6.4, 14, 9, 3, 2, 0);

    static PlanMarks of(TypeScale type) {
        return type.large() ? LARGE : ORDINARY;
    }
}
