package kitleaf.sheet.plan;

import java.util.List;

/** Sizes of type in the drawings of the cloth plan, in points. */
final class PlanType {

    /** Figures along the drawing. */
    static final double DIMENSION = 8;
    /** Words in the drawing. */
    static final double LABEL = 7.5;
    /** Words in a large rectangle of the drawing, and its second size. */
    static final double LARGE_LABEL = 10;
    static final double LARGE_MARK = 8.5;
    /** The second size and short words in the drawing. */
    static final double MARK = 7;
    /** The least there is. */
    static final double LEAST = 6;
    /** The number of a piece: as large as its rectangle lets it be. */
    static final List<Double> NUMBERS = List.of(20.0, 16.0, 13.0, 10.0, 8.0, 7.0, LEAST);
    /** The letter of what is left over. */
    static final List<Double> LETTERS = List.of(11.0, 10.0, 8.0, 7.0, LEAST);

    private PlanType() { }
}
