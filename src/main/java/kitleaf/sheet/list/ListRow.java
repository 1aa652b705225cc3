package kitleaf.sheet.list;

import kitleaf.sheet.page.Frames;
import kitleaf.sheet.page.SheetSettings;
import kitleaf.sheet.page.Swatch;
import kitleaf.sheet.words.Figures;

/**
 * A row of a kit or buy list, in its place. What a kind of row does not have is empty, or null for the swatch.
 *
 * @param kind {@code thread}, {@code item} (ticked off, no thread), {@code group} (a heading), {@code sum},
 *        {@code heading} or {@code note}
 * @param yMm its top on the page
 * @param heightMm its height
 * @param swatch the thread's colour and symbol
 * @param name what is largest: the code of a thread, the words of a heading
 * @param more beside it: the thread's name, what an item is
 * @param below small, under both
 * @param belowLines how many lines that takes
 * @param need skeins needed
 * @param stash skeins from the stash
 * @param buy whole skeins to get or buy
 * @param each price of one
 * @param cost price of all
 */
public record ListRow(String kind, double yMm, double heightMm, Swatch swatch, String name, String more, String below, int belowLines,
                      String need, String stash, String buy, String each, String cost) {

    /** The height of a thread or an item with one line below its name. */
    private static final double ROW_MM = 9.6;
    /** What one more line below the name adds. */
    private static final double LINE_MM = 3;
    /** More lines than this no row gets; a text that still does not fit is cut and told of. */
    private static final int MOST_LINES = 6;
    /** The least size words and figures of a row shrink to. */
    static final double LEAST_PT = 6;
    /** Where the words of a thread and of an item begin, from the margin. */
    private static final double THREAD_X_MM = 14.5;
    private static final double ITEM_X_MM = 6;

    static ListRow thread(SheetSettings settings, boolean costs, Swatch swatch, String code, String name, String below, String need, String stash,
                          String buy, String each, String cost) {
        // A name that would be cut goes down to where there is room; the code stays large.
        double codePt = LEAST_PT * settings.type().lead() / settings.type().text();
        boolean down = !settings.type().large() && settings.ruler().widthMm(code, "text", 600, codePt)
                + settings.ruler().widthMm(Figures.NO_BREAK + " " + name, "text", 400, LEAST_PT) > ListPage.nameMm(costs, settings.paper().widthMm());
        String under = down ? name + " · " + below : below;
        int lines = lines(settings, under, THREAD_X_MM);
        return new ListRow("thread", 0, ROW_MM + (lines - 1) * LINE_MM, swatch, code, down ? "" : name, under, lines, need, stash, buy, each, cost);
    }

    static ListRow item(SheetSettings settings, String name, String more, String below) {
        int lines = lines(settings, below, ITEM_X_MM);
        return new ListRow("item", 0, ROW_MM + (lines - 1) * LINE_MM, null, name, more, below, lines, "", "", "", "", "");
    }

    /** Something to buy that is no thread: how many, and what they cost. */
    static ListRow bought(SheetSettings settings, String name, String below, String buy, String each, String cost) {
        ListRow item = item(settings, name, "", below);
        return new ListRow(item.kind, 0, item.heightMm, null, name, "", below, item.belowLines, "", "", buy, each, cost);
    }

    /** One line where the text fits into it at the least size, else as many as it takes at its own. */
    private static int lines(SheetSettings settings, String below, double fromMm) {
        double widthMm = settings.paper().widthMm() - 2 * Frames.MARGIN_MM - fromMm;
        return settings.ruler().lines(below, "text", 400, LEAST_PT, widthMm) <= 1 ? 1
                : Math.min(MOST_LINES, settings.ruler().lines(below, "text", 400, settings.type().caption(), widthMm));
    }

    static ListRow words(String kind, double heightMm, String words) {
        return new ListRow(kind, 0, heightMm, null, words, "", "", 0, "", "", "", "", "");
    }

    static ListRow sum(double heightMm, String words, String buy, String cost) {
        return new ListRow("sum", 0, heightMm, null, words, "", "", 0, "", "", buy, "", cost);
    }

    ListRow at(double topMm) {
        return new ListRow(kind, topMm, heightMm, swatch, name, more, below, belowLines, need, stash, buy, each, cost);
    }
}
