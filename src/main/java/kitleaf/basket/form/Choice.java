package kitleaf.basket.form;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import kitleaf.basket.place.Advice;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.words.Said;

/**
 * One of a few words.
 *
 * @param <T> what the words stand for
 * @param wrong the phrase that says what another word is not: {@code choice.finish}
 * @param words what they stand for, in the order to list them
 */
public record Choice<T>(String wrong, Map<String, T> words) implements Form<T> {

    /** The constants of an enum, named in kebab-case. */
    public static <E extends Enum<E>> Choice<E> of(String wrong, Class<E> type) {
        Map<String, E> words = new LinkedHashMap<>();
        for (E constant : type.getEnumConstants()) {
            words.put(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'), constant);
        }
        return new Choice<>(wrong, words);
    }

    @Override
    public T read(String text) throws Fault {
        T found = words.get(text.strip());
        if (found == null) {
            throw Fault.of(Said.of(wrong, Quote.bare(text)), Advice.on(text.strip(), words.keySet()));
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
