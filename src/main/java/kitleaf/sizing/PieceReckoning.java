package kitleaf.sizing;

import java.util.Objects;
import kitleaf.basket.Piece;
import kitleaf.basket.PieceState;
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

    /** Whether somebody has put a needle in it: a day, a sitting or a stitch that is written down tells. */
    public boolean begun() {
        return tally.done() > 0 || piece.progress().begun();
    }

    /** How the piece stands, by all its facts. */
    public PieceState state() {
        return Standing.of(piece.progress(), tally);
    }

    /** Whether its cloth is cut: because she says so, or because nobody stitches on cloth that is not. */
    public boolean cutAlready() {
        return piece.cloth().cut() || begun();
    }

    /** Whether its cut sheet is still of use: not once its cloth is cut or it is made up. */
    public boolean wantsCutSheet() {
        return !cutAlready() && state() != PieceState.MADE_UP;
    }

    /** Whether cloth is still to be cut for it: not for what is cut already, nor for what is laid aside. */
    public boolean wantsCloth() {
        return !cutAlready() && !state().laidAside();
    }
}
