package kitleaf.command.speech;

/** Exit codes. */
public final class Exit {

    public static final int DONE = 0;
    public static final int BASKET_HAS_PROBLEMS = 1;
    public static final int WRONG_USAGE = 2;
    public static final int COULD_NOT_WRITE = 3;

    private Exit() { }
}
