/**
 * Page markup in, PDF out: markup is read as a stream and each page drawn as it is read, so memory
 * does not grow with the number of pages. Holds the bundled typefaces, the fitting of text and the
 * printer's correction. Knows nothing of baskets, sizing or templates.
 *
 * <p>Millimetres become points here, once, in {@link kitleaf.press.Plate}; everything before it is
 * in millimetres (type sizes in points), origin top left, y down.
 */
package kitleaf.press;
