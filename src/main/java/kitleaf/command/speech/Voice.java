package kitleaf.command.speech;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import kitleaf.basket.form.WrongValue;
import kitleaf.basket.place.BasketWords;
import kitleaf.basket.place.Problem;
import kitleaf.basket.place.ProblemText;
import kitleaf.press.markup.PressWords;
import kitleaf.words.Said;
import kitleaf.words.Words;

/** Says things in her language: her surroundings' until a basket names one, then the basket's. */
public final class Voice {

    /** What names a language in the surroundings, the first that is set being the one that counts (POSIX, 8.2). */
    private static final List<String> VARIABLES = List.of("LC_ALL", "LC_MESSAGES", "LANG");

    private Locale language;
    /** Read when first needed: most runs have nothing to say that is not on a sheet. */
    private Words words;
    private Words problems;

    public Voice(Locale language) {
        this.language = language;
    }

    /** The language of these surroundings: German where they say so, else English. */
    public static Locale language(Map<String, String> surroundings) {
        String named = VARIABLES.stream().map(variable -> surroundings.getOrDefault(variable, ""))
                .filter(value -> !value.isEmpty()).findFirst().orElse("");
        return named.matches("de([_.@].*)?") ? Locale.GERMAN : Locale.ENGLISH;
    }

    public Locale language() {
        return language;
    }

    public void turnTo(Locale other) {
        if (!other.equals(language)) {
            language = other;
            words = null;
            problems = null;
        }
    }

    public String say(String key, Object... slots) {
        return say(Said.of(key, slots));
    }

    public String say(Said said) {
        if (words == null) {
            words = Words.spoken("kitleaf.command.messages", language);
        }
        return words.say(said);
    }

    /** What is wrong with a value she gave outside a file. */
    public String say(WrongValue value) {
        return value.told(ofBasket());
    }

    /** A phrase of the press: a warning, or what is wrong in page markup. */
    public String sayForPress(Said said) {
        return PressWords.in(language).say(said);
    }

    /** A problem, set out for a screen. */
    public String say(Problem problem) {
        return ProblemText.render(problem, ofBasket());
    }

    private Words ofBasket() {
        if (problems == null) {
            problems = BasketWords.in(language);
        }
        return problems;
    }
}
