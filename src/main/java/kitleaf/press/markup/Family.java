package kitleaf.press.markup;

import java.util.Locale;

/** The faces a text may ask for by the part they play. */
public enum Family {
    TEXT, HEADING, SYMBOL;

    public static Family read(String text) throws BadValue {
        for (Family family : values()) {
            if (family.name().toLowerCase(Locale.ROOT).equals(text)) {
                return family;
            }
        }
        throw new BadValue("value.family", text);
    }
}
