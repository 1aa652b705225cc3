package kitleaf.press.markup;

import java.util.Locale;
import kitleaf.words.Said;

/** Page markup that cannot be drawn, with the place of what is wrong in it. */
public final class MarkupException extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient Said said;
    private final int line;
    private final int column;
    private final int characterOffset;

    public MarkupException(Said said, Place place) {
        super(said.key());
        this.said = said;
        this.line = place.line();
        this.column = place.column();
        this.characterOffset = place.characterOffset();
    }

    /** What is wrong, to be spoken with {@link PressWords}. */
    public Said said() {
        return said;
    }

    /** What is wrong, in English. */
    @Override
    public String getMessage() {
        return PressWords.in(Locale.ENGLISH).say(said);
    }

    /** The line in the markup, counted from 1. */
    public int line() {
        return line;
    }

    /** The column in that line, counted from 1. */
    public int column() {
        return column;
    }

    /**
     * How many characters of the markup come before the faulty tag or text, counted from 0, within one
     * character (as near as the XML reader tells); for markup that is not well-formed XML, where the
     * XML reader gave up.
     */
    public int characterOffset() {
        return characterOffset;
    }
}
