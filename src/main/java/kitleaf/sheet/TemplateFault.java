package kitleaf.sheet;

import java.io.IOException;

/** A template that cannot be read or run; the message names the template, the line and the column. */
public final class TemplateFault extends IOException {

    private static final long serialVersionUID = 1L;

    TemplateFault(String message) {
        super(message);
    }
}
