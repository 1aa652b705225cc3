package kitleaf.sheet.plan;

/**
 * A sign of a cloth plan's drawing and what it means.
 *
 * @param kind {@code warp-down}, {@code warp-across}, {@code selvedge}, {@code flaw} or {@code cut}
 * @param words what it says
 */
public record PlanKey(String kind, String words) { }
