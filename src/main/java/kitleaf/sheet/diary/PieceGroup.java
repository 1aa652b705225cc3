package kitleaf.sheet.diary;

import java.util.List;

/**
 * Pieces that stand alike.
 *
 * @param name how they stand, and how many they are
 * @param pieces by title
 */
public record PieceGroup(String name, List<PieceLine> pieces) {

    /** Copies the list. */
    public PieceGroup {
        pieces = List.copyOf(pieces);
    }
}
