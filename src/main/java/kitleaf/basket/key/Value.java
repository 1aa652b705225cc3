package kitleaf.basket.key;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kitleaf.basket.form.Form;
import kitleaf.basket.form.JsonShape;

/** What may stand under a key or in a list, as editors see it. */
public interface Value {

    /** Describes things with keys, each once. */
    interface Draft {
        JsonShape reference(Keys keys);
    }

    /** How it looks; things with keys are described in the draft. */
    JsonShape shape(Draft draft);

    /** A single value. */
    static Value of(Form<?> form) {
        return draft -> form.shape();
    }

    /** A list of such entries. */
    static Value list(Value entry) {
        return draft -> {
            Map<String, Object> array = new LinkedHashMap<>();
            array.put("type", "array");
            array.put("items", entry.shape(draft).schema());
            return new JsonShape(List.of(array), List.of());
        };
    }

    /** Such values under names of her own. */
    static Value byName(Value named) {
        return draft -> {
            JsonShape shape = named.shape(draft);
            Map<String, Object> object = new LinkedHashMap<>();
            object.put("type", "object");
            object.put("additionalProperties", shape.schema());
            return new JsonShape(List.of(object), shape.notes());
        };
    }

    /** Any of these. */
    static Value either(Value... ways) {
        return draft -> Stream.of(ways).map(way -> way.shape(draft)).reduce(JsonShape::or).orElseThrow();
    }
}
