/**
 * Page markup in, PDF out: markup is read as a stream and each page drawn as it is read, so memory
 * does not grow with the number of pages. Knows nothing of baskets, sizing or templates.
 *
 * <p>Its rooms, each of which knows only those before it: {@code markup}, {@code type}, {@code binding},
 * {@code drawing}, {@code flow}. Here is only what others ask: a document, and pictures of its pages.
 *
 * <p>Millimetres become points once, in {@link kitleaf.press.markup.Plate}; everything before it is
 * in millimetres (type sizes in points), origin top left, y down.
 */
package kitleaf.press;
