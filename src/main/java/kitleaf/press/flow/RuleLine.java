package kitleaf.press.flow;

import kitleaf.press.markup.Style;

/** A level line as wide as it may be; it takes no height. */
record RuleLine(Stance stance, Style style) implements Block {

    @Override
    public Laid lay(double widthMm, double roomMm, Setter setter) {
        return Laid.drawn(0, (x, y, artist) -> artist.rule(style, x, y, widthMm));
    }

    @Override
    public double naturalMm(Setter setter) {
        return 0;
    }

    @Override
    public boolean isEmpty() {
        return false;
    }
}
