package kitleaf.press.drawing;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import kitleaf.press.binding.Forme;
import kitleaf.press.markup.BadValue;
import kitleaf.press.markup.Element;
import kitleaf.press.markup.MarkupException;
import kitleaf.press.markup.Plate;
import kitleaf.press.markup.Style;
import kitleaf.press.markup.Styles;
import kitleaf.press.markup.Transform;
import kitleaf.press.type.Compositor;
import kitleaf.press.type.Copy;
import kitleaf.press.type.Counters;
import kitleaf.press.type.SetText;
import kitleaf.press.type.Span;
import kitleaf.press.type.SpanGatherer;
import kitleaf.press.type.Warnings;

/** Draws what stands in one page, element by element as they are read. */
public final class PageArtist {

    private static final int MOST_LINES = 1000;
    private static final int MOST_LEVELS = 3;

    /** The most codes on one page; the fullest sheet of the smallest labels has some four hundred. */
    private static final int MOST_CODES = 1000;

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
    private final Styles styles;
    private final Compositor compositor;
    private final Deque<Scope> scopes = new ArrayDeque<>();
    private final LateWords late;
    private Counters counters;
    private SpanGatherer text;
    private final Inset.Opener insets;
    /** The box that is open, or null. */
    private Inset inset;
    /** The text of the code that is open, or null. */
    private StringBuilder code;
    private int codes;

    public PageArtist(int page, Element element, Pen pen, Styles styles, Compositor compositor, Warnings warnings,
            Inset.Opener insets) throws MarkupException {
        this.page = page;
        this.pen = pen;
        this.styles = styles;
        this.compositor = compositor;
        this.warnings = warnings;
        this.insets = insets;
        this.counters = new Counters(page, 0, 1, 1);
        this.late = new LateWords(page, pen.plate());
        scopes.push(new Scope(element.style(Style.DEFAULT, styles), Transform.NONE));
    }

    /** What stands in its own place, in a style of its own. */
    public void enter(Style style, Transform inner) {
        scopes.push(new Scope(style, scopes.peek().transform().with(inner)));
    }

    public void leave() {
        scopes.pop();
    }

    public void card(int number, int cards) {
        counters = counters.card(number, cards);
    }

    /** Text that was laid before. */
    public void set(SetText set, double x, double y) {
        set.warn(page, warnings);
        pen.text(set, scopes.peek().transform(), x, y);
    }

    /** Text in which numbers are to be filled in; as soon as they are known. */
    public void counted(Copy copy, double x, double y) {
        if (Counters.countsPages(copy.spans())) {
            pen.forme().callLate();
            late.add(copy, scopes.peek().transform(), x, y, counters);
        } else {
            set(compositor.set(counters.fill(copy)), x, y);
        }
    }

    public LateWords late() {
        return late;
    }

    public void rule(Style style, double x, double y, double widthMm) {
        Track track = pen.openUnfilled(style, scopes.peek().transform());
        track.move(x, y);
        track.line(x + widthMm, y);
        pen.close();
    }

    /** The rule of a box. */
    public void outline(Style style, double radiusMm, double x, double y, double widthMm, double heightMm) {
        rounded(x, y, widthMm, heightMm, radiusMm, radiusMm, style);
    }

    private void rounded(double x, double y, double width, double height, double rx, double ry, Style style) {
        Track track = pen.open(style, scopes.peek().transform());
        if (rx == 0 || ry == 0) {
            Shapes.rectangle(x, y, width, height, track);
        } else {
            Shapes.rounded(x, y, width, height, rx, ry, track);
        }
        pen.close();
    }

    /** Begins an entry of the outline where the element names one. */
    public void bookmark(Element element) {
        element.text("bookmark").filter(title -> !title.isEmpty()).ifPresent(title -> pen.forme()
                .add(new Forme.Bookmark(title, 1, topPt())));
    }

    /** What has no room in its box, whether it is drawn or not. */
    public void overfull(String words) {
        warnings.cut(page, words, "");
    }

