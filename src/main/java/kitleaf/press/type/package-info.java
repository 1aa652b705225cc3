/**
 * The bundled typefaces, and words set in them: characters become glyphs, glyphs lines that fit a width (a galley, as printers call set
 * type before it has its place), lines the bytes of a page. Knows {@code markup}.
 */
package kitleaf.press.type;
