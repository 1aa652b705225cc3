package kitleaf.sheet.template;

import java.io.IOException;
import java.util.Locale;
import kitleaf.words.Said;
import kitleaf.words.Shown;
import kitleaf.words.Words;

/** A template that cannot be read or run. */
public final class TemplateFault extends IOException {

    private static final long serialVersionUID = 1L;

    private final String place;
    private final transient Said said;

    /**
     * A fault.
     *
     * @param place the template, with the line and the column where they are known, such as {@code cut-sheets.ftlx:12:4}
     * @param said what is wrong there
     */
    TemplateFault(String place, Said said) {
        super(place + ": " + said.key());
        this.place = place;
        this.said = said;
    }

    /** The place and what is wrong there, in a language. */
    public String told(Locale language) {
        return Shown.inOneLine(place) + ": " + Words.spoken("kitleaf.sheet.template.messages", language).say(said);
    }
}
