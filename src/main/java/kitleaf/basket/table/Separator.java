package kitleaf.basket.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import kitleaf.basket.place.Fault;
import kitleaf.words.Said;

/** What parts the cells of a table. */
enum Separator {
    COMMA(',', "separator.comma"),
    SEMICOLON(';', "separator.semicolon"),
    TAB('\t', "separator.tab");

    private final char sign;
    private final String told;

    Separator(char sign, String told) {
        this.sign = sign;
        this.told = told;
    }

    char sign() {
        return sign;
    }

    /** With its article. */
    Said told() {
        return Said.of(told);
    }

    /**
     * What parts a line of headings: what makes most headings of it that are known.
     *
     * @throws Fault if two make equally many
     */
    static Separator of(String line, Predicate<String> known) throws Fault {
        List<Separator> present = new ArrayList<>();
        for (Separator separator : values()) {
            if (separator.spans(line).size() > 1) {
                present.add(separator);
            }
        }
        if (present.isEmpty()) {
            return COMMA;
        }
        present.sort(Comparator.comparingLong((Separator separator) -> separator.known(line, known)).reversed());
        Separator best = present.get(0);
        if (present.size() > 1 && present.get(1).known(line, known) == best.known(line, known)) {
            throw Fault.of("table.parted", best.told(), present.get(1).told());
        }
        return best;
    }

    private long known(String line, Predicate<String> known) {
        int[] text = line.codePoints().toArray();
        return spans(line).stream().limit(CsvTable.MOST_COLUMNS).map(span -> new String(text, span.from(), span.to() - span.from()))
                .map(cell -> cell.strip().replaceAll("^\"|\"$", "").strip()).filter(known).count();
    }

    /**
     * Where a cell stands in its line, quotes and all, in characters from 0.
     *
     * @param to the character after its last one
     */
    record Span(int from, int to) {
    }

    /** The cells of a line; one that begins with a quote goes on to the quote that ends it. */
    List<Span> spans(String line) {
        int[] text = line.codePoints().toArray();
        List<Span> spans = new ArrayList<>();
        int at = 0;
        while (at <= text.length) {
            int end = at;
            boolean inQuotes = at < text.length && text[at] == '"';
            boolean open = false;
            while (end < text.length && (open || text[end] != sign)) {
                open ^= inQuotes && text[end] == '"';
                end++;
            }
            spans.add(new Span(at, end));
            at = end + 1;
        }
        return spans;
    }
}
