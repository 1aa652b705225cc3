package kitleaf.press.markup;

import java.util.List;

/**
 * How outlines are drawn.
 *
 * @param widthMm the line's width, 0 for no line
 * @param dashMm dash and gap lengths, empty for solid
 * @param cap as PDF numbers them: 0 butt, 1 round, 2 square
 * @param join as PDF numbers them: 0 miter, 1 round, 2 bevel
 */
public record Stroke(Paint paint, double widthMm, List<Double> dashMm, int cap, int join) {

    static final Stroke SVG_DEFAULT = new Stroke(Paint.NONE, 1, List.of(), 0, 0);

    public Stroke {
        dashMm = List.copyOf(dashMm);
    }

    public boolean isNone() {
        return paint.isNone() || widthMm == 0;
    }

    public Stroke withPaint(Paint to) {
        return new Stroke(to, widthMm, dashMm, cap, join);
    }

    Stroke withWidth(double to) {
        return new Stroke(paint, to, dashMm, cap, join);
    }

    Stroke withDash(List<Double> to) {
        return new Stroke(paint, widthMm, to, cap, join);
    }

    Stroke withCap(int to) {
        return new Stroke(paint, widthMm, dashMm, to, join);
    }

    Stroke withJoin(int to) {
        return new Stroke(paint, widthMm, dashMm, cap, to);
    }
}
