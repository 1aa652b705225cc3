package kitleaf.sheet.cut;

import java.util.List;
import java.util.Objects;

/**
 * What is to be known of cutting one piece: its cut sheet, then its corner guide.
 *
 * @param piece in words and figures
 * @param drawings the cut cloth drawn to scale in several sizes, largest first
 * @param words what is said of its corner guide
 * @param guides the pages of the corner guide
 */
public record CutSheet(CutSheetPiece piece, List<ClothDrawing> drawings, GuideWords words, List<GuidePage> guides) {

    /** Copies the lists. */
    public CutSheet {
        Objects.requireNonNull(piece);
        Objects.requireNonNull(words);
        drawings = List.copyOf(drawings);
        guides = List.copyOf(guides);
    }
}
