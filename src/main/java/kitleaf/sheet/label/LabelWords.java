package kitleaf.sheet.label;

import java.util.List;
import java.util.Objects;
import kitleaf.sheet.page.Swatch;

/**
 * What a label says.
 *
 * @param code what stands on the skein
 * @param name its colour name; empty for none
 * @param piece the piece's title
 * @param facts strands and needle, skeins, lot: a short phrase each
 * @param between what parts facts that share a line
 * @param swatch colour and symbol
 */
record LabelWords(String code, String name, String piece, List<String> facts, String between, Swatch swatch) {

    LabelWords {
        Objects.requireNonNull(code);
        Objects.requireNonNull(piece);
        Objects.requireNonNull(between);
        facts = List.copyOf(facts);
    }

    /** All facts as one text. */
    String joined() {
        return String.join(between, facts);
    }
}
