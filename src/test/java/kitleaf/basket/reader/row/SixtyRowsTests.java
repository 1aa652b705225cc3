package kitleaf.basket.reader.row;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import kitleaf.basket.reader.Written;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A table of sixty pieces with twenty slips is told twenty problems, each at its cell, and nothing else. */
class SixtyRowsTests {

    private static final List<String> HEADINGS = List.of("Title", "Wide", "High", "Kind", "Count", "Over", "Margin", "Finish", "Done", "Started",
            "Must", "Wanted by", "Weight");

    /** A slip: in which row below the headings, under which heading, what was typed. Where it is told is the same cell. */
    private record Slip(int row, String heading, String typed) { }

    private static final List<Slip> SLIPS = List.of(new Slip(1, "Wide", "14O"), new Slip(4, "High", "-5"), new Slip(7, "Kind", "lining"),
            new Slip(9, "Count", "3600"), new Slip(12, "Over", "0"), new Slip(15, "Margin", "3 inn"), new Slip(18, "Finish", "framd"),
            new Slip(20, "Done", "145%"), new Slip(23, "Started", "2026-13-01"), new Slip(26, "Must", "perhaps"),
            new Slip(29, "Wanted by", "soon"), new Slip(31, "Weight", "0"), new Slip(33, "Count", "fine"), new Slip(36, "High", "2.5"),
            new Slip(39, "Done", "half"), new Slip(42, "Started", "2026-02-30"), new Slip(45, "Margin", "-1 in"),
            new Slip(50, "Weight", "heavy"), new Slip(55, "Over", "two"), new Slip(60, "Kind", "wool"));

    @TempDir
    private Path temp;
    private Written written;

    @BeforeEach
    void nameTheFolder() throws IOException {
        written = new Written(Files.createDirectory(temp.resolve("harbour")));
    }

    private static List<List<String>> rows(List<Slip> slips) {
        List<List<String>> rows = new ArrayList<>(List.of(HEADINGS));
        IntStream.rangeClosed(1, 60).forEach(row -> {
            List<String> cells = new ArrayList<>(List.of("Mooring " + row, "140", "210", "linen", "36", "2", "3 in", "framed", "10%",
                    "2026-01-05", "no", "2027-06-30", "2"));
            slips.stream().filter(slip -> slip.row() == row).forEach(slip -> cells.set(HEADINGS.indexOf(slip.heading()), slip.typed()));
            rows.add(cells);
        });
        return rows;
    }

    private Written csv(List<Slip> slips) {
        return written.file("pieces.csv", String.join("\n", rows(slips).stream().map(row -> String.join(",", row)).toList()) + "\n");
    }

    private Written xlsx(List<Slip> slips) throws IOException {
        List<List<String>> rows = rows(slips);
        try (OutputStream out = Files.newOutputStream(written.folder().resolve("pieces.xlsx")); Workbook book = new Workbook(out, "E", "1.0")) {
            Worksheet sheet = book.newWorksheet("Mine");
            for (int r = 0; r < rows.size(); r++) {
                for (int c = 0; c < HEADINGS.size(); c++) {
                    String cell = rows.get(r).get(c);
                    if (cell.matches("-?[0-9.]+")) {
                        sheet.value(r, c, new BigDecimal(cell));
                    } else {
                        sheet.value(r, c, cell);
                    }
                }
            }
        }
        return written;
    }

    /** What stands before the first blank: file, row and column. */
    private static List<String> places(List<String> problems) {
        return problems.stream().map(problem -> problem.substring(0, problem.indexOf(": "))).toList();
    }

    @Test
    void withoutSlipsThereAreSixtyPieces() throws IOException {
        assertEquals(60, csv(List.of()).basket().pieces().size());
        Files.delete(written.folder().resolve("pieces.csv"));
        assertEquals(60, xlsx(List.of()).basket().pieces().size());
    }

    @Test
    void twentySlipsOfATextAreTwentyProblems() {
        List<List<String>> rows = rows(SLIPS);
        assertEquals(SLIPS.stream().map(slip -> {
            int before = rows.get(slip.row()).subList(0, HEADINGS.indexOf(slip.heading())).stream().mapToInt(cell -> cell.length() + 1).sum();
            return "pieces.csv:" + (slip.row() + 1) + ":" + (before + 1);
        }).toList(), places(csv(SLIPS).problems()));
    }

    @Test
    void twentySlipsOfAWorkbookAreTwentyProblems() throws IOException {
        assertEquals(SLIPS.stream().map(slip -> "pieces.xlsx:" + (slip.row() + 1) + ":" + (char) ('A' + HEADINGS.indexOf(slip.heading()))).toList(),
                places(xlsx(SLIPS).problems()));
    }

    @Test
    void eachProblemNamesWhatWasTyped() {
        List<String> problems = csv(SLIPS).problems();
        IntStream.range(0, SLIPS.size()).forEach(i -> assertEquals(List.of(true, problems.get(i)),
                List.of(problems.get(i).contains(SLIPS.get(i).typed().replace("-5", "")), problems.get(i))));
    }
}
