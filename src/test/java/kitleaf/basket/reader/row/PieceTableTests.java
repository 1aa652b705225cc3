package kitleaf.basket.reader.row;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import kitleaf.basket.Piece;
import kitleaf.basket.place.BasketWords;
import kitleaf.basket.place.ProblemText;
import kitleaf.basket.reader.BasketReader;
import kitleaf.basket.reader.Written;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A row of a table of pieces is the piece its file would have been. */
class PieceTableTests {

    private static final String ID = "p";

    /** What every piece needs, by column, and the same as YAML; each case sets its own column over these. */
    private static final Map<String, String> NEEDED = Map.of("piece", "Fog bell", "stitches", "140 x 210", "kind", "linen", "count", "36",
            "over", "2");

    /** A cell for each column; the paths say where a file has it. */
    private static final Map<String, String> CELLS = Map.ofEntries(Map.entry("piece", "Lamp"), Map.entry("designer", "Ansel Ferry"),
            Map.entry("stitches", "75 x 91"), Map.entry("margin", "7 cm"), Map.entry("finish", "framed"), Map.entry("coverage", "70%"),
            Map.entry("source", "Quarterly 14"), Map.entry("bag", "blue bag"), Map.entry("threads", "t.csv"), Map.entry("cloth", "Oyster"),
            Map.entry("kind", "evenweave"), Map.entry("count", "28"), Map.entry("over", "1"), Map.entry("shrink", "3%"),
            Map.entry("counted", "before"), Map.entry("warp", "across"), Map.entry("over-dyed", "yes"), Map.entry("cut", "yes"),
            Map.entry("count-warp", "36"), Map.entry("count-weft", "38"), Map.entry("shrink-warp", "2%"), Map.entry("shrink-weft", "3%"),
            Map.entry("margin-top", "3 in"), Map.entry("margin-right", "2 in"), Map.entry("margin-bottom", "8 cm"), Map.entry("margin-left", "1 in"),
            Map.entry("started", "2026-02-14"), Map.entry("stitched", "2026-03-02"), Map.entry("finished", "2026-03-06"), Map.entry("done", "45%"),
            Map.entry("must", "yes"), Map.entry("by", "2027-06-30"), Map.entry("weight", "3"));

    /** Columns that go together. */
    private static final List<List<String>> TOGETHER = List.of(List.of("count-warp", "count-weft"), List.of("shrink-warp", "shrink-weft"),
            List.of("margin-top", "margin-right", "margin-bottom", "margin-left"), List.of("shrink", "counted"),
            List.of("started", "stitched", "finished"));

    @TempDir
    private Path temp;
    private Written written;

    @BeforeEach
    void nameTheFolder() throws IOException {
        written = new Written(Files.createDirectory(temp.resolve("harbour")));
        written.file("t.csv", "code,cross\nK12,500\n");
    }

    private List<Piece> pieces(String table) {
        return written.file("pieces.csv", table).basket().pieces();
    }

    private List<String> problems(String table) {
        return written.file("pieces.csv", table).problems().stream().filter(problem -> !problem.contains("t.csv")).toList();
    }

    @Test
    void noColumnIsForgotten() {
        assertEquals(new TreeSet<>(PieceColumns.PATHS.keySet()), new TreeSet<>(CELLS.keySet()));
    }

