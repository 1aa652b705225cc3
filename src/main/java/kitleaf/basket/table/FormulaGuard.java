package kitleaf.basket.table;

import java.util.regex.Pattern;

/**
 * Keeps spreadsheets from taking a cell of hers for a formula. What begins with {@code = + - @} (or their wide forms), be it after
 * blanks, quotes and apostrophes, is written with an apostrophe before it, which makes it words; taking that one off gives back what
 * there was. A cell begins at its beginning, and after whatever a spreadsheet might part it at: a comma, a semicolon, a tab, a
 * line's end. For a spreadsheet that expects another sign between cells, quotes in the middle of its own cells keep nothing together.
 */
public final class FormulaGuard {

    private static final String BEGINS = "(?<![^,;\\t\\r\\n])";
    private static final String FORMULA = "(?=[ \u00A0'\"]*+[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20])";

    private static final Pattern OPEN = Pattern.compile(BEGINS + FORMULA);
    private static final Pattern GUARDED = Pattern.compile(BEGINS + "'" + FORMULA);

    private FormulaGuard() {
    }

    /** The cell as it is written. */
    static String guarded(String cell) {
        return OPEN.matcher(cell).replaceAll("'");
    }

    /** The cell that was written so; of hands that know no guard, the cell as it stands. */
    public static String unguarded(String written) {
        return GUARDED.matcher(written).replaceAll("");
    }
}
