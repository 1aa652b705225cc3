package kitleaf.sheet.plan;

import java.util.List;
import java.util.Objects;

/**
 * What flows down pages of its own: the first page's words, or a cloth's drawing with its words. Absent text is empty.
 *
 * @param title of its pages
 * @param below the title
 * @param drawings of the cloth in several sizes, the largest first; none where there is no cloth
 * @param steps how it is cut
 * @param pieces what comes off
 * @param left what is left over
 * @param rows the other words
 */
public record ClothPlanPage(String title, String below, List<PlanDrawing> drawings, List<PlanRow> steps, List<PlanRow> pieces,
                            List<PlanRow> left, List<PlanRow> rows) {

    /** Copies the lists. */
    public ClothPlanPage {
        Objects.requireNonNull(title);
        drawings = List.copyOf(drawings);
        steps = List.copyOf(steps);
        pieces = List.copyOf(pieces);
        left = List.copyOf(left);
        rows = List.copyOf(rows);
    }
}
