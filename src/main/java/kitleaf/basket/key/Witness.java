package kitleaf.basket.key;

import java.util.List;
import kitleaf.basket.form.Form;
import kitleaf.basket.place.Place;
import kitleaf.basket.yaml.Node;
import kitleaf.words.Said;

/**
 * Is told what readers ask of what was written. Readers know best which keys they take, which of them must be there
 * and how each value is written; whoever wants to describe the files listens to them rather than keep a second list.
 */
public interface Witness {

    /** Listens to nothing. */
    Witness NONE = new Witness() {
        @Override
        public void keys(Node.Mapping mapping, Said what, List<String> known) {
        }

        @Override
        public void needed(Node.Mapping mapping, String key) {
        }

        @Override
        public void form(Place value, Form<?> form) {
        }
    };

    /** A mapping has been taken for something with these keys. */
    void keys(Node.Mapping mapping, Said what, List<String> known);

    /** A key must stand in a mapping. */
    void needed(Node.Mapping mapping, String key);

    /** A single value, or a key that is a name of her own, must be written in this form. */
    void form(Place value, Form<?> form);
}
