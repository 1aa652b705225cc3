package kitleaf.press.drawing;

import io.nayuki.qrcodegen.DataTooLongException;
import io.nayuki.qrcodegen.QrCode;
import io.nayuki.qrcodegen.QrSegment;
import java.util.ArrayList;
import java.util.List;
import kitleaf.press.markup.BadValue;

/** A text as a QR code (ISO/IEC 18004): the smallest version that holds it. */
final class QrSymbol {

    /** The quiet zone: so many modules stay clear on all four sides (ISO/IEC 18004). */
    static final int QUIET = 4;

    /** No code holds more characters than version 40 at level L holds digits (ISO/IEC 18004). */
    private static final int MOST = 7089;

    /** The assignment number of UTF-8; without it a reader takes bytes for ISO 8859-1, or guesses. */
    private static final int UTF_8 = 26;

    /** What the encoder takes for the best of the eight masks. */
    private static final int BEST_MASK = -1;

    private final QrCode code;

    private QrSymbol(QrCode code) {
        this.code = code;
    }

    /**
     * Encodes a text.
     *
     * @param written the text; white space is treated as {@link QrText} says
     * @param least the level; a higher one is taken where the code does not grow by it
     * @throws BadValue if there is no text, or no version holds it
     */
    static QrSymbol of(String written, QrLevel least) throws BadValue {
        return of(written, least, BEST_MASK);
    }

    /** The same, only to know its size: that does not hang on the mask, and to find the best one takes most of the time. */
    static QrSymbol sized(String written, QrLevel least) throws BadValue {
        return of(written, least, 0);
    }

    private static QrSymbol of(String written, QrLevel least, int mask) throws BadValue {
        String text = QrText.of(written);
        if (text.isEmpty()) {
            throw new BadValue("code.no-text");
        }
        if (text.length() > MOST) {
            throw new CodeTooLong(text, least);
        }
        try {
            return new QrSymbol(QrCode.encodeSegments(segments(text), least.ecc(), QrCode.MIN_VERSION, QrCode.MAX_VERSION, mask, true));
        } catch (DataTooLongException e) {
            throw new CodeTooLong(text, least);
        }
    }

    /** Modules per side without the quiet zone, 21 to 177. */
    int modules() {
        return code.size;
    }

    /** The side of one module in a square with this side, the quiet zone included. */
    double module(double side) {
        return side / (code.size + 2 * QUIET);
    }

    /**
     * Traces every dark module, those side by side in a row as one rectangle. Each edge is reckoned from
     * the corner, so that rectangles in neighbouring rows meet in the very same coordinates.
     *
     * @param x the left edge of the quiet zone
     * @param y its upper edge
     * @param side the whole square's side, the quiet zone included
     */
    void trace(double x, double y, double side, Track track) {
        for (int row = 0; row < code.size; row++) {
            double top = y + edge(row, side);
            double bottom = y + edge(row + 1, side);
            int from = 0;
            while (from < code.size) {
                int to = from;
                while (to < code.size && code.getModule(to, row)) {
                    to++;
                }
                if (to > from) {
                    double left = x + edge(from, side);
                    double right = x + edge(to, side);
                    track.move(left, top);
                    track.line(right, top);
                    track.line(right, bottom);
                    track.line(left, bottom);
                    track.close();
                }
                from = to + 1;
            }
        }
    }

    /** How far the edge before a module lies from the square's own. */
    private double edge(int before, double side) {
        return side * (QUIET + before) / (code.size + 2 * QUIET);
    }

    private static List<QrSegment> segments(String text) {
        List<QrSegment> segments = new ArrayList<>(QrSegment.makeSegments(text));
        if (text.chars().anyMatch(c -> c > 127)) {
            segments.add(0, QrSegment.makeEci(UTF_8));
        }
        return segments;
    }
}
