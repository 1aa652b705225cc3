package kitleaf.press;

import java.util.ArrayDeque;
import java.util.Deque;

/** Draws what stands in one page, element by element as they are read. */
final class PageArtist {

    private static final int MOST_LINES = 1000;

    /** The least module that prints well: 4 dots at 300 dpi (the QR code's originator's table). */
    private static final double LEAST_MODULE_MM = 0.33;

    /** Far below any printer's dot: what a module may lose in reckoning. */
    private static final double HAIR_MM = 1e-9;

    /** What a group hands down. */
    private record Scope(Style style, Transform transform) {
    }

    private final int page;
    private final Pen pen;
    private final Warnings warnings;
    private final Deque<Scope> scopes = new ArrayDeque<>();
    private SpanGatherer text;
    /** The text of the code that is open, or null. */
    private StringBuilder code;

    PageArtist(int page, Element element, Pen pen, Warnings warnings) throws MarkupException {
        this.page = page;
        this.pen = pen;
        this.warnings = warnings;
        scopes.push(new Scope(element.style(Style.DEFAULT), Transform.NONE));
    }

    /** Where the current group's origin lies, in points from the page's lower edge. */
    double topPt() {
        Transform transform = scopes.peek().transform();
        return pen.plate().yPt(transform.y(0, 0));
    }

    void start(Element element) throws MarkupException {
        Scope outer = scopes.peek();
        Scope scope = new Scope(element.style(outer.style()), outer.transform().with(element.transform()));
        scopes.push(scope);
        switch (element.name()) {
            case "rect" -> rectangle(element, scope);
            case "line" -> draw(element, scope.style().withFill(Paint.NONE), line(element));
            case "circle" -> circle(element, scope);
            case "path" -> path(element, scope);
            case "text" -> text = new SpanGatherer();
            case "code" -> code = new StringBuilder();
            default -> { }
        }
    }

    void text(String more) {
        if (code != null) {
            code.append(more);
        } else {
            text.add(more, scopes.peek().style());
        }
    }

    void end(Element element) throws MarkupException {
        Scope scope = scopes.pop();
        if (element.name().equals("text")) {
            text(element, scope);
        } else if (element.name().equals("code")) {
            code(element, scope);
        }
    }

    /** The page is complete. */
    void finish() {
        pen.flush();
    }

    private void rectangle(Element element, Scope scope) throws MarkupException {
        double x = element.number("x");
        double y = element.number("y");
        double width = element.neededLength("width");
        double height = element.neededLength("height");
        // SVG 1.1, 9.2: one radius stands for both, neither is more than half a side.
        double rx = radius(element, "rx", "ry", width / 2);
        double ry = radius(element, "ry", "rx", height / 2);
        if (width == 0 || height == 0) {
            return;
        }
        draw(element, scope.style(), rx == 0 || ry == 0
                ? track -> Shapes.rectangle(x, y, width, height, track)
                : track -> Shapes.rounded(x, y, width, height, rx, ry, track));
    }

    private static double radius(Element element, String own, String other, double most) throws MarkupException {
        String given = element.has(own) ? own : other;
        return element.has(given) ? Math.min(element.value(given, Presentation::notNegative), most) : 0;
    }

    private static Outline line(Element element) throws MarkupException {
        double x1 = element.number("x1");
        double y1 = element.number("y1");
        double x2 = element.number("x2");
        double y2 = element.number("y2");
        return track -> {
            track.move(x1, y1);
            track.line(x2, y2);
        };
    }

    private void circle(Element element, Scope scope) throws MarkupException {
        double cx = element.number("cx");
        double cy = element.number("cy");
        double r = element.neededLength("r");
        if (r > 0) {
            draw(element, scope.style(), track -> Shapes.circle(cx, cy, r, track));
        }
    }

    private void path(Element element, Scope scope) throws MarkupException {
        element.neededText("d");
        element.value("d", data -> {
            pen.draw(scope.style(), scope.transform(), track -> PathSyntax.trace(data, track));
            return data;
        });
    }

    private void draw(Element element, Style style, Outline outline) throws MarkupException {
        try {
            pen.draw(style, scopes.peek().transform(), outline);
        } catch (BadValue e) {
            throw new MarkupException(e.said(), element.place());
        }
    }

    private void text(Element element, Scope scope) throws MarkupException {
        double x = element.number("x");
        double y = element.number("y");
        int most = element.count("lines", 1, MOST_LINES, 1);
        double fitPt = element.has("fit") ? element.value("fit", Presentation::sizePt) : Double.MAX_VALUE;
        Galley galley = Galley.of(text.spans());
        text = null;
        if (galley.size() == 0) {
            return;
        }
        Fitting fitting = Fitting.free(galley);
        if (element.has("width")) {
            double widthPt = element.neededLength("width") * Plate.POINTS_PER_MM;
            double floor = Math.min(1, fitPt / leastSizePt(galley));
            fitting = Fitting.boxed(galley, widthPt, most, floor);
        }
        report(galley, fitting);
        new TextArtist(pen, scope.transform(), x, y).draw(fitting, scope.style());
    }

    private void code(Element element, Scope scope) throws MarkupException {
        String written = code.toString();
        code = null;
        double x = element.number("x");
        double y = element.number("y");
        double side = element.neededLength("size");
        QrLevel level = element.has("level") ? element.value("level", QrLevel::read) : QrLevel.M;
        if (side == 0) {
            throw element.fault("code.no-size");
        }
        if (scope.style().fill().isNone()) {
            throw element.fault("code.no-fill");
        }
        try {
            QrSymbol symbol = QrSymbol.of(written, level);
            double moduleMm = symbol.module(side) * scope.transform().leastGrowth();
            if (moduleMm < LEAST_MODULE_MM - HAIR_MM) {
                warnings.fine(page, QrText.of(written), moduleMm, LEAST_MODULE_MM);
            }
            // Never stroked: that would fatten the modules.
            pen.draw(scope.style().withStroke(Stroke.SVG_DEFAULT), scope.transform(),
                    track -> symbol.trace(x, y, side, track));
        } catch (BadValue e) {
            throw element.fault("code.wrong", e.said());
        }
    }

    private static double leastSizePt(Galley galley) {
        double least = Double.MAX_VALUE;
        for (int i = 0; i < galley.size(); i++) {
            least = Math.min(least, galley.style(i).type().sizePt());
        }
        return least;
    }

    private void report(Galley whole, Fitting fitting) {
        Galley drawn = fitting.galley();
        int end = fitting.lines().isEmpty() ? 0 : fitting.lines().get(fitting.lines().size() - 1).to();
        if (fitting.cut()) {
            warnings.cut(page, whole.text(0, whole.size()), drawn.text(0, end));
        }
        for (int i = 0; i < end; i++) {
            if (drawn.glyph(i).missing()) {
                warnings.missing(page, drawn.glyph(i));
            }
        }
    }
}
