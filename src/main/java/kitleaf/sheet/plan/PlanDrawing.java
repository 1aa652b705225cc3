package kitleaf.sheet.plan;

import java.util.List;
import kitleaf.sheet.page.Box;

/**
 * The scaled drawing of a cloth with its pieces and cuts, from its own top left corner. Absent paths are empty.
 *
 * @param cloth the cloth, or as much of it as is drawn
 * @param widthMm how wide it is with all that stands around the cloth
 * @param heightMm how high
 * @param scale such as {@code 1 : 5}
 * @param outline its edges, as path data
 * @param bare sides without thread ends: a selvedge, or where the drawing breaks off
 * @param selvedge a second line along the selvedge, as path data
 * @param zigzag where the drawing breaks off, as path data
 * @param warpDown whether the warp runs down the page
 * @param pieces at their cut sizes
 * @param remnants what is left over
 * @param flaws strips no piece covers
 * @param hatch over the flaws, as path data
 * @param cuts the cut lines, in the order of cutting
 * @param numbersMissing whether some cuts have no room for their numbers
 * @param piecesMissing whether some pieces have none
 * @param leaders lines to figures beside the drawing
 * @param figures numbers of pieces and cuts, letters of what is left over
 * @param notes words beside them
 */
public record PlanDrawing(Box cloth, double widthMm, double heightMm, String scale, String outline, List<String> bare, String selvedge,
                          String zigzag, boolean warpDown, List<Box> pieces, List<Box> remnants, List<Box> flaws, String hatch,
                          List<PlanLine> cuts, boolean numbersMissing, boolean piecesMissing, List<PlanLine> leaders,
                          List<PlanFigure> figures, List<PlanNote> notes) {

    /** Copies the lists. */
    public PlanDrawing {
        pieces = List.copyOf(pieces);
        remnants = List.copyOf(remnants);
        flaws = List.copyOf(flaws);
        cuts = List.copyOf(cuts);
        leaders = List.copyOf(leaders);
        figures = List.copyOf(figures);
        notes = List.copyOf(notes);
    }
}
