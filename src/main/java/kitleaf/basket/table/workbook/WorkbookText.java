package kitleaf.basket.table.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import kitleaf.basket.place.Advice;
import kitleaf.basket.place.Fault;
import kitleaf.basket.place.Problems;
import kitleaf.basket.place.Quote;
import kitleaf.basket.place.Source;
import kitleaf.basket.place.SourceReader;
import kitleaf.basket.place.WorkbookName;
import kitleaf.words.Said;

/** Reads a sheet of a workbook as the text of a table. Dates, percentages and numbers are written as she would type them. */
public final class WorkbookText {

    /** The largest file taken. */
    static final long MOST_BYTES = 10_000_000;

    private WorkbookText() { }

    /**
     * The text of a sheet, or nothing and a problem.
     *
     * @param real where the workbook really lies
     * @param name what to call it
     * @param sheet which sheet; the first where none is named
     */
    public static Optional<Source> read(Path real, Path name, Optional<String> sheet, Problems problems) {
        try {
            if (!Files.isRegularFile(real, LinkOption.NOFOLLOW_LINKS)) {
                throw Fault.of("workbook.none");
            }
            if (Files.size(real) > MOST_BYTES) {
                throw Fault.of("workbook.large");
            }
            try (Parts parts = new Parts(real)) {
                boolean ods = WorkbookName.file(name.toString()).toLowerCase(Locale.ROOT).endsWith(".ods");
                Cells cells = ods ? new OdsSheet(parts).read(sheet) : new XlsxSheet(parts).read(sheet);
                return SourceReader.seen(cells.source(name, problems), problems);
            }
        } catch (Fault fault) {
            problems.add(name, fault);
        } catch (Parts.TooLarge e) {
            problems.add(name, Fault.of("workbook.large"));
        } catch (IOException e) {
            problems.add(name, Fault.of("workbook.none"));
        }
        return Optional.empty();
    }

    /** The name of the sheet that is meant. */
    static String sheet(Collection<String> sheets, Optional<String> named) throws Fault {
        if (sheets.isEmpty()) {
            throw Fault.of("workbook.none");
        }
        String sheet = named.orElse(sheets.iterator().next());
        return sheets.stream().filter(one -> one.strip().equalsIgnoreCase(sheet.strip())).findFirst()
                .orElseThrow(() -> Fault.of(Said.of("workbook.no-sheet", Quote.bare(sheet)), Advice.on(sheet, sheets)));
    }
}
