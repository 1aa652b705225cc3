package kitleaf.sheet.page;

import java.util.EnumSet;
import java.util.Set;
import kitleaf.words.Words;

/** The sheets Kitleaf prints. */
public enum SheetKind {
    /** A page of sizes and steps for each piece, with its corner guide. */
    CUT_SHEETS,
    /** Which pieces are cut from which cloth, and how. */
    CLOTH_PLAN,
    /** A label for every thread of every piece. */
    BOBBIN_LABELS,
    /** What each piece needs. */
    KIT_LISTS,
    /** What to buy for all pieces together. */
    BUY_LIST,
    /** A tag for the bag of each piece. */
    BAG_TAGS,
    /** The year's pieces for the wall, to be coloured in. */
    GOAL_GRID,
    /** All pieces: how each stands, where it lies, how far it is; printed only when asked for. */
    PIECE_LIST,
    /** What was done in a month, a quarter or a year; printed only when asked for. */
    LOOK_BACK,
    /** How a printer places backs behind their fronts; printed only when asked for. */
    DUPLEX_CHECK;

    /** The sheets printed when none is named. */
    public static Set<SheetKind> usual() {
        return EnumSet.complementOf(EnumSet.of(PIECE_LIST, LOOK_BACK, DUPLEX_CHECK));
    }

    /** The name on the command line and of the PDF, such as {@code cut-sheets}. */
    public String id() {
        return Words.word(this);
    }
}
