package kitleaf.press;

/** Which part of a text, or of its box, lies at its x. */
enum Anchor {
    START(0), MIDDLE(0.5), END(1);

    /** The share of the width that lies left of x. */
    final double before;

    Anchor(double before) {
        this.before = before;
    }
}
