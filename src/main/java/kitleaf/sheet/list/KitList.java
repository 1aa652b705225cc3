package kitleaf.sheet.list;

import java.util.List;

/**
 * A piece's kit list.
 *
 * @param title of the piece
 * @param below designer, chart and cloth; empty for none
 * @param rows from top to bottom
 */
public record KitList(String title, String below, List<ListRow> rows) {

    /** Copies the list. */
    public KitList {
        rows = List.copyOf(rows);
    }
}