    @Test
    void eachColumnGivesWhatItsKeyGives() throws IOException {
        for (String column : PieceColumns.PATHS.keySet()) {
            Map<String, String> cells = new TreeMap<>(NEEDED);
            TOGETHER.stream().filter(group -> group.contains(column)).findFirst().orElse(List.of(column)).forEach(one -> {
                cells.put(one, CELLS.get(one));
                if (one.endsWith("-warp") || one.endsWith("-weft")) {
                    cells.remove(one.replaceAll("-we?.*", ""));
                }
            });
            Map<String, Object> tree = new TreeMap<>();
            cells.forEach((name, cell) -> put(tree, PieceColumns.PATHS.get(name), cell));
            Piece file = written.file("pieces/" + ID + ".yaml", tree.toString().replace("=", ": ")).basket().pieces().get(0);
            Files.delete(written.folder().resolve("pieces/" + ID + ".yaml"));
            Piece row = pieces("id," + String.join(",", cells.keySet()) + "\n" + ID + "," + String.join(",", cells.values()) + "\n").get(0);
            Files.delete(written.folder().resolve("pieces.csv"));
            assertEquals(file, row, column);
        }
    }

    @SuppressWarnings("unchecked")
    private static void put(Map<String, Object> tree, List<String> path, String cell) {
        if (path.size() == 1) {
            tree.put(path.get(0), cell);
        } else {
            put((Map<String, Object>) tree.computeIfAbsent(path.get(0), absent -> new TreeMap<String, Object>()), path.subList(1, path.size()), cell);
        }
    }

    @Test
    void withoutAnIdItIsMadeOfTheTitle() {
        assertEquals(List.of("fog-bell", "mine", "tide-table"), pieces("Title,ID,Wide,High,Kind,Count,Over\nFog bell,,140,210,linen,36,2\n"
                + "Lamp,mine,140,210,linen,36,2\nTide table!,,140,210,linen,36,2\n").stream().map(Piece::id).toList());
    }

