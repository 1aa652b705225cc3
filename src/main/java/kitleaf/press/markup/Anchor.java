package kitleaf.press.markup;

/** Which part of a text, or of its box, lies at its x. */
public enum Anchor {
    START(0), MIDDLE(0.5), END(1);

    /** The share of the width that lies left of x. */
    public final double before;

    Anchor(double before) {
        this.before = before;
    }
}
