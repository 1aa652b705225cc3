package kitleaf.press;

import java.util.Locale;

/** The faces a text may ask for by the part they play. */
enum Family {
    TEXT, HEADING, SYMBOL;

    static Family read(String text) throws BadValue {
        for (Family family : values()) {
            if (family.name().toLowerCase(Locale.ROOT).equals(text)) {
                return family;
            }
        }
        throw new BadValue("value.family", text);
    }
}
