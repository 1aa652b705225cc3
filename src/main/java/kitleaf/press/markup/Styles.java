package kitleaf.press.markup;

import java.util.Arrays;

/**
 * The styles of one document, each kept once: a sheet says the same few over and over, and what is set in the same style can be known
 * by it. What an element changes is looked up as a whole, in a question that is used again each time.
 */
public final class Styles {

    /** So many changes are remembered; swatches alone may have a colour each. */
    private static final int MOST = 250;

    private final Lately<Change, Style> known = new Lately<>(MOST, Change::copy);
    private final Lately<Style, Style> all = new Lately<>(MOST);
    private final Change asked = new Change();
    private Quotes quotes = Quotes.ENGLISH;

    /** Says in which language the document is. */
    public void speak(String language) {
        quotes = Quotes.of(language);
    }

    public Quotes quotes() {
        return quotes;
    }

    /** Begins a question: what becomes of a style. */
    Styles from(Style style) {
        asked.from = style;
        asked.length = 0;
        return this;
    }

    /** With one presentation attribute more. */
    void with(String attribute, String value) {
        asked.add(attribute);
        asked.add(value);
    }

    /** The style that the change asked for gave before; null if it was never asked for. */
    Style known() {
        return asked.length == 0 ? asked.from : known.get(asked);
    }

    /** Remembers what the change asked for gives; it, or an equal one that was there before. */
    Style remember(Style style) {
        Style kept = all.get(style);
        if (kept == null) {
            kept = style;
            all.put(style, style);
        }
        known.put(asked, kept);
        return kept;
    }

    /** A style and the attributes that change it, names and values by turns. */
    private static final class Change {

        private Style from;
        private String[] attributes = new String[8];
        private int length;

        void add(String part) {
            if (length == attributes.length) {
                attributes = Arrays.copyOf(attributes, 2 * length);
            }
            attributes[length++] = part;
        }

        Change copy() {
            Change copy = new Change();
            copy.from = from;
            copy.attributes = Arrays.copyOf(attributes, length);
            copy.length = length;
            return copy;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Change change && from == change.from
                    && Arrays.equals(attributes, 0, length, change.attributes, 0, change.length);
        }

        @Override
        public int hashCode() {
            int hash = System.identityHashCode(from);
            for (int i = 0; i < length; i++) {
                hash = 31 * hash + attributes[i].hashCode();
            }
            return hash;
        }
    }
}
