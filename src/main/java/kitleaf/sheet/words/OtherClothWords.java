package kitleaf.sheet.words;

/**
 * A row of the what-if table: a piece on another cloth, in words and figures.
 *
 * @param cloth the cloth and how it is worked
 * @param perInch stitches to the inch
 * @param finishedIn design in inches
 * @param cutIn cut in inches
 * @param finishedCm design in centimetres
 * @param cutCm cut in centimetres
 * @param own whether it is this piece's cloth
 */
public record OtherClothWords(String cloth, String perInch, String finishedIn, String cutIn, String finishedCm,
                              String cutCm, boolean own) { }
