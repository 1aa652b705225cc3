package kitleaf.sheet.plan;

import java.util.List;
import java.util.Objects;

/**
 * What flows down pages of its own: the first page's words, or a cloth's drawing with its words. Absent text is empty.
 *
 * @param title of its pages
 * @param below the title
 * @param drawings of the cloth in several sizes, the largest first; none where there is no cloth
 * @param before what is to be known before the steps
 * @param steps how it is cut
 * @param first words that may stand at the left of {@code second}: what comes off, or what is bought and cut
 * @param second what is left over, or not cut
 * @param rows words below them
 */
public record ClothPlanPage(String title, String below, List<PlanDrawing> drawings, List<String> before, List<PlanStep> steps,
                            List<PlanRow> first, List<PlanRow> second, List<PlanRow> rows) {

    /** Copies the lists. */
    public ClothPlanPage {
        Objects.requireNonNull(title);
        drawings = List.copyOf(drawings);
        before = List.copyOf(before);
        steps = List.copyOf(steps);
        first = List.copyOf(first);
        second = List.copyOf(second);
        rows = List.copyOf(rows);
    }
}
