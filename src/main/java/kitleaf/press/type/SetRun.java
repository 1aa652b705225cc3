package kitleaf.press.type;

import kitleaf.press.markup.Style;

/**
 * A run of glyphs ready for any page.
 *
 * @param style whose colours it has
 * @param rightMm how far it starts from its text's x
 * @param downMm how far its baseline is from its text's y
 * @param before what is written before it, mostly nothing
 * @param shown the operator that shows it
 * @param after what is written after it, mostly nothing
 */
public record SetRun(Style style, Face face, double sizePt, double rightMm, double downMm, byte[] before, byte[] shown, byte[] after) {
}
