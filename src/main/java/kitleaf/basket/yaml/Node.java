package kitleaf.basket.yaml;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import kitleaf.basket.place.Place;

/** A piece of a read file with its place: what YAML holds, before anyone asks what it means. */
public sealed interface Node {

    /** Where it stands. */
    Place place();

    /**
     * A single value, as it was typed: {@code yes} is a word here and {@code 2026-02-14} no date yet.
     *
     * @param text without quotes
     * @param quoted whether it stood in quotes
     */
    record Scalar(Place place, String text, boolean quoted) implements Node {
        public Scalar {
            Objects.requireNonNull(place);
            Objects.requireNonNull(text);
        }

        /** Whether nothing was written after the key. */
        public boolean missing() {
            return !quoted && (text.isEmpty() || text.equals("~") || text.equals("null"));
        }
    }

    /**
     * Keys with values, in the order they were written.
     *
     * @param entries by key
     */
    record Mapping(Place place, Map<String, Entry> entries) implements Node {
        public Mapping {
            Objects.requireNonNull(place);
            Objects.requireNonNull(entries);
        }
    }

    /**
     * A key's own place and its value.
     *
     * @param key where the key stands
     * @param value what it has been given
     */
    record Entry(Place key, Node value) {
    }

    /**
     * Values one after another.
     *
     * @param items in the order they were written
     */
    record Sequence(Place place, List<Node> items) implements Node {
        public Sequence {
            items = List.copyOf(items);
        }
    }

    /** Something already reported as a problem; readers pass over it in silence. */
    record Refused(Place place) implements Node {
    }
}
