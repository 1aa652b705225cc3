package kitleaf.basket.place;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import kitleaf.words.Said;

/**
 * One thing wrong with what she wrote: where, what, and what to write instead, in no language yet. A fault in Kitleaf
 * itself is an exception, never a problem.
 *
 * @param file the file, as she would name it from where she stands
 * @param line from 1; 0 when the whole file or folder is meant
 * @param column from 1, in characters; 0 when {@code line} is 0
 * @param length characters to mark under the source line, 1 or more
 * @param wrong what was found
 * @param write what to write or do instead
 * @param source the source line, where there is one
 * @param remark whether it is told of and nothing is wrong
 */
public record Problem(Path file, int line, int column, int length, Said wrong, Said write, Optional<String> source, boolean remark) {

    /** By file, then line, then column. */
    public static final Comparator<Problem> BY_PLACE = Comparator.comparing((Problem p) -> p.file().toString())
            .thenComparingInt(Problem::line).thenComparingInt(Problem::column);

    /** Refuses places that cannot be. */
    public Problem {
        Objects.requireNonNull(file);
        Objects.requireNonNull(wrong);
        Objects.requireNonNull(write);
        Objects.requireNonNull(source);
        if (line < 0 || column < 0 || length < 1 || (line == 0) != (column == 0)) {
            throw new IllegalArgumentException("no such place: " + line + ":" + column + "+" + length);
        }
    }

    /** Something wrong at a place. */
    public Problem(Path file, int line, int column, int length, Said wrong, Said write, Optional<String> source) {
        this(file, line, column, length, wrong, write, source, false);
    }

    /** What is told of a whole file though nothing is wrong with it. */
    static Problem remark(Path file, Fault told) {
        return new Problem(file, 0, 0, 1, told.wrong(), told.write(), Optional.empty(), true);
    }

    /** A problem with a whole file or folder. */
    static Problem of(Path file, Fault fault) {
        return new Problem(file, 0, 0, 1, fault.wrong(), fault.write(), Optional.empty());
    }
}
