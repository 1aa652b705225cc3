package kitleaf.sheet.list;

import kitleaf.sheet.page.Swatch;

/**
 * A row of a kit or buy list. What a kind of row does not have is empty, or null for the swatch.
 *
 * @param kind {@code thread}, {@code item} (ticked off, no thread), {@code group} (a heading), {@code sum},
 *        {@code heading} or {@code note}
 * @param swatch the thread's colour and symbol
 * @param name what is largest: the code of a thread, the words of a heading
 * @param more beside it: the thread's name, what an item is
 * @param below small, under both
 * @param need skeins needed
 * @param stash skeins from the stash
 * @param buy whole skeins to get or buy
 * @param each price of one
 * @param cost price of all
 * @param kept whether it may not be the last on a page, as what is summed up below it
 */
public record ListRow(String kind, Swatch swatch, String name, String more, String below, String need, String stash, String buy,
        String each, String cost, boolean kept) {

    static ListRow thread(Swatch swatch, String code, String name, String below, String need, String stash, String buy, String each,
            String cost) {
        return new ListRow("thread", swatch, code, name, below, need, stash, buy, each, cost, false);
    }

    static ListRow item(String name, String more, String below) {
        return new ListRow("item", null, name, more, below, "", "", "", "", "", false);
    }

    /** Something to buy that is no thread: how many, and what they cost. */
    static ListRow bought(String name, String below, String buy, String each, String cost) {
        return new ListRow("item", null, name, "", below, "", "", buy, each, cost, false);
    }

    static ListRow words(String kind, String words) {
        return new ListRow(kind, null, words, "", "", "", "", "", "", "", false);
    }

    static ListRow sum(String words, String buy, String cost) {
        return new ListRow("sum", null, words, "", "", "", "", buy, "", cost, false);
    }

    ListRow keptWithNext() {
        return new ListRow(kind, swatch, name, more, below, need, stash, buy, each, cost, true);
    }
}
