package kitleaf.basket;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A table that was found and is not read yet.
 *
 * @param real where it lies
 * @param name what to call it
 */
record TableFile(Path real, Path name) {

    /** Its text, or nothing and a problem. */
    Optional<Source> read(Problems problems) {
        return SourceReader.table(real, name, problems);
    }
}
