package kitleaf.sheet.plain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import kitleaf.basket.Units;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.words.Words;

/** The words and columns of plain lines of text, in one language. */
final class PlainWords {

    private final Words words;
    private final int nameWidth;
    private final int width;

    /**
     * Words in a language.
     *
     * @param width of the first of two columns, in characters
     */
    PlainWords(Locale language, int width) {
        this.width = width;
        words = Words.spoken("kitleaf.sheet.plain.words", language);
        nameWidth = Integer.parseInt(words.say("columns.name"));
    }

    String say(String key, Object... slots) {
        return words.say(key, slots);
    }

    /** Figures in the same language. */
    Figures figures(Units units) {
        return new Figures(units, SheetWords.in(words.language()));
    }

    /** The phrase for a constant, under a group of keys. */
    String of(String group, Enum<?> constant, Object... slots) {
        return words.say(group + "." + Words.word(constant), slots);
    }

    /** A line: its name, then two columns. */
    String row(String name, String first, String second) {
        String format = "  %-" + nameWidth + "s%-" + width + "s %s";
        return Figures.plain(String.format(Locale.ROOT, format, name, first, second).stripTrailing());
    }

    /** A line for each of several things; the name of all stands before the first. */
    <T> List<String> rows(String name, Collection<T> things, Function<T, String> first, Function<T, String> second) {
        List<String> rows = new ArrayList<>();
        things.forEach(it -> rows.add(row(rows.isEmpty() ? name : "", first.apply(it), second.apply(it))));
        return rows;
    }
}
