package kitleaf.sheet;

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
 * @param need skeins needed
 * @param stash skeins from the stash
 * @param buy whole skeins to get or buy
 * @param each price of one
 * @param cost price of all
 */
public record ListRow(String kind, double yMm, double heightMm, Swatch swatch, String name, String more, String below,
                      String need, String stash, String buy, String each, String cost) {

    static ListRow thread(double heightMm, Swatch swatch, String code, String name, String below, String need, String stash,
                          String buy, String each, String cost) {
        return new ListRow("thread", 0, heightMm, swatch, code, name, below, need, stash, buy, each, cost);
    }

    static ListRow item(double heightMm, String name, String more, String below) {
        return new ListRow("item", 0, heightMm, null, name, more, below, "", "", "", "", "");
    }

    static ListRow words(String kind, double heightMm, String words) {
        return new ListRow(kind, 0, heightMm, null, words, "", "", "", "", "", "", "");
    }

    static ListRow sum(double heightMm, String words, String buy, String cost) {
        return new ListRow("sum", 0, heightMm, null, words, "", "", "", "", buy, "", cost);
    }

    ListRow at(double topMm) {
        return new ListRow(kind, topMm, heightMm, swatch, name, more, below, need, stash, buy, each, cost);
    }
}
