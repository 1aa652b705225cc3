package kitleaf.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitleaf.press.PressReport;
import kitleaf.sheet.page.SheetKind;
import kitleaf.words.Said;
import kitleaf.words.Shown;

/**
 * A file that was written, or several that belong together.
 *
 * @param file where it lies, or the first of them
 * @param report how the pressing of a sheet went; empty for a table and for pictures
 * @param last the last of several
 * @param notes warnings of what is on it
 */
record Printed(Path file, Optional<PressReport> report, Optional<Path> last, List<Said> notes) {

    /** Copies the list. */
    Printed {
        notes = List.copyOf(notes);
    }

    Printed(Path file, PressReport report, List<Said> notes) {
        this(file, Optional.of(report), Optional.empty(), notes);
    }

    Printed(Path file) {
        this(file, Optional.empty(), Optional.empty(), List.of());
    }

    /** Where it lies and how much it is. */
    String told(Voice voice) {
        String files = last.map(end -> voice.say("print.files", file.toString(), end.getFileName().toString()))
                .orElse(Shown.inOneLine(file.toString()));
        return report.map(pressed -> pressed.pages() == 1 ? voice.say("print.pages.one", files)
                : voice.say("print.pages.many", files, pressed.pages())).orElse(files);
    }

    /** Whether it is the PDF of a sheet. */
    boolean is(SheetKind kind) {
        return file.endsWith(kind.id() + ".pdf");
    }

    /** What to warn of: what is on it, and how it was pressed, one warning a cause. */
    List<String> warnings(Voice voice) {
        return Stream.concat(notes.stream().map(voice::say), report.stream().flatMap(it -> it.warningsByCause().stream())
                .map(voice::sayForPress)).toList();
    }
}
