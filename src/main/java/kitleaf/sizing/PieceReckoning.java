package kitleaf.sizing;

import java.util.Objects;
import kitleaf.basket.Piece;
import kitleaf.sizing.cloth.ClothReckoning;

/**
 * All that is reckoned of one piece.
 *
 * @param piece what she wrote
 * @param cloth its sizes and its cut
 * @param tally its stitches, all and left
 */
public record PieceReckoning(Piece piece, ClothReckoning cloth, StitchTally tally) {

    /** Refuses a missing part. */
    public PieceReckoning {
        Objects.requireNonNull(piece);
        Objects.requireNonNull(cloth);
        Objects.requireNonNull(tally);
    }
}