    @Test
    void howFarOnADayIsAReadingAndAStateHoldsFromIt() {
        String yaml = "piece: Fog bell\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\nprogress: {started: 2026-01-05,"
                + " readings: [{on: 2026-03-01, done: 45%}], states: [{on: 2026-04-01, is: resting}]}\n";
        Piece file = written.file("pieces/fog-bell.yaml", yaml).basket().pieces().get(0);
        assertTrue(written.folder().resolve("pieces/fog-bell.yaml").toFile().delete());
        assertEquals(file, pieces("Title,Stitches,Kind,Count,Over,Started,Done,As of,Status,Since\n"
                + "Fog bell,140 x 210,linen,36,2,2026-01-05,45%,2026-03-01,On hold,2026-04-01\n").get(0));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            piece,stitches,wide,high,kind,count;a,9 x 9,8,8,linen,36 | 2:3: stitches is told in two ways in this row; keep one of them
            piece,wide,high,kind,count;a,8,,linen,36 | 2:3: wide and high go together; write both, in stitches
            piece,wide,high,margin,margin-top,kind,count;a,8,8,3 in,2 in,linen,36 | 2:12: margin-top is told in two ways in this row; keep one of them
            piece,wide,high,done-on,kind,count;a,8,8,2026-01-01,linen,36 \
            | 2:7: this row says on which day, but not how far; write how far in its column done, such as 45%
            piece,wide,high,state,kind,count;a,8,8,resting,linen,36 \
            | 2:7: since when it is resting is not told; write the day in a column since, such as 2026-05-01
            piece,wide,high,status,kind,count;a,8,8,Finished,linen,36 \
            | 2:7: since when it is Finished is not told; write the day in a column finished, such as 2026-05-01
            """)
    void whatGoesWrongInARowIsToldAtItsCell(String table, String told) {
        assertEquals(List.of("pieces.csv:" + told), problems(table.replace(';', '\n') + "\n"));
    }

    @Test
    void whatEveryRowLacksIsToldOnce() {
        assertEquals(List.of("pieces.csv: no row of this table says how large its chart is;"
                + " add the columns wide and high with stitches, or one named stitches with both, such as 140 x 210",
                "pieces.csv: no row of this table says what its piece is stitched on;"
                + " add the columns kind, count and over, or one named cloth with the name of a cloth on hand"), problems("Title\na\nb\nc\n"));
    }

    @Test
    void aPieceInATableAndInAFileIsOneTooMany() {
        written.file("pieces/fog-bell.yaml", Written.PIECE);
        List<String> told = problems("Title,Wide,High,Kind,Count,Over\nFog bell,140,210,linen,36,2\n");
        assertEquals(2, told.size(), told::toString);
        assertTrue(told.get(0).startsWith("pieces.csv:2:1: the ID \"fog-bell\" is also that of the piece in "), told::toString);
        assertTrue(told.get(1).startsWith("pieces.csv:2:1: the title \"Fog bell\" is also that of the piece in "), told::toString);
    }

    @Test
    void germanIsSpokenToWhoAsksForIt() {
        written.file("pieces.csv", "piece,wide,high,kind,count\na,8,,linen,36\n");
        assertEquals(List.of("2:3: wide und high gehören zusammen; "), BasketReader.read(written.folder()).problems().stream()
                .filter(problem -> !problem.remark()).map(problem -> ProblemText.render(problem, BasketWords.in(Locale.GERMAN)).split("\n")[0])
                .map(text -> text.replaceAll(".*pieces.csv:|(?<=; ).*", "")).toList());
    }

    @Test
    void rowsOfTheLogAreEveningsAndReadingsOfFilesAndRowsAlike() {
        written.file("pieces/lamp.yaml", Written.PIECE.replace("Fog bell", "Lamp") + "progress: {log: [{on: 2026-01-01, hours: 1, stitches: 90}]}\n");
        written.file("log.csv", "Day,Project,Hours,Stitches,Done,Notes\n2026-02-01,fog-bell,2,200,,at the window\n2026-02-02,FOG BELL,1,100,45%,\n"
                + "2026-02-03,Lamp,1.5,150,,\n2026-02-04,lamp,,,60%,\n");
        List<Piece> pieces = pieces("Title,Wide,High,Kind,Count,Over\nFog bell,140,210,linen,36,2\n");
        Stream.of(0, 1).forEach(i -> assertEquals(List.of("fog-bell", "lamp").get(i), pieces.get(i).id()));
        // Two evenings, the second a reading too; one evening of the file and one of the table, and a reading that is no evening.
        assertEquals(List.of("2026-02-01 2.0 200 at the window", "2026-02-02 1.0 100 "), evenings(pieces.get(0)));
        assertEquals(List.of("2026-01-01 1.0 90 ", "2026-02-03 1.5 150 "), evenings(pieces.get(1)));
        assertEquals(List.of("2026-02-02", "2026-02-04"), pieces.stream().flatMap(piece -> piece.progress().readings().stream())
                .map(reading -> reading.on().toString()).toList());
    }

    private static List<String> evenings(Piece piece) {
        return piece.progress().log().stream().map(entry -> entry.on() + " " + entry.hours().getAsDouble() + " " + entry.stitches().getAsInt() + " "
                + entry.note().orElse("")).toList();
    }

    @Test
    void rowsOfTheLogForNobodyOrForTwoAreToldAtTheirName() {
        written.file("log.csv", "day,piece,hours\n2026-02-01,fog-bel,2\n2026-02-01,lamp,2\n2026-02-03,,2\n2026-02-31,bell,2\n");
        List<String> told = problems("ID,Title,Wide,High,Kind,Count,Over\nfog-bell,Lamp,140,210,linen,36,2\nlamp,Other,140,210,linen,36,2\n"
                + "bell,Bell,140,210,linen,36,2\n");
        assertEquals(List.of("log.csv:2:12", "log.csv:3:12", "log.csv:4:1", "log.csv:5:1"), told.stream().map(one -> one.split(": ")[0]).sorted().toList());
        assertTrue(told.stream().anyMatch(one -> one.startsWith("log.csv:3:12: \"lamp\" is the ID of one piece and the title of another;")), told::toString);
        assertTrue(told.stream().anyMatch(one -> one.startsWith("log.csv:2:12: ") && one.contains("fog-bell")), told::toString);
    }
}
