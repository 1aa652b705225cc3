package kitleaf.press;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.List;

/**
 * Writes one page's content: outlines and runs of glyphs. Only what changes is written, and every
 * point is reckoned from the origin in double; the page matrix is left alone.
 */
final class Pen {

    /** SVG's initial miter limit; PDF's is 10. */
    private static final int MITER_LIMIT = 4;

    private static final int FILL = 0;
    private static final int STROKE = 1;
    private static final int FILL_AND_STROKE = 2;
    private static final int NOTHING = 3;

    private final PdfContentByte canvas;
    private final Plate plate;
    private final StringBuilder out = new StringBuilder();

    // The page's graphics state as PDF starts it (ISO 32000-1, table 52).
    private int fill;
    private int stroke;
    private double widthPt = 1;
    private List<Double> dashMm = List.of();
    private double dashGrowth = 1;
    private int cap;
    private int join;
    private boolean miterSet;
    private int textMode = FILL;
    private Face face;

    Pen(PdfContentByte canvas, Plate plate) {
        this.canvas = canvas;
        this.plate = plate;
    }

    Plate plate() {
        return plate;
    }

    /** Fills and strokes an outline, as far as the style has fill and stroke. */
    void draw(Style style, Transform transform, Outline outline) throws BadValue {
        int mode = mode(style);
        if (mode != NOTHING) {
            set(style, transform, mode);
        }
        int before = out.length();
        outline.trace(new Ink(transform));
        if (mode == NOTHING) {
            // Traced all the same, so that a fault in path data is found whatever the colours are.
            out.setLength(before);
        } else if (out.length() > before) {
            out.append(mode == FILL ? "f\n" : mode == STROKE ? "S\n" : "B\n");
        }
    }

    /** Opens a text; runs follow. */
    void beginText() {
        out.append("BT\n");
    }

    /**
     * Writes one run of glyphs.
     *
     * @param transform the element's transform, which turns and scales the glyphs
     * @param xPt where the run starts on the page, in points, corrected
     * @param yPt its baseline there
     */
    void run(Style style, Transform transform, Run run, double xPt, double yPt) {
        int mode = mode(style);
        if (mode == NOTHING) {
            return;
        }
        set(style, transform, mode);
        if (mode != textMode) {
            textMode = mode;
            out.append(mode).append(" Tr\n");
        }
        if (face != run.face()) {
            face = run.face();
            flush();
            canvas.setFontAndSize(face.font(), 1);
        }
        double size = run.sizePt();
        number(size * transform.a());
        number(-size * transform.b());
        number(-size * transform.c());
        number(size * transform.d());
        number(xPt);
        number(yPt);
        out.append("Tm\n");
        flush();
        canvas.showText(run.array());
    }

    /** What follows stands for this text, for readers that put words together by their heights. */
    void beginActualText(String text) {
        out.append("/Span<</ActualText<FEFF");
        for (int i = 0; i < text.length(); i++) {
            for (int shift = 12; shift >= 0; shift -= 4) {
                out.append(Character.toUpperCase(Character.forDigit(text.charAt(i) >> shift & 15, 16)));
            }
        }
        out.append(">>>BDC\n");
    }

    void endActualText() {
        out.append("EMC\n");
    }

    /** Closes a text. */
    void endText() {
        out.append("ET\n");
    }

    /** All that has been written goes to the page. */
    void flush() {
        if (out.length() > 0) {
            canvas.setLiteral(out.toString());
            out.setLength(0);
        }
    }

    private static int mode(Style style) {
        boolean fills = !style.fill().isNone();
        boolean strokes = !style.stroke().isNone();
        return fills ? strokes ? FILL_AND_STROKE : FILL : strokes ? STROKE : NOTHING;
    }

    private void set(Style style, Transform transform, int mode) {
        if (mode != STROKE && fill != style.fill().rgb()) {
            fill = style.fill().rgb();
            colour(fill).append("rg\n");
        }
        if (mode != FILL) {
            setStroke(style.stroke(), transform.growth());
        }
    }

    private void setStroke(Stroke to, double growth) {
        if (!miterSet) {
            miterSet = true;
            out.append(MITER_LIMIT).append(" M\n");
        }
        if (stroke != to.paint().rgb()) {
            stroke = to.paint().rgb();
            colour(stroke).append("RG\n");
        }
        double width = to.widthMm() * growth * Plate.POINTS_PER_MM;
        if (width != widthPt) {
            widthPt = width;
            number(width).append("w\n");
        }
        if (!dashMm.equals(to.dashMm()) || !dashMm.isEmpty() && dashGrowth != growth) {
            dashMm = to.dashMm();
            dashGrowth = growth;
            out.append('[');
            for (double length : dashMm) {
                number(length * growth * Plate.POINTS_PER_MM);
            }
            out.append("] 0 d\n");
        }
        if (cap != to.cap()) {
            cap = to.cap();
            out.append(cap).append(" J\n");
        }
        if (join != to.join()) {
            join = to.join();
            out.append(join).append(" j\n");
        }
    }

    private StringBuilder colour(int rgb) {
        number((rgb >> 16 & 255) / 255.0);
        number((rgb >> 8 & 255) / 255.0);
        return number((rgb & 255) / 255.0);
    }

    private StringBuilder number(double number) {
        return PdfNumbers.append(out, number);
    }

    /** Takes an outline's points through the element's transform and the plate. */
    private final class Ink implements Track {

        private final Transform transform;

        Ink(Transform transform) {
            this.transform = transform;
        }

        @Override
        public void move(double x, double y) {
            point(x, y).append("m\n");
        }

        @Override
        public void line(double x, double y) {
            point(x, y).append("l\n");
        }

        @Override
        public void curve(double x1, double y1, double x2, double y2, double x, double y) {
            point(x1, y1);
            point(x2, y2);
            point(x, y).append("c\n");
        }

        @Override
        public void close() {
            out.append("h\n");
        }

        private StringBuilder point(double x, double y) {
            number(plate.xPt(transform.x(x, y)));
            return number(plate.yPt(transform.y(x, y)));
        }
    }
}
