package kitleaf.press;

import com.lowagie.text.pdf.PdfTextArray;

/** Glyphs of one face and size in a row, with the moves between them. */
final class Run {

    /** A thousandth of the type size, the unit of moves within a run. */
    private static final double PER_EM = 1000;

    /** Moves are written with two decimals; what that drops is made up at the next. */
    private static final double STEPS = 100;

    private final Face face;
    private final double sizePt;
    private final double startPt;
    private final PdfTextArray array = new PdfTextArray();
    private final StringBuilder pending = new StringBuilder();
    private double endPt;

    Run(Face face, double sizePt, double startPt) {
        this.face = face;
        this.sizePt = sizePt;
        this.startPt = startPt;
        this.endPt = startPt;
    }

    Face face() {
        return face;
    }

    double sizePt() {
        return sizePt;
    }

    /** Where it starts along its line. */
    double startPt() {
        return startPt;
    }

    /** Adds a piece of this face that starts at a place along the line. */
    void add(Piece piece, double atPt) {
        double steps = Math.rint((endPt - atPt) / sizePt * PER_EM * STEPS);
        if (steps != 0) {
            close();
            array.add((float) (steps / STEPS));
            endPt -= steps / STEPS / PER_EM * sizePt;
        }
        pending.append(piece.text());
        endPt += piece.advanceEm() * sizePt;
    }

    PdfTextArray array() {
        close();
        return array;
    }

    private void close() {
        if (pending.length() > 0) {
            array.add(pending.toString());
            pending.setLength(0);
        }
    }
}
