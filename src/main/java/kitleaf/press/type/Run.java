package kitleaf.press.type;

/** Glyphs of one face and size in a row, with the moves between them. */
final class Run {

    /** A thousandth of the type size, the unit of moves within a run. */
    private static final double PER_EM = 1000;

    /** Moves are written with two decimals; what that drops is made up at the next. */
    private static final double STEPS = 100;

    private final GlyphCodes codes;
    private final Face face;
    private final double sizePt;
    private final double startPt;
    private final ContentBytes array = new ContentBytes(64).add('[');
    private boolean open;
    private double endPt;

    Run(GlyphCodes codes, Face face, double sizePt, double startPt) {
        this.codes = codes;
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
            array.number(steps / STEPS);
            // No space is needed before the next string.
            array.cutTo(array.length() - 1);
            endPt -= steps / STEPS / PER_EM * sizePt;
        }
        if (!open) {
            open = true;
            array.add('(');
        }
        array.add(codes.of(face, piece.text()));
        endPt += piece.advanceEm() * sizePt;
    }

    /** The operator that shows it (ISO 32000-1, 9.4.3); nothing is added after. */
    byte[] shown() {
        close();
        return array.add("]TJ\n").toBytes();
    }

    private void close() {
        if (open) {
            open = false;
            array.add(')');
        }
    }
}
