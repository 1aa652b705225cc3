package kitleaf.sheet.plain;

import java.util.Locale;
import kitleaf.basket.Units;
import kitleaf.sheet.words.Figures;
import kitleaf.sheet.words.SheetWords;
import kitleaf.words.Words;

/** The words and columns of plain lines of text, in one language. */
final class PlainWords {

    private final Words words;
    private final int nameWidth;

    PlainWords(Locale language) {
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
        return words.say(group + "." + constant.name().toLowerCase(Locale.ROOT).replace('_', '-'), slots);
    }

    /** A line: its name, then two columns, the first of them so wide. */
    String row(String name, String first, int width, String second) {
        return String.format(Locale.ROOT, "  %-" + nameWidth + "s%-" + width + "s %s", name, first, second).stripTrailing();
    }
}
