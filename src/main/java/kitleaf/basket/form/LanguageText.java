package kitleaf.basket.form;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitleaf.basket.Paper;
import kitleaf.basket.Units;
import kitleaf.basket.place.Advice;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Quote;
import kitleaf.words.Said;

/**
 * Reads a language, written as its tag (BCP 47), and knows what is usual where it is spoken: letter paper in the
 * United States and A4 elsewhere, centimetres and a decimal comma where German is spoken. The machine's own language is never looked at.
 */
public final class LanguageText implements Form<Locale> {

    private static final List<String> TAGS = List.of("en", "en-GB", "en-US", "de");

    /** The language a tag names: {@code en}, {@code en-GB}, {@code en-US} or {@code de}; nothing for any other text. */
    public static Optional<Locale> named(String tag) {
        return TAGS.contains(tag) ? Optional.of(Locale.forLanguageTag(tag)) : Optional.empty();
    }

    @Override
    public Locale read(String text) throws Fault {
        String tag = text.strip();
        Optional<Locale> language = named(tag);
        if (language.isEmpty()) {
            throw Fault.of(Said.of("choice.language", Quote.bare(tag)), Advice.on(tag, TAGS));
        }
        return language.get();
    }

    @Override
    public JsonShape shape() {
        return JsonShape.oneOf(TAGS);
    }

    @Override
    public String example() {
        return "de";
    }

    /** The paper that is usual where a language is spoken. */
    public static Paper paper(Locale language) {
        return language.equals(Locale.US) ? Papers.named("letter").orElseThrow() : Papers.USUAL;
    }

    /** Whether decimals follow a comma where a language is spoken, so that spreadsheets part cells by semicolons. */
    public static boolean decimalComma(Locale language) {
        return language.equals(Locale.GERMAN);
    }

    /** The units that are usual where a language is spoken. */
    public static Units units(Locale language) {
        return language.equals(Locale.GERMAN) ? Units.CM : Units.IN;
    }
}
