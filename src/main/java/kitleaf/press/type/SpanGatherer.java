package kitleaf.press.type;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kitleaf.press.markup.Family;
import kitleaf.press.markup.Quotes;
import kitleaf.press.markup.Style;

/**
 * Gathers a text's spans and collapses white space across them: runs become one space, none is left
 * at either end. Straight apostrophes and quotation marks are set, but for symbols.
 */
public final class SpanGatherer {

    private final Quotes quotes;
    /** All there is so far, where it came at once and has nothing to collapse, as nearly always; then there are no spans yet. */
    private Span only;
    private List<Span> spans;
    private StringBuilder text;
    private Style style;
    /** The style of a white space that waits for text to follow it, or null. */
    private Style spaceDue;
    private boolean begun;

    public SpanGatherer(Quotes quotes) {
        this.quotes = quotes;
    }

    public void add(String more, Style in) {
        if (spans == null) {
            if (only == null && collapsed(more)) {
                only = new Span(more, in);
                return;
            }
            spans = new ArrayList<>();
            text = new StringBuilder();
            if (only != null) {
                gather(only.text(), only.style());
            }
        }
        gather(more, in);
    }

    /** Whether a text begins and ends with something to see and has no white space but single blanks. */
    private static boolean collapsed(String text) {
        boolean blank = true;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\t' || c == '\n' || c == '\r' || c == ' ' && blank) {
                return false;
            }
            blank = c == ' ';
        }
        return !blank;
    }

    private void gather(String more, Style in) {
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

    public List<Span> spans() {
        if (spans == null) {
            return only == null ? List.of() : set(List.of(only), only.text());
        }
        close();
        return set(List.copyOf(spans), spans.stream().map(Span::text).collect(Collectors.joining()));
    }

    /** The spans of a text as its language has them; a mark looks at what stands beside it, in whatever style. */
    private List<Span> set(List<Span> gathered, String straight) {
        String set = quotes.set(straight);
        if (set.equals(straight)) {
            return gathered;
        }
        List<Span> all = new ArrayList<>(gathered.size());
        int from = 0;
        for (Span span : gathered) {
            int end = from + span.text().length();
            all.add(span.style().type().family() == Family.SYMBOL ? span : new Span(set.substring(from, end), span.style()));
            from = end;
        }
        return all;
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
