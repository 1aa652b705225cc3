/**
 * Draws what has its place on a page: shapes, text, codes. What finds its place by itself comes in as an
 * {@link kitleaf.press.drawing.Inset}. Knows {@code binding}, {@code type} and {@code markup}.
 */
package kitleaf.press.drawing;
