package kitleaf.sheet.list;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.sheet.page.Passage;
import kitleaf.sheet.page.Passages;
import kitleaf.sheet.words.Figures;
import kitleaf.words.Words;

/**
 * The rows of kit and buy lists in large print: no columns, which would leave their words no room, but each figure after the
 * word for it.
 */
final class LargeRows {

    private final Passages set;
    private final Words words;

    LargeRows(Passages set, Words words) {
        this.set = set;
        this.words = words;
    }

    List<Passage> kit(List<ListRow> rows) {
        return rows.stream().flatMap(row -> passages(row, "kit.get-large", row.buy(),
                figures(row, "kit.need-large", "kit.stash-large"))).toList();
    }

    List<Passage> buy(List<ListRow> rows) {
        return rows.stream().flatMap(row -> passages(row, "buy.buy-large", row.buy(),
                figures(row, "buy.need-large", "buy.stash-large", "buy.each-large", "buy.cost-large"))).toList();
    }

    /** Need, stash, price of one and of all, as far as there are keys and figures for them. */
    private String figures(ListRow row, String... keys) {
        List<String> figures = List.of(row.need(), row.stash(), row.each(), row.cost());
        List<String> said = new ArrayList<>();
        for (int i = 0; i < keys.length; i++) {
            if (!figures.get(i).isEmpty() && !nothing(figures.get(i))) {
                said.add(words.say(keys[i], figures.get(i)));
            }
        }
        return String.join(" · ", said);
    }

    private Stream<Passage> passages(ListRow row, String buyKey, String buy, String figures) {
        return switch (row.kind()) {
            case "thread" -> Stream.of(set.ticked(named(row), buy.isEmpty() ? "" : nothing(buy) ? words.say("kit.have-large") : words.say(buyKey, buy), List.of(row.below(), figures), row.swatch()));
            case "item" -> Stream.of(set.ticked(row.name(), row.buy().isEmpty() ? "" : words.say(buyKey, row.buy()), List.of(row.more(), row.below(), figures), null));
            case "group" -> Stream.of(set.group(row.name()));
            case "sum" -> Stream.of(set.pair(row.name(), Stream.of(row.buy(), row.cost()).filter(it -> !it.isEmpty()).collect(Collectors.joining(", "))));
            case "heading" -> Stream.of(set.section(row.name()));
            default -> set.paragraph(row.name(), set.small()).stream();
        };
    }

    private boolean nothing(String figure) {
        return figure.equals(words.say("kit.nothing"));
    }

    private static String named(ListRow row) {
        return row.more().isEmpty() ? row.name() : row.name() + Figures.NO_BREAK + Figures.NO_BREAK + row.more();
    }
}
