package kitleaf.basket.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
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
 * @param others what else is understood and not listed, however its capitals, blanks and hyphens are written
 */
public record Choice<T>(String wrong, Map<String, T> words, Map<String, T> others) implements Form<T> {

    public Choice {
        Map<String, T> folded = new LinkedHashMap<>();
        others.forEach((word, meant) -> folded.put(fold(word), meant));
        others = folded;
    }

    /** The constants of an enum, named in kebab-case. */
    public static <E extends Enum<E>> Choice<E> of(String wrong, Class<E> type) {
        return of(wrong, type, constant -> true);
    }

    /** Those constants of an enum that can be written, named in kebab-case. */
    public static <E extends Enum<E>> Choice<E> of(String wrong, Class<E> type, Predicate<E> written) {
        Map<String, E> words = new LinkedHashMap<>();
        for (E constant : type.getEnumConstants()) {
            if (written.test(constant)) {
                words.put(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'), constant);
            }
        }
        return new Choice<>(wrong, words, Map.of());
    }

    /** These and other words for one of them. */
    public Choice<T> also(T meant, String... others) {
        Map<String, T> more = new LinkedHashMap<>(this.others);
        for (String other : others) {
            more.put(other, meant);
        }
        return new Choice<>(wrong, words, more);
    }

    private static String fold(String word) {
        return word.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", " ");
    }

    @Override
    public T read(String text) throws Fault {
        T found = words.getOrDefault(text.strip(), others.get(fold(text)));
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
        JsonShape listed = JsonShape.oneOf(words.keySet());
        List<Boolean> typed = Stream.of(true, false).filter(said -> others.containsKey(said.toString())).toList();
        return others.isEmpty() ? listed
                : (typed.isEmpty() ? listed : listed.or(JsonShape.oneOf(typed)))
                        .or(JsonShape.pattern(JsonShape.anyCase(others.keySet()).replace(" ", "[\\s-]+")));
    }
}
