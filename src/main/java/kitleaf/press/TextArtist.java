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
        for (int i = line.from(); i < line.to(); i++) {
            Style style = galley.style(i);
            double sizePt = style.type().sizePt() * factor;
            for (Piece piece : galley.glyph(i).pieces()) {
                piece(style, piece, atPt + piece.xEm() * sizePt, sizePt);
            }
            atPt += galley.advancePt(i) * factor;
        }
        finishRun();
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
        run.add(piece.text(), atPt);
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
