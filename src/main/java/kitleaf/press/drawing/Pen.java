package kitleaf.press.drawing;

import java.util.List;
import kitleaf.press.binding.Forme;
import kitleaf.press.markup.Plate;
import kitleaf.press.markup.Stroke;
import kitleaf.press.markup.Style;
import kitleaf.press.markup.Transform;
import kitleaf.press.type.ContentBytes;
import kitleaf.press.type.Face;
import kitleaf.press.type.SetRun;
import kitleaf.press.type.SetText;

/**
 * Writes one page's content: outlines and runs of glyphs. Only what changes is written, and every
 * point is reckoned from the origin in double; the page matrix is left alone.
 */
public final class Pen {

    /** SVG's initial miter limit; PDF's is 10. */
    private static final int MITER_LIMIT = 4;

    private static final int FILL = 0;
    private static final int STROKE = 1;
    private static final int FILL_AND_STROKE = 2;
    private static final int NOTHING = 3;

    private final Forme forme;
    private final Plate plate;
    private final ContentBytes out;
    private final Ink ink = new Ink();

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

    // The outline that is open.
    private int mode;
    private int begun;

    public Pen(Forme forme) {
        this.forme = forme;
        this.plate = forme.plate();
        this.out = forme.content();
    }

    Plate plate() {
        return plate;
    }

    Forme forme() {
        return forme;
    }

    /** Begins an outline that is filled and stroked, as far as the style has fill and stroke; it is traced on what is given back. */
    Track open(Style style, Transform transform) {
        return open(style, transform, mode(!style.fill().isNone(), !style.stroke().isNone()));
    }

    /** Begins an outline that is stroked only. */
    Track openUnfilled(Style style, Transform transform) {
        return open(style, transform, mode(false, !style.stroke().isNone()));
    }

    /** Begins an outline that is filled only. */
    Track openUnstroked(Style style, Transform transform) {
        return open(style, transform, mode(!style.fill().isNone(), false));
    }

    private Track open(Style style, Transform transform, int how) {
        mode = how;
        if (mode != NOTHING) {
            set(style, transform, mode);
        }
        begun = out.length();
        ink.transform = transform;
        return ink;
    }

    /** Ends the outline. One that is not seen is traced all the same, so that a fault in path data is found whatever the colours are. */
    void close() {
        if (mode == NOTHING) {
            out.cutTo(begun);
        } else if (out.length() > begun) {
            out.add(mode == FILL ? "f\n" : mode == STROKE ? "S\n" : "B\n");
        }
    }

    /**
     * Draws a text. Printer correction moves it as a whole and does not stretch it.
     *
     * @param transform the element's transform, which turns and scales the glyphs
     * @param x where it stands, in the element's millimetres
     * @param y its first baseline there
     */
    void text(SetText text, Transform transform, double x, double y) {
        List<SetRun> runs = text.runs();
        if (runs.isEmpty()) {
            return;
        }
        double shiftX = plate.shiftX(transform.x(x, y));
        double shiftY = plate.shiftY(transform.y(x, y));
        out.add("BT\n");
        for (int i = 0; i < runs.size(); i++) {
            SetRun run = runs.get(i);
            double runX = x + run.rightMm();
            double runY = y + run.downMm();
            out.add(run.before());
            run(run, transform, plate.plainXPt(transform.x(runX, runY) + shiftX), plate.plainYPt(transform.y(runX, runY) + shiftY));
            out.add(run.after());
        }
        out.add("ET\n");
    }

    private void run(SetRun run, Transform transform, double xPt, double yPt) {
        Style style = run.style();
        int how = mode(!style.fill().isNone(), !style.stroke().isNone());
        if (how == NOTHING) {
            return;
        }
        set(style, transform, how);
        if (how != textMode) {
            textMode = how;
            out.add((char) ('0' + how)).add(" Tr\n");
        }
        if (face != run.face()) {
            face = run.face();
            forme.turnTo(face);
        }
        double size = run.sizePt();
        number(size * transform.a());
        number(-size * transform.b());
        number(-size * transform.c());
        number(size * transform.d());
        out.place(xPt).place(yPt).add("Tm\n").add(run.shown());
    }

    private static int mode(boolean fills, boolean strokes) {
        return fills ? strokes ? FILL_AND_STROKE : FILL : strokes ? STROKE : NOTHING;
    }

    private void set(Style style, Transform transform, int how) {
        if (how != STROKE && fill != style.fill().rgb()) {
            fill = style.fill().rgb();
            colour(fill).add("rg\n");
        }
        if (how != FILL) {
            setStroke(style.stroke(), transform.growth());
        }
    }

    private void setStroke(Stroke to, double growth) {
        if (!miterSet) {
            miterSet = true;
            out.number(MITER_LIMIT).add("M\n");
        }
        if (stroke != to.paint().rgb()) {
            stroke = to.paint().rgb();
            colour(stroke).add("RG\n");
        }
        double width = to.widthMm() * growth * Plate.POINTS_PER_MM;
        if (width != widthPt) {
            widthPt = width;
            number(width).add("w\n");
        }
        if (dashMm != to.dashMm() && !dashMm.equals(to.dashMm()) || !dashMm.isEmpty() && dashGrowth != growth) {
            dashMm = to.dashMm();
            dashGrowth = growth;
            out.add('[');
            for (double length : dashMm) {
                number(length * growth * Plate.POINTS_PER_MM);
            }
            out.add("] 0 d\n");
        }
        if (cap != to.cap()) {
            cap = to.cap();
            out.number(cap).add("J\n");
        }
        if (join != to.join()) {
            join = to.join();
            out.number(join).add("j\n");
        }
    }

    private ContentBytes colour(int rgb) {
        return out.place((rgb >> 16 & 255) / 255.0).place((rgb >> 8 & 255) / 255.0).place((rgb & 255) / 255.0);
    }

    private ContentBytes number(double number) {
        return out.number(number);
    }

    /** Takes an outline's points through the element's transform and the plate. */
    private final class Ink implements Track {

        private Transform transform;

        @Override
        public void move(double x, double y) {
            point(x, y).add("m\n");
        }

        @Override
        public void line(double x, double y) {
            point(x, y).add("l\n");
        }

        @Override
        public void curve(double x1, double y1, double x2, double y2, double x, double y) {
            point(x1, y1);
            point(x2, y2);
            point(x, y).add("c\n");
        }

        @Override
        public void close() {
            out.add("h\n");
        }

        private ContentBytes point(double x, double y) {
            return out.place(plate.xPt(transform.x(x, y))).place(plate.yPt(transform.y(x, y)));
        }
    }
}
