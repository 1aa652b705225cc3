package kitleaf.command.printing;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import kitleaf.command.speech.Voice;
import kitleaf.press.PressReport;
import kitleaf.sheet.page.SheetKind;
import kitleaf.words.Shown;

/**
 * A file that was written, or several that belong together.
 *
 * @param file where it lies, or the first of them
 * @param report how the pressing of a sheet went; empty for a table and for pictures
 * @param last the last of several
 */
public record Printed(Path file, Optional<PressReport> report, Optional<Path> last) {

    Printed(Path file, PressReport report) {
        this(file, Optional.of(report), Optional.empty());
    }

    Printed(Path file) {
        this(file, Optional.empty(), Optional.empty());
    }

    /** Where it lies and how much it is. */
    public String told(Voice voice) {
        String files = last.map(end -> voice.say("print.files", file.toString(), end.getFileName().toString()))
                .orElse(Shown.inOneLine(file.toString()));
        return report.map(pressed -> pressed.pages() == 1 ? voice.say("print.pages.one", files)
                : voice.say("print.pages.many", files, pressed.pages())).orElse(files);
    }

    /** Whether it is the PDF of a sheet. */
    public boolean is(SheetKind kind) {
        return file.endsWith(kind.id() + ".pdf");
    }

    /** What to warn of: how it was pressed, one warning a cause. */
    public List<String> warnings(Voice voice) {
        return report.stream().flatMap(it -> it.warningsByCause().stream()).map(voice::sayForPress).toList();
    }
}
