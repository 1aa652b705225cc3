package kitleaf.command.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import kitleaf.basket.Price;
import kitleaf.basket.cloth.Count;
import kitleaf.words.Words;

/** A JSON object in the making. Its keys stand in the order they are put. */
final class JsonObject {

    private static final Object NULL = new Object();

    private final Map<String, Object> entries = new LinkedHashMap<>();

    /**
     * Puts a text, a number, a truth, an object, or a list of these.
     *
     * @param value of a constant its word, of a day ISO 8601; what may be empty is left out if it is
     */
    JsonObject put(String key, Object value) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresent(present -> put(key, present));
        } else if (value instanceof OptionalDouble figure) {
            figure.ifPresent(present -> put(key, present));
        } else {
            entries.put(key, value);
        }
        return this;
    }

    /** Puts a list of what is made of each. */
    <T> JsonObject put(String key, List<T> all, Function<T, ?> made) {
        return put(key, all.stream().map(made).toList());
    }

    /** Puts a figure, or {@code null} where nobody can know it. */
    JsonObject putKnown(String key, OptionalDouble figure) {
        entries.put(key, figure.isPresent() ? figure.getAsDouble() : NULL);
        return this;
    }

    /** Puts an amount and its currency, if there is one. */
    JsonObject putCost(Optional<Price> cost) {
        return put("cost", cost.map(Price::amount)).put("currency", cost.map(Price::currency));
    }

    /** Puts the threads to the inch both ways. */
    JsonObject putCount(Count count) {
        return put("warp-per-inch", count.warpPerInch()).put("weft-per-inch", count.weftPerInch());
    }

    /** Writes it, and nothing after it. */
    void write(JsonGenerator json) throws IOException {
        json.writeStartObject();
        for (Map.Entry<String, Object> entry : entries.entrySet()) {
            json.writeFieldName(entry.getKey());
            write(entry.getValue(), json);
        }
        json.writeEndObject();
    }

    private static void write(Object value, JsonGenerator json) throws IOException {
        if (value instanceof JsonObject object) {
            object.write(json);
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object one : list) {
                write(one, json);
            }
            json.writeEndArray();
        } else if (value instanceof Enum<?> constant) {
            json.writeString(Words.word(constant));
        } else if (value instanceof String || value instanceof LocalDate) {
            json.writeString(value.toString());
        } else if (value == NULL) {
            json.writeNull();
        } else {
            // Numbers and truths; whatever else comes here it refuses.
            json.writePOJO(value);
        }
    }
}
