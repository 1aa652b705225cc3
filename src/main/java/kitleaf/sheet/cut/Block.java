package kitleaf.sheet.cut;

/**
 * A place on a page for one kind of content; its template draws within it.
 *
 * @param kind which macro draws it, such as {@code steps}
 * @param xMm its left side
 * @param yMm its top
 * @param widthMm its width
 * @param heightMm its height
 */
public record Block(String kind, double xMm, double yMm, double widthMm, double heightMm) { }
