package kitleaf.basket;

/** The units a stitcher thinks in; sheets give these first and the others beside them. */
public enum Units {
    /** Inches and their fractions. */
    IN,
    /** Centimetres. */
    CM
}
