package kitleaf.sheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kitleaf.words.Words;

/**
 * A line where two pages meet that are laid together.
 *
 * @param side {@code left}, {@code top}, {@code right} or {@code bottom} of this page's window
 * @param letter the same on both pages
 * @param note what to do there
 * @param brief the same in fewer words
 */
public record Join(String side, String letter, String note, String brief) {

    /** In the blank along a join stand words up to this height. */
    public static final double BLANK_MM = 3;

    /**
     * The joins of one page with its neighbours: lettered, upright ones first, row by row, then level ones.
     *
     * @param column of the page, from 0
     * @param row of the page, from 0
     * @param columns pages side by side
     * @param rows pages one below the other
     */
    public static List<Join> of(int column, int row, int columns, int rows, Words words) {
        return of(column, row, columns, rows, false, words);
    }

    /**
     * The same where pages may lie in an L.
     *
     * @param isL whether only the top row and the left column are joined, each along itself
     */
    public static List<Join> of(int column, int row, int columns, int rows, boolean isL, Words words) {
        List<String> onto = List.of("guide.onto", "guide.onto-large");
        List<String> lip = List.of("guide.lip", "guide.lip-large");
        boolean across = !isL || row == 0;
        boolean down = !isL || column == 0;
        List<Join> joins = new ArrayList<>();
        if (across && column > 0) {
            joins.add(join("left", upright(column - 1, row, columns), onto, words));
        }
        if (down && row > 0) {
            joins.add(join("top", isL ? columns - 2 + row : level(column, row - 1, columns, rows), onto, words));
        }
        if (across && column < columns - 1) {
            joins.add(join("right", upright(column, row, columns), lip, words));
        }
        if (down && row < rows - 1) {
            joins.add(join("bottom", isL ? columns - 1 + row : level(column, row, columns, rows), lip, words));
        }
        return joins;
    }

    private static Join join(String side, int number, List<String> notes, Words words) {
        String letter = number < 26 ? String.valueOf((char) ('A' + number)) : String.format(Locale.ROOT, "%d", number + 1);
        return new Join(side, letter, words.say(notes.get(0), letter), words.say(notes.get(1), letter));
    }

    private static int upright(int leftColumn, int row, int columns) {
        return row * (columns - 1) + leftColumn;
    }

    private static int level(int column, int upperRow, int columns, int rows) {
        return rows * (columns - 1) + upperRow * columns + column;
    }
}
