package kitleaf.command;

/** Why a command stops: a sentence for its user and an exit code. */
final class Failure extends Exception {

    private static final long serialVersionUID = 1L;

    private final int exitCode;

    Failure(int exitCode, String message) {
        super(message);
        this.exitCode = exitCode;
    }

    int exitCode() {
        return exitCode;
    }
}
