package kitleaf.sheet;

import java.util.Locale;

/** The sheets Kitleaf prints. */
public enum SheetKind {
    /** A page of sizes and steps for each piece, with its corner guide. */
    CUT_SHEETS,
    /** A label for every thread of every piece. */
    BOBBIN_LABELS,
    /** What each piece needs. */
    KIT_LISTS,
    /** What to buy for all pieces together. */
    BUY_LIST;

    /** The name on the command line and of the PDF, such as {@code cut-sheets}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
