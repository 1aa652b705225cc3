package kitleaf.basket;

/**
 * Keeps spreadsheets from taking a cell of hers for a formula. A cell that begins with {@code = + - @} (or their wide forms) is
 * written with an apostrophe before it, which makes it words; so is one that already has apostrophes before such a sign,
 * so that taking one off always gives back what there was.
 */
public final class FormulaGuard {

    private static final String BEGINS = "[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20]";

    private FormulaGuard() {
    }

    /** The cell as it is written. */
    public static String guarded(String cell) {
        return cell.matches("(?s)'*" + BEGINS + ".*") ? "'" + cell : cell;
    }

    /** The cell that was written so; of hands that know no guard, the cell as it stands. */
    static String unguarded(String written) {
        return written.matches("(?s)'+" + BEGINS + ".*") ? written.substring(1) : written;
    }
}
