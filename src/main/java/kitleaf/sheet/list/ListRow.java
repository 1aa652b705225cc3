package kitleaf.sheet.list;

import kitleaf.sheet.page.Swatch;

/**
 * A row of a kit or buy list. What a kind of row does not have is empty, or null for the swatch.
 *
 * @param kind {@code thread}, {@code item} (ticked off, no thread), {@code enough} (a thread not ticked off),
 *        {@code group} (a heading), {@code sum},
 *        {@code heading} or {@code note}
 * @param swatch the thread's colour and symbol
 * @param name what is largest: the code of a thread, the words of a heading
 * @param more beside it: the thread's name, what an item is
 * @param below small, under both
 * @param need skeins needed, likely
 * @param range the least and the most of them
 * @param stash skeins from the stash
 * @param buy whole skeins to get or buy
 * @param each price of one
 * @param cost price of all
 * @param kept whether it may not be the last on a page, as what is summed up below it
 */
public record ListRow(String kind, Swatch swatch, String name, String more, String below, String need, String range, String stash,
        String buy, String each, String cost, boolean kept) {

    static ListRow needed(Swatch swatch, String code, String name, String below, String need, String range, String stash, String buy) {
        return new ListRow("thread", swatch, code, name, below, need, range, stash, buy, "", "", false);
    }

    /** A thread to buy: how many skeins, and what they cost. */
    static ListRow bought(Swatch swatch, String code, String name, String below, String buy, String each, String cost) {
        return new ListRow("thread", swatch, code, name, below, "", "", "", buy, each, cost, false);
    }

    static ListRow enough(Swatch swatch, String code, String name, String below) {
        return new ListRow("enough", swatch, code, name, below, "", "", "", "", "", "", false);
    }

    static ListRow item(String name, String more, String below) {
        return new ListRow("item", null, name, more, below, "", "", "", "", "", "", false);
    }

    /** Something to buy that is no thread: how many, and what they cost. */
    static ListRow bought(String name, String below, String buy, String each, String cost) {
        return new ListRow("item", null, name, "", below, "", "", "", buy, each, cost, false);
    }

    static ListRow words(String kind, String words) {
        return new ListRow(kind, null, words, "", "", "", "", "", "", "", "", false);
    }

    static ListRow sum(String words, String buy, String cost) {
        return new ListRow("sum", null, words, "", "", "", "", "", buy, "", cost, false);
    }

    ListRow keptWithNext() {
        return new ListRow(kind, swatch, name, more, below, need, range, stash, buy, each, cost, true);
    }
}
