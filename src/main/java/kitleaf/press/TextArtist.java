package kitleaf.press;

import java.util.List;

/** Draws fitted text. */
final class TextArtist {

    private final Pen pen;
    private final Transform transform;
    private final double originX;
    private final double originY;
    private final double shiftX;
    private final double shiftY;

    private Style runStyle;
    private double runRise;
    private Run run;
    private double lineX;
    private double lineY;

    /** Takes the text's x and y, in the element's millimetres; the text is moved with that point as a whole. */
    TextArtist(Pen pen, Transform transform, double originX, double originY) {
        this.pen = pen;
        this.transform = transform;
        this.originX = originX;
        this.originY = originY;
        // Printer correction moves a text but does not stretch it.
        this.shiftX = pen.plate().shiftX(transform.x(originX, originY));
        this.shiftY = pen.plate().shiftY(transform.y(originX, originY));
    }

    /** Draws the lines below one another, each placed about x by the anchor. */
    void draw(Fitting text, Style style) {
        Galley galley = text.galley();
        double leadMm = style.lineHeight() * style.type().sizePt() * text.factor() / Plate.POINTS_PER_MM;
        List<Line> lines = text.lines();
        pen.beginText();
        for (int i = 0; i < lines.size(); i++) {
            double widthPt = galley.widthPt(lines.get(i)) * text.factor();
            lineX = originX - style.anchor().before * widthPt / Plate.POINTS_PER_MM;
            lineY = originY + i * leadMm;
            line(galley, lines.get(i), text.factor());
        }
        pen.endText();
    }

    private void line(Galley galley, Line line, double factor) {
        double atPt = 0;
        int at = line.from();
        while (at < line.to()) {
            int end = togetherTo(galley, at, line.to());
            boolean together = end > at;
            if (together) {
                finishRun();
                pen.beginActualText(galley.text(at, end));
            } else {
                end = at + 1;
            }
            for (; at < end; at++) {
                glyph(galley.glyph(at), galley.style(at), atPt, galley.style(at).type().sizePt() * factor);
                atPt += galley.advancePt(at) * factor;
            }
            if (together) {
                finishRun();
                pen.endActualText();
            }
        }
        finishRun();
    }

    /**
     * Where a stretch ends whose characters a reader of the PDF could not put together from their
     * places: a fraction, or tabular digits with their wide gaps; the same place when none begins here.
     */
    private static int togetherTo(Galley galley, int from, int most) {
        if (galley.glyph(from).isFraction()) {
            return from + 1;
        }
        int end = from;
        while (end < most && galley.glyph(end).tabularDigit()) {
            end++;
            if (end + 1 < most && isPoint(galley.glyph(end)) && galley.glyph(end + 1).tabularDigit()) {
                end++;
            }
        }
        return end;
    }

    private static boolean isPoint(Glyph glyph) {
        return glyph.text().equals(".") || glyph.text().equals(",");
    }

    private void glyph(Glyph glyph, Style style, double atPt, double sizePt) {
        for (Piece piece : glyph.pieces()) {
            piece(style, piece, atPt + piece.xEm() * sizePt, sizePt);
        }
    }

    private void piece(Style style, Piece piece, double atPt, double sizePt) {
        double size = sizePt * piece.scale();
        double rise = sizePt * piece.riseEm();
        if (run == null || run.face() != piece.face() || run.sizePt() != size || runRise != rise
                || runStyle != style) {
            finishRun();
            run = new Run(piece.face(), size, atPt);
            runRise = rise;
            runStyle = style;
        }
        run.add(piece, atPt);
    }

    private void finishRun() {
        if (run != null) {
            double x = lineX + run.startPt() / Plate.POINTS_PER_MM;
            double y = lineY - runRise / Plate.POINTS_PER_MM;
            pen.run(runStyle, transform, run,
                    pen.plate().plainXPt(transform.x(x, y) + shiftX),
                    pen.plate().plainYPt(transform.y(x, y) + shiftY));
            run = null;
        }
    }
}
