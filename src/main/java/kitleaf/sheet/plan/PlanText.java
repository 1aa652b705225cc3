package kitleaf.sheet.plan;

/**
 * Words in the drawing of a cloth plan.
 *
 * @param xMm where they begin
 * @param yMm their baseline
 * @param words what they say
 * @param family {@code text} or {@code symbol}
 * @param sizePt in points
 * @param weight 400 or 600
 * @param fill {@code ink}, {@code quiet}, {@code accent} or {@code paper}
 * @param widthMm what they are wrapped to
 * @param lines how many lines that takes
 * @param upright whether they are turned by a quarter, to be read from the right; then they begin below and run up
 */
public record PlanText(double xMm, double yMm, String words, String family, double sizePt, int weight, String fill, double widthMm,
                       int lines, boolean upright) { }
