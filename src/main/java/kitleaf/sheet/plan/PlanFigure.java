package kitleaf.sheet.plan;

import kitleaf.sheet.page.Box;

/**
 * A number or a letter in the drawing of a cloth plan.
 *
 * @param box what it takes up; what is drawn below it does not show there
 * @param words what it says
 * @param sizePt in points
 * @param ground what lies below it: {@code cloth}, {@code piece} or, of a cut's number, {@code disc}
 * @param upright whether it is turned by a quarter, to be read from the right
 */
public record PlanFigure(Box box, String words, double sizePt, String ground, boolean upright) { }
