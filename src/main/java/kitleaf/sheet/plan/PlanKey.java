package kitleaf.sheet.plan;

/**
 * A sign of the drawing and what it means, below a cloth plan's drawing in large print.
 *
 * @param kind {@code warp-down}, {@code warp-across}, {@code selvedge}, {@code flaw} or {@code cut}
 * @param xMm the sign's left side
 * @param wordsXMm where the words begin
 * @param yMm their baseline
 * @param words what they say
 */
public record PlanKey(String kind, double xMm, double wordsXMm, double yMm, String words) { }
