package kitleaf.basket;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * One of a few words.
 *
 * @param <T> what the words stand for
 * @param what what the word would be, with its article: {@code a finish}
 * @param words what they stand for, in the order to list them
 */
record Choice<T>(String what, Map<String, T> words) implements Form<T> {

    /** The constants of an enum, named in kebab-case. */
    static <E extends Enum<E>> Choice<E> of(String what, Class<E> type) {
        Map<String, E> words = new LinkedHashMap<>();
        for (E constant : type.getEnumConstants()) {
            words.put(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'), constant);
        }
        return new Choice<>(what, words);
    }

    @Override
    public T read(String text) throws Fault {
        T found = words.get(text.strip());
        if (found == null) {
            throw new Fault(Quote.of(text) + " is not " + what, Advice.on(text.strip(), words.keySet()));
        }
        return found;
    }

    @Override
    public String example() {
        return words.keySet().iterator().next();
    }

    @Override
    public JsonShape shape() {
        return JsonShape.oneOf(words.keySet());
    }
}
