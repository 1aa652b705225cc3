package kitleaf.sheet.page;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

/**
 * A sheet laid out and ready for its template.
 *
 * @param kind which sheet
 * @param pages how many pages it has
 * @param model what its template sees
 */
public record Sheet(SheetKind kind, int pages, Map<String, Object> model) {

    /** The same, with one thing more for its template. */
    public Sheet with(String name, Object value) {
        Map<String, Object> more = new HashMap<>(model);
        more.put(name, value);
        return new Sheet(kind, pages, more);
    }

    /** Copies the model. */
    public Sheet {
        Objects.requireNonNull(kind);
        model = Map.copyOf(model);
    }
}
