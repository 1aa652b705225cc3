package kitleaf.basket.place;

import kitleaf.words.Said;

/** What is wrong with one value and what to write instead; whoever knows the value's place makes it a problem. */
public final class Fault extends Exception {

    private static final long serialVersionUID = 1;

    private final transient Said wrong;
    private final transient Said write;

    private Fault(Said wrong, Said write) {
        // Faults are answers, not failures: no stack trace is kept.
        super(wrong.key(), null, false, false);
        this.wrong = wrong;
        this.write = write;
    }

    /** A fault by its name: its phrases are {@code name.wrong} and {@code name.write}, and share their slots. */
    public static Fault of(String name, Object... slots) {
        return new Fault(Said.of(name + ".wrong", slots), Said.of(name + ".write", slots));
    }

    /** A fault whose advice depends on what was met. */
    public static Fault of(Said wrong, Said write) {
        return new Fault(wrong, write);
    }

    public Said wrong() {
        return wrong;
    }

    public Said write() {
        return write;
    }
}
