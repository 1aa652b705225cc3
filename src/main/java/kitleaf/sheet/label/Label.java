package kitleaf.sheet.label;

import kitleaf.sheet.page.Parts;
import kitleaf.sheet.page.Swatch;

/**
 * What a label says. Ways to say a thing are parted by {@link #OR}, the best first.
 *
 * @param code what stands on the skein
 * @param name its colour name; empty for none
 * @param piece the piece's title
 * @param facts strands and needle, skeins, lot: each on a line of its own
 * @param ways the same in a sentence, and in fewer and fewer words
 * @param least the fewest words of all
 * @param lot the lot alone, which a label never lacks: a wrong one costs a skein; empty where it is not known
 * @param swatch colour and symbol
 * @param bookmark the piece whose first label this is; empty for others
 */
public record Label(String code, String name, String piece, String facts, String ways, String least, String lot, Swatch swatch,
        String bookmark) implements Parts {

    /** Parts ways to say a thing in the page markup: a character that no text has. */
    static final String OR = "\uFDD4";
    /** Ends a line in the page markup. */
    static final String LINE_END = "\u2028";

    @Override
    public Object part(String part) {
        return switch (part) {
            case "code" -> code;
            case "name" -> name;
            case "piece" -> piece;
            case "facts" -> facts;
            case "ways" -> ways;
            case "least" -> least;
            case "lot" -> lot;
            case "swatch" -> swatch;
            case "bookmark" -> bookmark;
            default -> null;
        };
    }
}
