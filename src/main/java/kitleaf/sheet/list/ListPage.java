package kitleaf.sheet.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.PageFlow;
import kitleaf.sheet.page.PageFrame;

/**
 * One page of a list. Absent text is empty.
 *
 * @param frame what every page has
 * @param bookmark the outline entry that starts here; empty for none
 * @param eyebrow which list
 * @param title of the page
 * @param subtitle below it
 * @param headings of the columns, left to right: thread, need, stash, buy and, where prices are known, each and cost
 * @param rows in their places
 */
public record ListPage(PageFrame frame, String bookmark, String eyebrow, String title, String subtitle, List<String> headings,
                       List<ListRow> rows) {

    /** Where rows start, below the column headings. */
    static final double TOP_MM = 50;
    /** Paper less wide than this has narrow columns. */
    private static final double NARROW_MM = 180;

    /** What the template keeps free before a figure. */
    private static final double CELL_GAP_MM = 1.5;

    /** Copies the lists. */
    public ListPage {
        Objects.requireNonNull(frame);
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /** How wide the columns after the first are, left to right; on narrow paper narrower. */
    public List<Double> widths() {
        return widths(headings.size() == 6, frame.widthMm());
    }

    /** Whether a row on this page has figures in its columns; a page of sentences alone needs no headings. */
    public boolean columned() {
        return rows.stream().anyMatch(row -> List.of("thread", "item", "sum").contains(row.kind()));
    }

    private static List<Double> widths(boolean costs, double paperWidthMm) {
        boolean narrow = paperWidthMm < NARROW_MM;
        return costs ? narrow ? List.of(19.0, 12.0, 9.0, 17.0, 18.0) : List.of(27.0, 20.0, 13.0, 22.0, 24.0)
                : narrow ? List.of(22.0, 22.0, 14.0) : List.of(34.0, 36.0, 18.0);
    }

    /** What they leave to a thread's code and name, its box and swatch taken off. */
    static double nameMm(boolean costs, double paperWidthMm) {
        return paperWidthMm - 2 * Frames.MARGIN_MM - widths(costs, paperWidthMm).stream().mapToDouble(Double::doubleValue).sum() - 16;
    }

    /** What a kit list has for the words of what comes from the stash. */
    static double stashMm(double paperWidthMm) {
        return widths(false, paperWidthMm).get(1) - CELL_GAP_MM;
    }

    /** The rows of each page of a list on paper so high. */
    static List<List<ListRow>> flow(List<ListRow> rows, double paperHeightMm) {
        List<PageFlow.Row<ListRow>> flowing = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            // A heading stays with what it heads, a sum with the last of what it sums up.
            boolean heads = rows.get(i).kind().equals("group") || rows.get(i).kind().equals("heading");
            boolean summed = i + 1 < rows.size() && rows.get(i + 1).kind().equals("sum");
            flowing.add(new PageFlow.Row<>(rows.get(i), rows.get(i).heightMm(), heads || summed));
        }
        return PageFlow.pages(flowing, TOP_MM, TOP_MM, paperHeightMm - Frames.FOOT_MM - 2).stream()
                .map(page -> page.stream().map(placed -> placed.content().at(placed.yMm())).toList()).toList();
    }
}
