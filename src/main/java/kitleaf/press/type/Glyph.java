package kitleaf.press.type;

import java.util.List;
import java.util.Optional;

/**
 * The smallest thing a line is made of: a character, one with its combining marks, or a whole
 * fraction. Never parted by a line's end.
 *
 * @param text what it stands for, as written
 * @param widthEm how far the next glyph stands from it, in ems, without letter spacing
 * @param pieces what is drawn
 * @param space whether it is a space at which lines part and which is dropped at their ends
 * @param joint whether a line may part after it within a word: hyphens, dashes, slashes
 * @param missing whether no bundled face has it and a box is drawn for it
 * @param tabularDigit whether it is a digit set to the widest digit's width
 */
record Glyph(String text, double widthEm, List<Piece> pieces, boolean space, boolean joint, boolean missing,
        boolean tabularDigit) {

    private static final int MISSING_BOX = 0x25A1;
    private static final int ZERO_WIDTH_SPACE = 0x200B;

    Glyph {
        pieces = List.copyOf(pieces);
    }

    /** A character standing alone. */
    static Glyph of(int codePoint, FaceChain chain) {
        String text = Character.toString(codePoint);
        if (codePoint == ZERO_WIDTH_SPACE) {
            return new Glyph(text, 0, List.of(), true, false, false, false);
        }
        boolean space = isSpace(codePoint);
        // One glyph serves for several characters; written as the commonest, text can be searched.
        int drawn = switch (codePoint) {
            case 0x00A0, 0x2028, 0x2029, 0x0085 -> ' ';
            case 0x2010, 0x2011 -> '-';
            default -> codePoint;
        };
        Optional<Face> found = chain.face(drawn);
        Face face = found.orElseGet(() -> Typefaces.face(FaceFile.SYMBOLS_2));
        drawn = found.isPresent() ? drawn : MISSING_BOX;
        Piece piece = new Piece(face, Character.toString(drawn), 0, 0, 1);
        return new Glyph(text, face.widthEm(drawn), List.of(piece), space, isJoint(codePoint), found.isEmpty(),
                false);
    }

    /** This digit in the middle of its face's widest digit's width. */
    Glyph tabular() {
        Piece piece = pieces.get(0);
        double width = piece.face().widestDigitEm();
        Piece centred = new Piece(piece.face(), piece.text(), (width - widthEm) / 2, 0, 1);
        return new Glyph(text, width, List.of(centred), space, joint, missing, true);
    }

    /** The same where no line ends. */
    Glyph joined() {
        return new Glyph(text, widthEm, pieces, space, false, missing, tabularDigit);
    }

    /** Whether it is a fraction, drawn otherwise than it is written. */
    boolean isFraction() {
        return text.indexOf(Fraction.SLASH) > 0;
    }

    private static boolean isSpace(int c) {
        return c == ' ' || c == 0x1680 || c >= 0x2000 && c <= 0x200A && c != 0x2007 || c == 0x205F || c == 0x3000
                || c == 0x2028 || c == 0x2029 || c == 0x0085;
    }

    private static boolean isJoint(int c) {
        return c == '-' || c == '/' || c == 0x2010 || c == 0x2012 || c == 0x2013 || c == 0x2014;
    }
}
