package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitleaf.ReadBack;
import kitleaf.ReadBack.Letter;
import kitleaf.TextBoxes;
import kitleaf.sheet.page.SheetKind;
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
        Ran ran = Ran.kitleaf("print", basket, "--all", "--only", Stream.of(SheetKind.values()).map(SheetKind::id).collect(Collectors.joining(",")),
                "--language", language, "--paper", paper, "--out", out);
        assertEquals("", ran.err(), "nothing is cut short");
        assertEquals(0, ran.code());
    }

    /** Of the lines of tags, those of the bars among them, none goes through a word; nor is a word too near the edge. */
    @ParameterizedTest
    @CsvSource({"en,folded", "en,long-edge", "en,short-edge", "de,folded", "de,long-edge", "de,short-edge"})
    void noLineGoesThroughTheWordsOfTagsOnSmallPaper(String language, String sides) throws IOException {
        Path basket = Ran.basket(out.resolve("b"), "tags: {sides: " + sides + "}\n",
                "piece: Groyne\nstitches: 80 x 80\ncloth: {kind: linen, count: {warp: 71 in 2 in, weft: 145 in 10 cm}, over: 2}\n"
                + "threads: [{code: Sondergarn-2047-B, stitches: {cross: 100}}, {code: K12, stitches: {cross: 100}}]\n");
        Ran ran = Ran.kitleaf("print", basket, "--only", "bag-tags", "--language", language, "--paper", "A5", "--out", out);
        assertEquals("", ran.err(), "nothing is cut short");
        byte[] pdf = Files.readAllBytes(out.resolve("bag-tags.pdf"));
        for (int page = 1; page <= ReadBack.pages(pdf); page++) {
            List<Letter> words = ReadBack.letters(pdf, page).stream().filter(letter -> !letter.text().equals("✂")).toList();
            assertTrue(words.size() > 40, words.size() + " letters");
            assertEquals(List.of(), TextBoxes.struck(words, ReadBack.drawn(pdf, page)), "page " + page);
            assertEquals(List.of(), TextBoxes.nearEdge(words, 148, 210, 8), "page " + page);
            assertEquals(List.of(), TextBoxes.overlaps(words), "page " + page);
        }
    }

    /**
     * By hand: 30 stitches over two of 36 are 1 2/3 in; with an inch at each side rounded up, the design of a bookmark begins about
     * 26 mm from the edge, and in 26 - 12 mm no line holds both units at 6 pt.
     */
    @ParameterizedTest
    @CsvSource({"en,A4,1 1⁄16 in", "en,A5,1 1⁄16 in", "de,A4,'2,6 cm'", "de,A5,'2,6 cm'"})
    void theLengthsOfANarrowPieceAreWrittenWhole(String language, String paper, String margin) throws IOException {
        Path basket = Ran.basket(out.resolve("b"), "cut-step: 0.5 cm\n",
                "piece: Bookmark\nstitches: 30 x 160\ncloth: {kind: linen, count: 36, over: 2}\nfinish: bookmark\n");
        Ran ran = Ran.kitleaf("print", basket, "--all", "--only", "cut-sheets", "--language", language, "--paper", paper, "--out", out);
        assertEquals("", ran.err(), "nothing is cut short");
        byte[] pdf = Files.readAllBytes(out.resolve("cut-sheets.pdf"));
        int pages = ReadBack.pages(pdf);
        assertTrue(ReadBack.text(pdf, pages).contains(margin), ReadBack.text(pdf, pages));
        for (int page = 1; page <= pages; page++) {
            assertEquals(List.of(), TextBoxes.overlaps(ReadBack.letters(pdf, page)), "page " + page);
        }
    }

    /** A compound of forty letters and more in the title, the designer, the cloth and the basket's name. */
    @ParameterizedTest
    @CsvSource({"A4", "A5", "A4 landscape"})
    void longGermanNamesTakeASecondLineInHeadsAndFeet(String paper) throws IOException {
        Path basket = Ran.basket(out.resolve("b"), "language: de\ntitle: Donnerstagabendhandarbeitskränzchen im Gemeindehaus\nprices: {cotton: 1.20 EUR}\n",
                "piece: Donaudampfschifffahrtsgesellschaftskapitänsstammbaum zur goldenen Hochzeit\n"
                + "designer: Friederike von Kleinschmidt-Oberlengenfeldt\nstitches: 120 x 90\n"
                + "cloth: {name: Meerdunstblaugrau handgefärbt vom Sommermarkt, kind: linen, count: {warp: 71 in 2 in, weft: 145 in 10 cm}, over: 2}\n"
                + "threads: [{code: K12, name: Nordseewellenkammdunkelblaugrauviolettblass, stitches: {cross: 900}}]\n");
        Ran ran = Ran.kitleaf("print", basket, "--all", "--only", "cut-sheets,kit-lists,buy-list,bag-tags,duplex-check", "--paper", paper, "--out", out);
        assertEquals("", ran.err(), "nothing is cut short");
        for (String sheet : Ran.files(out).stream().filter(file -> file.endsWith(".pdf")).toList()) {
            for (List<Letter> page : ReadBack.lettersByPage(Files.readAllBytes(out.resolve(sheet)))) {
                assertEquals(List.of(), TextBoxes.overlaps(page), sheet);
            }
        }
    }

    /** A hundred letters and more in the title of a piece and, where the foot holds two lines, in the basket's. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"en; A4; ", "de; A4; ", "en; letter; ", "en; A5; goal-grid", "de; A5; goal-grid", "en; A4; large", "en; A5; bag-tags",
        "de; A5; cut-sheets"})
    void veryLongTitlesTakeTheLinesTheyNeed(String language, String paper, String only) throws IOException {
        boolean large = "large".equals(only);
        String title = "The very long and winding band of the keeper of the light" + (paper.equals("A5") ? "" : " and of her eleven seafaring daughters");
        String basketTitle = paper.equals("A5") ? "Net loft" : "The evening table of the second and fourth Thursday in the back room of the old net loft on the quay";
        Path basket = Ran.basket(out.resolve("b"), "title: " + basketTitle + "\npace: {stitches-per-hour: 100, hours-per-week: 10}\ngoals: {year: 2027, choose: 2}\n",
                "piece: " + title + "\nstitches: 120 x 90\ncloth: {name: Spray, kind: linen, count: 36, over: 2}\nmargin: 2 in\ncoverage: 3000\n"
                + "threads: [{code: K12, name: Kelp, stitches: {cross: 900}}]\n---\n"
                + "piece: Groyne\nstitches: 70 x 60\ncloth: {kind: linen, count: 36, over: 2}\nmargin: 2 in\ncoverage: 2000\n");
        Ran ran = Ran.kitleaf("print", basket, "--all", "--only", only == null || large ? "cut-sheets,bobbin-labels,kit-lists,buy-list,bag-tags,goal-grid" : only, "--paper", paper,
                "--language", language, "--as-of", "2027-01-01", "--out", out, large ? "--large" : "--most-pages=20000");
        assertEquals("", ran.err(), "nothing is cut short");
        for (String sheet : Ran.files(out).stream().filter(file -> file.endsWith(".pdf")).toList()) {
            int number = 0;
            for (List<Letter> page : ReadBack.lettersByPage(Files.readAllBytes(out.resolve(sheet)))) {
                number++;
                assertEquals(List.of(), TextBoxes.overlaps(page), sheet + ", page " + number);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"en,A4", "en,letter", "en,A5", "en,A4 landscape", "de,A4", "de,letter", "de,A5", "de,A4 landscape"})
    void noTextOfTheExampleIsCutOrLiesOnAnother(String language, String paper) throws IOException {
        print(HARBOUR, language, paper);
        assertEquals(List.of(), faults());
    }
}
