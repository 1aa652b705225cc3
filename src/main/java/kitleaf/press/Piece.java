package kitleaf.press;

/**
 * Characters of one face at one size, somewhere within a glyph's width; lengths in ems.
 *
 * @param xEm where it starts, from the glyph's left edge
 * @param riseEm how far its baseline stands above the line's
 * @param scale its size as a share of the type size
 */
record Piece(Face face, String text, double xEm, double riseEm, double scale) {
}
