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
 * @param between what parts facts that share a line
 * @param swatch colour and symbol
 */
record LabelWords(String code, String name, String piece, List<String> facts, Supplier<List<List<String>>> shorter, String between,
                  Swatch swatch) {

    LabelWords {
        Objects.requireNonNull(code);
        Objects.requireNonNull(piece);
        Objects.requireNonNull(shorter);
        Objects.requireNonNull(between);
        facts = List.copyOf(facts);
    }

    /** All facts as one text. */
    String joined() {
        return String.join(between, facts);
    }
}