    /** Where the current group's origin lies, in points from the page's lower edge. */
    double topPt() {
        Transform transform = scopes.peek().transform();
        return pen.plate().yPt(transform.y(0, 0));
    }

    public void start(Element element) throws MarkupException {
        if (inset != null) {
            inset.start(element);
            return;
        }
        Scope outer = scopes.peek();
        Scope scope = new Scope(element.style(outer.style(), styles), element.transform(outer.transform()));
        scopes.push(scope);
        switch (element.name()) {
            case "rect" -> rectangle(element, scope);
            case "line" -> line(element, scope);
            case "circle" -> circle(element, scope);
            case "path" -> path(element, scope);
            case "text" -> text = new SpanGatherer(styles.quotes());
            case "code" -> code = new StringBuilder();
            case "box" -> inset = insets.open(element, scope.style());
            case "bookmark" -> pen.forme().add(new Forme.Bookmark(element.neededText("title"), element.count("level", 1, MOST_LEVELS, 1),
                    topPt()));
            default -> { }
        }
    }

    public void text(String more) {
        if (inset != null) {
            inset.text(more);
        } else if (code != null) {
            code.append(more);
        } else {
            text.add(more, scopes.peek().style());
        }
    }

    public void end(Element element) throws MarkupException {
        if (inset != null) {
            if (inset.end(element)) {
                Inset whole = inset;
                inset = null;
                whole.draw(this);
                scopes.pop();
            }
            return;
        }
        Scope scope = scopes.pop();
        if (element.name().equals("text")) {
            text(element, scope);
        } else if (element.name().equals("code")) {
            code(element, scope);
        }
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
        rounded(x, y, width, height, rx, ry, scope.style());
    }

    private static double radius(Element element, String own, String other, double most) throws MarkupException {
        String given = element.has(own) ? own : other;
        return element.has(given) ? Math.min(element.neededLength(given), most) : 0;
    }

    private void line(Element element, Scope scope) throws MarkupException {
        double x1 = element.number("x1");
        double y1 = element.number("y1");
        double x2 = element.number("x2");
        double y2 = element.number("y2");
        Track track = pen.openUnfilled(scope.style(), scope.transform());
        track.move(x1, y1);
        track.line(x2, y2);
        pen.close();
    }

    private void circle(Element element, Scope scope) throws MarkupException {
        double cx = element.number("cx");
        double cy = element.number("cy");
        double r = element.neededLength("r");
        if (r > 0) {
            Shapes.circle(cx, cy, r, pen.open(scope.style(), scope.transform()));
            pen.close();
        }
    }

    private void path(Element element, Scope scope) throws MarkupException {
        String data = element.neededText("d");
        try {
            PathSyntax.trace(data, pen.open(scope.style(), scope.transform()));
        } catch (BadValue e) {
            throw element.fault("markup.value", "d", element.name(), e.said());
        }
        pen.close();
    }

    private void text(Element element, Scope scope) throws MarkupException {
        double x = element.number("x");
        double y = element.number("y");
        int most = element.count("lines", 1, MOST_LINES, 1);
        List<Span> spans = text.spans();
        text = null;
        double widthPt = element.has("width") && !spans.isEmpty() ? element.neededLength("width") * Plate.POINTS_PER_MM
                : Double.POSITIVE_INFINITY;
        scopes.push(scope);
        Copy copy = new Copy(spans, scope.style(), widthPt, most);
        if (Counters.in(spans)) {
            counted(copy, x, y);
        } else {
            set(compositor.set(copy), x, y);
        }
        scopes.pop();
    }

    private void code(Element element, Scope scope) throws MarkupException {
        String written = code.toString();
        code = null;
        codes++;
        if (codes > MOST_CODES) {
            throw element.fault("code.many", MOST_CODES);
        }
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
            symbol.trace(x, y, side, pen.openUnstroked(scope.style(), scope.transform()));
            pen.close();
        } catch (BadValue e) {
            throw element.fault("code.wrong", e.said());
        }
    }
}
