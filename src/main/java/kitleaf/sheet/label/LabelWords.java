package kitleaf.sheet.label;

import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import kitleaf.sheet.page.Swatch;

/**
 * What a label says.
 *
 * @param code what stands on the skein
 * @param name its colour name; empty for none
 * @param piece the piece's title
 * @param facts strands and needle, skeins, lot: a short phrase each
 * @param shorter the facts in fewer and fewer letters; asked for only where they have no room
 * @param crowded what is left of them where even that has no room, and the lot; asked for only there
 * @param lotKnown whether its lot is known, which is never left out
 * @param between what parts facts that share a line
 * @param swatch colour and symbol
 */
record LabelWords(String code, String name, String piece, List<String> facts, Supplier<List<List<String>>> shorter,
        Supplier<Crowded> crowded, boolean lotKnown, String between, Swatch swatch) {

    /**
     * What a crowded label says.
     *
     * @param facts each way without the lot, from the fullest down to none
     * @param lots ways to write the lot, the best first; empty where it is not known
     */
    record Crowded(List<List<String>> facts, List<String> lots) {

        Crowded {
            facts = facts.stream().map(List::copyOf).toList();
            lots = List.copyOf(lots);
        }
    }

    LabelWords {
        Objects.requireNonNull(code);
        Objects.requireNonNull(piece);
        Objects.requireNonNull(shorter);
        Objects.requireNonNull(crowded);
        Objects.requireNonNull(between);
        facts = List.copyOf(facts);
    }

    /** All facts as one text. */
    String joined() {
        return String.join(between, facts);
    }
}
