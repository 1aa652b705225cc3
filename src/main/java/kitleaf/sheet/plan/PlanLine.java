package kitleaf.sheet.plan;

/**
 * A line in the drawing of a cloth plan, in millimetres on the page.
 *
 * @param x1Mm its beginning
 * @param y1Mm its beginning
 * @param x2Mm its end
 * @param y2Mm its end
 */
public record PlanLine(double x1Mm, double y1Mm, double x2Mm, double y2Mm) { }
