package kitleaf.press.type;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitleaf.press.markup.Type;

/** Turns text into glyphs: fractions, combining marks, tabular digits and fallback faces. */
final class Glyphs {

    /** Below this no character is a combining mark. */
    private static final int FIRST_MARK = 0x300;

    /** No line ends before or after it (UAX #14, class WJ); heeded behind a dash, where alone a word's line may end. */
    private static final int WORD_JOINER = 0x2060;

    private final FaceChain chain;
    private final boolean tabular;
    private final double sizePt;
    private final List<Glyph> glyphs = new ArrayList<>();

    private Glyphs(Type type, double sizePt) {
        this.chain = Typefaces.chain(type.family(), type.weight());
        this.tabular = type.tabular();
        this.sizePt = sizePt;
    }

    /**
     * The text's glyphs from left to right; white space is taken as it is, the text brought to NFC.
     *
     * @param sizePt what it is set in at last, which small fractions look at
     */
    static List<Glyph> of(String text, Type type, double sizePt) {
        String composed = isPlain(text) || Normalizer.isNormalized(text, Normalizer.Form.NFC) ? text
                : Normalizer.normalize(text, Normalizer.Form.NFC);
        Glyphs all = new Glyphs(type, sizePt);
        int at = 0;
        while (at < composed.length()) {
            at = all.next(composed, at);
        }
        return all.glyphs;
    }

    /** Whether all of it is surely in NFC: Latin without marks of their own, punctuation, arrows, signs (UAX #15, the quick check). */
    static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= FIRST_MARK && !(c >= '\u2010' && c <= '\u206f') && !(c >= '\u2190' && c <= '\u2328')
                    && !(c >= '\u2400' && c <= '\u27bf')) {
                return false;
            }
        }
        return true;
    }

    private int next(String text, int at) {
        int codePoint = text.codePointAt(at);
        if (isDigit(codePoint)) {
            return digits(text, at);
        }
        int end = at + Character.charCount(codePoint);
        if (isVulgar(codePoint)) {
            String[] parts = Normalizer.normalize(text.substring(at, end), Normalizer.Form.NFKC).split("\u2044");
            glyphs.add(Fraction.glyph(parts[0], parts[1], chain, sizePt));
            return end;
        }
        if (codePoint == WORD_JOINER && !glyphs.isEmpty()) {
            glyphs.add(glyphs.remove(glyphs.size() - 1).joined());
        }
        if (isInvisible(codePoint)) {
            return end;
        }
        return character(text, at, codePoint, end);
    }

    /** Digits: a fraction when U+2044 and more digits follow. */
    private int digits(String text, int at) {
        int end = skipDigits(text, at);
        if (end < text.length() && text.charAt(end) == Fraction.SLASH) {
            int last = skipDigits(text, end + 1);
            if (last > end + 1) {
                glyphs.add(Fraction.glyph(text.substring(at, end), text.substring(end + 1, last), chain, sizePt));
                return last;
            }
        }
        int from = at;
        while (from < end) {
            from = character(text, from, text.charAt(from), from + 1);
        }
        // A mark on the last digit may reach beyond the digits.
        return from;
    }

    private int character(String text, int at, int codePoint, int end) {
        int last = skipMarks(text, end);
        if (last > end) {
            glyphs.add(marked(text.substring(at, last), codePoint));
        } else if (tabular && isDigit(codePoint)) {
            glyphs.add(chain.glyph(codePoint).tabular());
        } else {
            glyphs.add(chain.glyph(codePoint));
        }
        return last;
    }

    /** A base with combining marks, each centred over the base's ink. */
    private Glyph marked(String cluster, int base) {
        Glyph alone = chain.glyph(base);
        Piece basePiece = alone.pieces().isEmpty() ? null : alone.pieces().get(0);
        if (basePiece == null) {
            return alone;
        }
        Face face = basePiece.face();
        List<Piece> pieces = new ArrayList<>(alone.pieces());
        Face.Ink ink = face.ink(basePiece.text().codePointAt(0));
        double middle = ink.right() > ink.left() ? (ink.left() + ink.right()) / 2 : alone.widthEm() / 2;
        boolean missing = alone.missing();
        for (int mark : cluster.substring(Character.charCount(base)).codePoints().toArray()) {
            if (isInvisible(mark)) {
                continue;
            }
            Optional<Face> found = face.has(mark) ? Optional.of(face) : chain.face(mark);
            if (found.isEmpty()) {
                missing = true;
                continue;
            }
            Face.Ink markInk = found.get().ink(mark);
            pieces.add(new Piece(found.get(), Character.toString(mark),
                    middle - (markInk.left() + markInk.right()) / 2, 0, 1));
        }
        return new Glyph(cluster, alone.widthEm(), pieces, false, alone.joint(), missing, false);
    }

    private static int skipMarks(String text, int at) {
        int end = at;
        while (end < text.length() && text.charAt(end) >= FIRST_MARK) {
            int codePoint = text.codePointAt(end);
            int kind = Character.getType(codePoint);
            if (kind != Character.NON_SPACING_MARK && kind != Character.ENCLOSING_MARK
                    && kind != Character.COMBINING_SPACING_MARK) {
                break;
            }
            end += Character.charCount(codePoint);
        }
        return end;
    }

    private static int skipDigits(String text, int at) {
        int end = at;
        while (end < text.length() && isDigit(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static boolean isDigit(int c) {
        return c >= '0' && c <= '9';
    }

    /** Unicode's ready-made fractions with both figures (U+215F has a numerator only). */
    private static boolean isVulgar(int c) {
        return c >= 0xBC && c <= 0xBE || c >= 0x2150 && c <= 0x215E || c == 0x2189;
    }

    /** Characters that shape or steer text and are not seen: soft hyphen, joiners, variation selectors. */
    private static boolean isInvisible(int c) {
        return c == 0xAD || c == 0x34F || c >= 0x200C && c <= 0x200F || c >= 0x202A && c <= 0x202E
                || c >= 0x2060 && c <= 0x2064 || c >= 0x2066 && c <= 0x206F || c >= 0xFE00 && c <= 0xFE0F
                || c == 0xFEFF || c >= 0xE0000 && c <= 0xE01EF;
    }
}
