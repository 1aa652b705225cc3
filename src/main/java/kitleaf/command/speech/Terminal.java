package kitleaf.command.speech;

import java.io.BufferedReader;
import java.io.Console;
import java.util.Objects;
import java.util.Optional;

/**
 * Who sits before the program.
 *
 * @param typed what she types; nothing where nobody watches, and then nothing is asked and no progress shown
 */
public record Terminal(Optional<BufferedReader> typed) {

    /** Nobody sits there. */
    public static final Terminal NONE = new Terminal(Optional.empty());

    public Terminal {
        Objects.requireNonNull(typed);
    }

    /** The terminal of this process, if standard input and output are one. */
    public static Terminal here() {
        Console console = System.console();
        return console != null && terminal(console) ? new Terminal(Optional.of(new BufferedReader(console.reader()))) : NONE;
    }

    /** Whether somebody watches. */
    public boolean watched() {
        return typed.isPresent();
    }

    private static boolean terminal(Console console) {
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
