package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Letter;
import kitleaf.TextBoxes;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sheets of ordinary print in both languages on several papers, read back with PDFBox: no text lies on another and none is cut. */
class EveryPaperTests {

    private static final Path HARBOUR = Path.of("examples/harbour");
    private static final String ELLIPSIS = "…";

    @TempDir
    private Path out;

    /** What is wrong with the pages of the sheets in the folder, told in words. */
    private List<String> faults() throws IOException {
        List<String> faults = new ArrayList<>();
        int pages = 0;
        for (String sheet : Ran.files(out).stream().filter(file -> file.endsWith(".pdf")).toList()) {
            List<List<Letter>> byPage = ReadBack.lettersByPage(Files.readAllBytes(out.resolve(sheet)));
            for (int page = 0; page < byPage.size(); page++) {
                String where = sheet + ", page " + (page + 1) + ": ";
                TextBoxes.overlaps(byPage.get(page)).forEach(overlap -> faults.add(where + overlap));
                String text = byPage.get(page).stream().map(Letter::text).collect(Collectors.joining());
                if (text.contains(ELLIPSIS)) {
                    faults.add(where + "cut in " + text.substring(Math.max(0, text.indexOf(ELLIPSIS) - 30), text.indexOf(ELLIPSIS) + 1));
                }
                pages++;
            }
        }
        assertTrue(pages > 50, "only " + pages + " pages");
        return faults;
    }

    private void print(Path basket, String language, String paper) {
        Ran ran = Ran.kitleaf("print", basket, "--only", "cut-sheets,cloth-plan,bobbin-labels,kit-lists,buy-list,bag-tags,goal-grid,duplex-check",
                "--language", language, "--paper", paper, "--out", out);
        assertEquals("", ran.err(), "nothing is cut short");
        assertEquals(0, ran.code());
    }

    @ParameterizedTest
    @CsvSource({"en,A4", "en,letter", "en,A5", "en,A4 landscape", "de,A4", "de,letter", "de,A5", "de,A4 landscape"})
    void noTextOfTheExampleIsCutOrLiesOnAnother(String language, String paper) throws IOException {
        print(HARBOUR, language, paper);
        assertEquals(List.of(), faults());
    }
}
