package kitleaf.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitleaf.press.PressReport;
import kitleaf.sheet.SheetKind;

/**
 * A file that was written, or several that belong together.
 *
 * @param file where it lies, or the first of them
 * @param report how the pressing of a sheet went; empty for a table and for pictures
 * @param last the last of several
 * @param notes warnings of what is on it
 */
record Printed(Path file, Optional<PressReport> report, Optional<Path> last, List<String> notes) {

    /** Copies the list. */
    Printed {
        notes = List.copyOf(notes);
    }

    Printed(Path file, PressReport report, List<String> notes) {
        this(file, Optional.of(report), Optional.empty(), notes);
    }

    Printed(Path file) {
        this(file, Optional.empty(), Optional.empty(), List.of());
    }

    /** Whether it is the PDF of a sheet. */
    boolean is(SheetKind kind) {
        return file.endsWith(kind.id() + ".pdf");
    }

    /** All warnings of it: what is on it, and how it was pressed. */
    List<String> warnings() {
        return Stream.concat(notes.stream(), report.stream().flatMap(it -> it.warnings().stream())).toList();
    }
}
