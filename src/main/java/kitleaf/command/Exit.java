package kitleaf.command;

/** Exit codes. */
final class Exit {

    static final int DONE = 0;
    static final int BASKET_HAS_PROBLEMS = 1;
    static final int WRONG_USAGE = 2;
    static final int COULD_NOT_WRITE = 3;

    private Exit() { }
}
