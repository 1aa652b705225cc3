package kitleaf.press.type;

/**
 * Characters of one face at one size, somewhere within a glyph's width; lengths in ems.
 *
 * @param xEm where it starts, from the glyph's left edge
 * @param riseEm how far its baseline stands above the line's
 * @param scale its size as a share of the type size
 * @param advanceEm the sum of its characters' widths at full size, kept since a piece is drawn many times
 */
record Piece(Face face, String text, double xEm, double riseEm, double scale, double advanceEm) {

    Piece(Face face, String text, double xEm, double riseEm, double scale) {
        this(face, text, xEm, riseEm, scale, face.widthEm(text));
    }
}
