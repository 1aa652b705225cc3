package kitleaf.press.type;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets a fraction from small figures and U+2044: the numerator hangs from cap height, the
 * denominator stands on the baseline, and both close up to the slash by its own slope. In small type, where such figures could be
 * misread, all of it stands in line at full size.
 */
final class Fraction {

    static final int SLASH = 0x2044;

    /** The figures' size as a share of the type size. */
    private static final double FIGURES = 0.75;

    /** No figure is smaller than this; by eye, at reading distance. */
    private static final double LEAST_PT = 6.5;

    /** What stands for the slash in line: the other one has no room at its sides. */
    private static final int LEVEL_SLASH = 0x2215;

    /** White between a figure's corner and the slash, in ems; chosen by eye from 8 to 40 pt. */
    private static final double GAP = 0.05;

    /** White before and after the whole, in ems; chosen by eye. */
    private static final double SIDE = 0.04;

    private Fraction() {
    }

    /** A fraction in type of a size. */
    static Glyph glyph(String numerator, String denominator, FaceChain chain, double sizePt) {
        return FIGURES * sizePt < LEAST_PT ? inLine(numerator, denominator, chain) : built(numerator, denominator, chain.fractionFace());
    }

    private static Glyph inLine(String numerator, String denominator, FaceChain chain) {
        List<Piece> pieces = new ArrayList<>();
        double atEm = 0;
        for (int c : (numerator + Character.toString(LEVEL_SLASH) + denominator).codePoints().toArray()) {
            Glyph glyph = chain.glyph(c);
            pieces.add(new Piece(glyph.pieces().get(0).face(), glyph.pieces().get(0).text(), atEm, 0, 1));
            atEm += glyph.widthEm();
        }
        return new Glyph(numerator + Character.toString(SLASH) + denominator, atEm, pieces, false, false, false, false);
    }

    private static Glyph built(String numerator, String denominator, Face face) {
        double cap = face.capHeightEm();
        double small = FIGURES * cap;
        Face.Ink slash = face.ink(SLASH);
        double slope = (slash.right() - slash.left() - thickness(face)) / (slash.top() - slash.bottom());

        Row above = Row.of(numerator, face);
        Row below = Row.of(denominator, face);
        // Ink measured from the left edge of the whole.
        double numeratorLeft = SIDE;
        double slashLeft = numeratorLeft + above.inkWidth() + GAP - slope * (cap - small - slash.bottom());
        if (slashLeft < SIDE) {
            numeratorLeft += SIDE - slashLeft;
            slashLeft = SIDE;
        }
        double denominatorLeft = slashLeft + thickness(face) + slope * (small - slash.bottom()) + GAP;
        double right = Math.max(denominatorLeft + below.inkWidth(), slashLeft + slash.right() - slash.left());

        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece(face, numerator, numeratorLeft - above.inkLeft(), cap - small, FIGURES));
        pieces.add(new Piece(face, Character.toString(SLASH), slashLeft - slash.left(), 0, 1));
        pieces.add(new Piece(face, denominator, denominatorLeft - below.inkLeft(), 0, FIGURES));
        return new Glyph(numerator + "\u2044" + denominator, right + SIDE, pieces, false, false, false, false);
    }

    /** How much of the slash's width is its stroke, measured level, in ems; about a stem's width. */
    private static double thickness(Face face) {
        Face.Ink bar = face.ink('|');
        return Math.max(0.06, bar.right() - bar.left());
    }

    /** A row of small figures: where its ink begins and how wide that is, in ems of the whole. */
    private record Row(double inkLeft, double inkWidth) {

        static Row of(String digits, Face face) {
            double left = face.ink(digits.charAt(0)).left();
            char last = digits.charAt(digits.length() - 1);
            double right = face.widthEm(digits) - face.widthEm(last) + face.ink(last).right();
            return new Row(left * FIGURES, (right - left) * FIGURES);
        }
    }
}
