package kitleaf.basket.table;

import java.nio.file.Path;
import java.util.Optional;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Source;
import kitleaf.basket.place.SourceReader;

/**
 * A table that was found and is not read yet.
 *
 * @param real where it lies
 * @param name what to call it
 */
public record TableFile(Path real, Path name) {

    /** Its text, or nothing and a problem. */
    public Optional<Source> read(Problems problems) {
        return SourceReader.table(real, name, problems);
    }
}
