package kitleaf.sheet.plan;

import java.util.List;
import java.util.Objects;
import kitleaf.sheet.page.Box;

/**
 * The scaled drawing of a cloth with its pieces and cuts, from its own top left corner. Absent paths are empty.
 *
 * @param cloth the cloth, or as much of it as is drawn
 * @param scale such as {@code 1 : 5}
 * @param outline its edges, as path data
 * @param bare sides without thread ends: a selvedge, or where the drawing breaks off
 * @param selvedge a second line along the selvedge, as path data
 * @param zigzag where the drawing breaks off, as path data
 * @param warpDown whether the warp runs down the page
 * @param width the cloth's width, written
 * @param height its height, written
 * @param heightMm how high it is with all that stands around the cloth
 * @param pieces at their cut sizes
 * @param remnants what is left over
 * @param flaws strips no piece covers
 * @param hatch over the flaws, as path data
 * @param cuts the cut lines, in the order of cutting
 * @param words whether names, sizes and the warp are told in it; else it has numbers and letters alone
 * @param numbersMissing whether some cuts have no room for their numbers
 * @param piecesMissing whether some pieces have none
 * @param flawsMissing whether some flaws have none for their word
 * @param leaders lines to words beside the drawing
 * @param blanks what is left white below words, or dark below cut numbers where there are no words
 * @param texts all words in it
 */
public record PlanDrawing(Box cloth, String scale, String outline, List<String> bare, String selvedge, String zigzag, boolean warpDown,
                          String width, String height, double heightMm, List<Box> pieces, List<Box> remnants, List<Box> flaws, String hatch,
                          List<PlanLine> cuts, boolean words, boolean numbersMissing, boolean piecesMissing, boolean flawsMissing,
                          List<PlanLine> leaders, List<Box> blanks, List<PlanText> texts) {

    /** Copies the lists. */
    public PlanDrawing {
        Objects.requireNonNull(cloth);
        pieces = List.copyOf(pieces);
        remnants = List.copyOf(remnants);
        flaws = List.copyOf(flaws);
        cuts = List.copyOf(cuts);
        leaders = List.copyOf(leaders);
        blanks = List.copyOf(blanks);
        texts = List.copyOf(texts);
    }
}
