package kitleaf.press;

import java.util.ArrayList;
import java.util.List;

/**
 * Gathers a text's spans and collapses white space across them: runs become one space, none is left
 * at either end.
 */
final class SpanGatherer {

    private final List<Span> spans = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private Style style;
    /** The style of a white space that waits for text to follow it, or null. */
    private Style spaceDue;
    private boolean begun;

    void add(CharSequence more, Style in) {
        if (style != null && style != in) {
            close();
        }
        style = in;
        for (int i = 0; i < more.length(); i++) {
            char c = more.charAt(i);
            if (c == ' ' || c == '\t' || c == '\n' || c == '\r') {
                if (begun && spaceDue == null) {
                    spaceDue = in;
                }
            } else {
                space();
                text.append(c);
                begun = true;
            }
        }
    }

    List<Span> spans() {
        close();
        return List.copyOf(spans);
    }

    /** Sets the space that is due, in the style it was written in. */
    private void space() {
        if (spaceDue == style) {
            text.append(' ');
        } else if (spaceDue != null) {
            spans.add(new Span(" ", spaceDue));
        }
        spaceDue = null;
    }

    private void close() {
        if (text.length() > 0) {
            spans.add(new Span(text.toString(), style));
            text.setLength(0);
        }
    }
}
