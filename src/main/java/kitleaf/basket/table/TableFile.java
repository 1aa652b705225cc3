package kitleaf.basket.table;

import java.nio.file.Path;
import java.util.Optional;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Source;
import kitleaf.basket.place.SourceReader;
import kitleaf.basket.place.WorkbookName;
import kitleaf.basket.table.workbook.WorkbookText;

/**
 * A table that was found and is not read yet.
 *
 * @param real where it lies
 * @param file what to call its file
 * @param sheet which sheet of a workbook; the first where none is named
 */
public record TableFile(Path real, Path file, Optional<String> sheet) {

    /** What to call it: its file, with the sheet where one is named. */
    public Path name() {
        return sheet.map(named -> file.resolveSibling(file.getFileName() + "#" + named)).orElse(file);
    }

    /** Its text, or nothing and a problem. */
    public Optional<Source> read(Problems problems) {
        return WorkbookName.is(file.toString()) ? WorkbookText.read(real, name(), sheet, problems)
                : SourceReader.table(real, file, problems);
    }
}
