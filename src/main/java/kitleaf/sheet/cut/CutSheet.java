package kitleaf.sheet.cut;

import java.util.List;
import java.util.Objects;
import kitleaf.sheet.page.Join;
import kitleaf.sizing.cloth.CornerGuide;

/**
 * What is to be known of cutting one piece: its cut sheet, then its corner guide.
 *
 * @param piece in words and figures
 * @param drawing of the cut cloth
 * @param words what is said of its corner guide
 * @param room where a window of the guide may lie on its page
 * @param guide what each page of the guide shows
 * @param joins of each of these pages, the lines where it meets its neighbours
 */
public record CutSheet(CutSheetPiece piece, ClothDrawing drawing, GuideWords words, GuideRoom room, CornerGuide guide,
                       List<List<Join>> joins) {

    /** Copies the list. */
    public CutSheet {
        Objects.requireNonNull(piece);
        Objects.requireNonNull(drawing);
        Objects.requireNonNull(words);
        joins = List.copyOf(joins);
    }
}
