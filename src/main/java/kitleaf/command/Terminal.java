package kitleaf.command;

import java.io.Console;

/** Whether somebody watches. */
final class Terminal {

    private Terminal() { }

    /** Whether standard input and output are a terminal. */
    static boolean interactive() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            // Up to Java 21 a console is a terminal; from 22 on there is always one, and it has to be asked.
            return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException e) {
            return true;
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }
}
