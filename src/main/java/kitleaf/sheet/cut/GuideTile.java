package kitleaf.sheet.cut;

import java.util.List;
import kitleaf.sheet.page.Join;

/**
 * Which of a corner guide's pages one is.
 *
 * @param columns pages side by side
 * @param rows pages one below the other
 * @param column this one, from 0
 * @param row this one, from 0
 * @param joins the lines where it meets its neighbours
 */
public record GuideTile(int columns, int rows, int column, int row, List<Join> joins) {

    /** Copies the list. */
    public GuideTile {
        joins = List.copyOf(joins);
    }

    /** Whether no page lies right of it. */
    public boolean isLastColumn() {
        return column == columns - 1;
    }

    /** Whether no page lies below it. */
    public boolean isLastRow() {
        return row == rows - 1;
    }

    /** Whether there are others. */
    public boolean isOneOfSeveral() {
        return columns * rows > 1;
    }
}
