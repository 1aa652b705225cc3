package kitleaf.press.type;

import java.util.List;
import kitleaf.press.markup.Style;

/**
 * What a compositor is given to set: the text and the room for it.
 *
 * @param style of the text as a whole: its anchor, its lines' distance and the least size it may shrink to
 * @param widthPt the box's width; infinite for a single line as long as it is
 * @param lines the most lines it may take
 */
public record Copy(List<Span> spans, Style style, double widthPt, int lines) {

    /** Whether it is the same words in the very same styles. */
    @Override
    public boolean equals(Object other) {
        if (!(other instanceof Copy copy) || style != copy.style || widthPt != copy.widthPt || lines != copy.lines
                || spans.size() != copy.spans.size()) {
            return false;
        }
        for (int i = 0; i < spans.size(); i++) {
            if (spans.get(i).style() != copy.spans.get(i).style() || !spans.get(i).text().equals(copy.spans.get(i).text())) {
                return false;
            }
        }
        return true;
    }

    @Override
    public int hashCode() {
        int hash = System.identityHashCode(style);
        for (int i = 0; i < spans.size(); i++) {
            hash = 31 * hash + spans.get(i).text().hashCode();
        }
        return hash;
    }
}
