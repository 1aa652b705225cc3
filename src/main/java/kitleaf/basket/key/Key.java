package kitleaf.basket.key;

import java.util.List;
import kitleaf.basket.form.Form;

/**
 * One key of a thing, declared once: readers read by it, and editors' schemas follow from it.
 *
 * @param name as she writes it
 * @param form how its single value is written; null where it has none
 * @param example what to write under it, to show her
 * @param value all that may stand under it
 * @param needed whether it must stand there
 * @param shown values an editor shows, as YAML
 * @param <T> what its single value is once read
 */
public record Key<T>(String name, Form<T> form, String example, Value value, boolean needed, List<String> shown) {

    public Key {
        shown = List.copyOf(shown);
    }

    /** A key whose single value is written in one of two ways, which depends on others. */
    public Key<T> or(Form<?> other) {
        return new Key<>(name, form, example, Value.either(value, Value.of(other)), needed, shown);
    }
}
