package kitleaf.command;

import java.util.function.Function;
import kitleaf.basket.form.WrongValue;
import kitleaf.words.Said;
import picocli.CommandLine.TypeConversionException;

/** A value she gave that cannot be read, and what to write instead. */
final class Unreadable extends TypeConversionException {

    private static final long serialVersionUID = 1L;

    private final transient Function<Voice, String> told;

    Unreadable(String key, Object... slots) {
        super(key);
        Said said = Said.of(key, slots);
        this.told = voice -> voice.say(said);
    }

    Unreadable(WrongValue value) {
        super(value.getMessage());
        this.told = voice -> voice.say(value);
    }

    String told(Voice voice) {
        return told.apply(voice);
    }
}
