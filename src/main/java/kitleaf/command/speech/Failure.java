package kitleaf.command.speech;

import java.nio.file.Path;
import java.util.function.Function;
import kitleaf.basket.edit.ByHand;
import kitleaf.words.Said;

/** Why a command stops: a sentence for its user, in her language once it is told, and an exit code. */
public final class Failure extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final int exitCode;
    private final transient Function<Voice, String> told;

    private Failure(int exitCode, String name, Function<Voice, String> told) {
        super(name, null, false, false);
        this.exitCode = exitCode;
        this.told = told;
    }

    /** A failure told by a phrase. */
    public static Failure of(int exitCode, String key, Object... slots) {
        Said said = Said.of(key, slots);
        return new Failure(exitCode, key, voice -> voice.say(said));
    }

    /** What she may do by hand in a file that could not be edited by key. */
    public static Failure byHand(Path file, ByHand how) {
        Said where = how.keys().isEmpty() ? Said.of("edit.top") : Said.of("edit.under", String.join(", ", how.keys()));
        return of(Exit.COULD_NOT_WRITE, switch (how.deed()) {
            case WRITE, ADD -> "edit.write";
            case WRITE_INSTEAD -> "edit.write-instead";
            case TAKE_OUT -> "edit.take-out";
        }, file.toString(), where, how.text());
    }

    /** A failure with more to tell than a phrase. */
    public static Failure telling(int exitCode, Function<Voice, String> told) {
        return new Failure(exitCode, "", told);
    }

    public int exitCode() {
        return exitCode;
    }

    public String told(Voice voice) {
        return told.apply(voice);
    }
}
