package kitleaf.basket;

/** What is wrong with one value and what to write instead; whoever knows the value's place makes it a problem. */
final class Fault extends Exception {

    private static final long serialVersionUID = 1;

    private final String write;

    Fault(String wrong, String write) {
        // Faults are answers, not failures: no stack trace is kept.
        super(wrong, null, false, false);
        this.write = write;
    }

    String wrong() {
        return getMessage();
    }

    String write() {
        return write;
    }
}
