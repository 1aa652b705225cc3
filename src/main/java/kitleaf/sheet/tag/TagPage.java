package kitleaf.sheet.tag;

import java.util.List;
import java.util.Objects;
import kitleaf.sheet.page.PageFrame;

/**
 * One page of bag tags.
 *
 * @param frame what every page has
 * @param backs whether this page holds the backs of the page before it
 * @param footAbove whether the check bars and the signature stand at the top
 * @param sidesX where tags are cut from top to bottom, on this page
 * @param sidesY where they are cut from side to side, on this page
 * @param foldsY where they are folded, from side to side; empty for none
 * @param faces what is on the page
 * @param bookmarks titles of pieces that begin on this page
 * @param note how to print and cut
 */
public record TagPage(PageFrame frame, boolean backs, boolean footAbove, List<Double> sidesX, List<Double> sidesY, List<Double> foldsY,
                      List<TagFace> faces, List<String> bookmarks, String note) {

    /** Copies the lists. */
    public TagPage {
        Objects.requireNonNull(frame);
        sidesX = List.copyOf(sidesX);
        sidesY = List.copyOf(sidesY);
        foldsY = List.copyOf(foldsY);
        faces = List.copyOf(faces);
        bookmarks = List.copyOf(bookmarks);
    }
}
