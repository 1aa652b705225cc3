package kitleaf.sizing.plan;

import java.util.Objects;
import kitleaf.basket.cloth.Cloth;
import kitleaf.sizing.PieceReckoning;
import kitleaf.sizing.cloth.PieceSize;

/**
 * One piece on a planned cloth, in millimetres from the cloth's top left corner, at its cut size: what a cut loses is
 * not part of it.
 *
 * @param number its place in the order in which pieces come off this cloth, from 1
 * @param piece the piece
 * @param size its sizes as it lies here, reckoned anew where warp and weft changed places
 * @param xMm from the cloth's left edge, 0 or more
 * @param yMm from the cloth's top edge, 0 or more
 * @param widthMm along the cloth's width
 * @param heightMm along the cloth's height
 * @param turned whether the design lies on its side here, its width along the cloth's height
 * @param warp which way the cloth's warp runs under the design as it lies here
 * @param asAsked whether that is the way the piece asks for
 */
public record PlannedCut(int number, PieceReckoning piece, PieceSize size, double xMm, double yMm, double widthMm,
                         double heightMm, boolean turned, Cloth.WarpRun warp, boolean asAsked) {

    /** Refuses a missing part. */
    public PlannedCut {
        Objects.requireNonNull(piece);
        Objects.requireNonNull(size);
        Objects.requireNonNull(warp);
    }
}
