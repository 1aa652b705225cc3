package kitleaf.sheet.cut;

import java.util.Objects;
import kitleaf.sizing.cloth.PieceSize;

/**
 * What the scaled drawing of a piece's cut cloth shows. The template says how large it is.
 *
 * @param size the piece at true size, in millimetres
 * @param warpDown whether the warp runs down the page
 * @param width the cut's width, written
 * @param height its height, written
 * @param left from the left cut edge to the design, written
 * @param top from the top cut edge to the design, written
 * @param diagonal either diagonal, written
 */
public record ClothDrawing(PieceSize size, boolean warpDown, String width, String height, String left, String top, String diagonal) {

    /** Refuses a missing size. */
    public ClothDrawing {
        Objects.requireNonNull(size);
    }
}
