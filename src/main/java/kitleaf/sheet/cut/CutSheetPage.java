package kitleaf.sheet.cut;

import java.util.List;
import java.util.Objects;
import kitleaf.sheet.page.LargePage;
import kitleaf.sheet.page.PageFrame;

/**
 * One page of the cut sheets. Absent text is empty; {@code drawing} and {@code guide} are null on pages without them.
 *
 * @param frame what every page has
 * @param piece the piece it belongs to, in words and figures
 * @param first whether it is the piece's first page, the one to bookmark
 * @param blocks what stands where
 * @param drawing the scaled drawing of the cloth, on the piece's first page
 * @param large the page in large print, or null
 * @param guide the part of the corner guide this page shows
 */
public record CutSheetPage(PageFrame frame, CutSheetPiece piece, boolean first, List<Block> blocks,
                           ClothDrawing drawing, LargePage large, GuidePage guide) {

    /** The same page with its number. */
    CutSheetPage in(PageFrame numbered) {
        return new CutSheetPage(numbered, piece, first, blocks, drawing, large == null ? null : large.in(numbered), guide);
    }

    /** Copies the list. */
    public CutSheetPage {
        Objects.requireNonNull(frame);
        Objects.requireNonNull(piece);
        blocks = List.copyOf(blocks);
    }
}
