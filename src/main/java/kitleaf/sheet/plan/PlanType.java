package kitleaf.sheet.plan;

import java.util.Map;

/** Sizes of type on the cloth plan, in points: the one place where they stand, for measuring and for the template. */
final class PlanType {

    static final double TEXT = 9;
    static final double NAME = 9.5;
    static final double SMALL = 7.5;
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
    static final double[] NUMBERS = {20, 16, 13, 10, 8, 7, LEAST};
    /** The letter of what is left over. */
    static final double[] LETTERS = {11, 10, 8, 7, LEAST};

    private PlanType() { }

    /** Those the template sets by. */
    static Map<String, Double> all() {
        return Map.of("text", TEXT, "name", NAME, "small", SMALL, "dimension", DIMENSION, "mark", MARK, "least", LEAST);
    }
}
