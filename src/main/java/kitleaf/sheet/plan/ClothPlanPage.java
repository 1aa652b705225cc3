package kitleaf.sheet.plan;

import java.util.List;
import java.util.Objects;
import kitleaf.sheet.page.LargePage;
import kitleaf.sheet.page.PageFrame;

/**
 * One page of the cloth plan. Absent text is empty.
 *
 * @param frame what every page has
 * @param bookmark the outline entry that starts here; empty for none
 * @param title of the page
 * @param subtitle below it
 * @param drawing of the cloth, on its first page; null on others
 * @param rows in their places
 * @param large the page in large print, or null
 * @param keys of its drawing in large print
 */
public record ClothPlanPage(PageFrame frame, String bookmark, String title, String subtitle, PlanDrawing drawing, List<PlanRow> rows,
                            LargePage large, List<PlanKey> keys) {

    /** Copies the lists. */
    public ClothPlanPage {
        Objects.requireNonNull(frame);
        rows = List.copyOf(rows);
        keys = List.copyOf(keys);
    }
}
