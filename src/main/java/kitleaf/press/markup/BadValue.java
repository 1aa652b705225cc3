package kitleaf.press.markup;

import java.util.Locale;
import kitleaf.words.Said;

/** An attribute's value that cannot be read; {@link Element} adds the element and the place. */
public class BadValue extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient Said said;

    public BadValue(String key, Object... slots) {
        super(key);
        this.said = Said.of(key, slots);
    }

    BadValue(Said said) {
        super(said.key());
        this.said = said;
    }

    /** What is wrong, in English. */
    @Override
    public String getMessage() {
        return PressWords.in(Locale.ENGLISH).say(said);
    }

    public Said said() {
        return said;
    }
}
