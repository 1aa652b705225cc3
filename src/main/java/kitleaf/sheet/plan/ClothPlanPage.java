package kitleaf.sheet.plan;

import java.util.List;
import java.util.Objects;

/**
 * What flows down pages of its own: the first page's words, or a cloth's drawing with its words. Absent text is empty.
 *
 * @param title of its pages
 * @param below the title
 * @param drawing of the cloth; null where there is none
 * @param keys of the signs in it, where it has no words
 * @param caption the cloth's size and the drawing's scale, where it has no words
 * @param rows the words
 */
public record ClothPlanPage(String title, String below, PlanDrawing drawing, List<PlanKey> keys, String caption, List<PlanRow> rows) {

    /** Copies the lists. */
    public ClothPlanPage {
        Objects.requireNonNull(title);
        keys = List.copyOf(keys);
        rows = List.copyOf(rows);
    }
}
