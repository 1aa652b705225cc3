package kitleaf.sizing.year;

/** Why a piece stands where it does in the order. */
public enum Place {
    /** She has it in focus, before all others. */
    FOCUS,
    /** She has it beside the one in focus. */
    BESIDE,
    /** It has a date, and comes when its date asks for it. */
    DUE,
    /** It has no date, and fits before pieces that have one. */
    FITS_BEFORE,
    /** It has no date; what has none goes shortest first. */
    SHORTEST,
    /** Its date cannot be kept with the others, so it stands back for them. */
    LATE
}
