package kitleaf.press.type;

/** One line of a galley: glyphs from the first up to, and without, the last; no spaces at its end. */
public record Line(int from, int to) {
}
