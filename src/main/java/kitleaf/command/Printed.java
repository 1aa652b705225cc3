package kitleaf.command;

import java.nio.file.Path;
import java.util.Optional;
import kitleaf.press.PressReport;

/**
 * A file that was written.
 *
 * @param file where it lies
 * @param report how the pressing of a sheet went; empty for a table
 */
record Printed(Path file, Optional<PressReport> report) {

    Printed(Path file, PressReport report) {
        this(file, Optional.of(report));
    }
}
