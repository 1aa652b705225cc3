package kitleaf.press;

import java.util.HashMap;
import java.util.Map;

/**
 * The styles of one document. Attributes that change a style as they did before give the very style they gave then: a sheet says the
 * same few over and over, and what is set in the same style can be known by it.
 */
final class Styles {

    /** So many are remembered, then all are let go; swatches alone may have a colour each. */
    private static final int MOST = 1_000;

    private final Map<Change, Style> known = new HashMap<>();

    /** The style with one presentation attribute applied. */
    Style with(Style from, String attribute, String value) throws BadValue {
        Change change = new Change(from, attribute, value);
        Style style = known.get(change);
        if (style == null) {
            style = Presentation.apply(from, attribute, value);
            if (known.size() == MOST) {
                known.clear();
            }
            known.put(change, style);
        }
        return style;
    }

    private record Change(Style from, String attribute, String value) {

        @Override
        public boolean equals(Object other) {
            return other instanceof Change change && from == change.from && attribute.equals(change.attribute)
                    && value.equals(change.value);
        }

        @Override
        public int hashCode() {
            return (System.identityHashCode(from) * 31 + attribute.hashCode()) * 31 + value.hashCode();
        }
    }
}
