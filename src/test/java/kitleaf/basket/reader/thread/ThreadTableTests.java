package kitleaf.basket.reader.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import kitleaf.basket.Piece;
import kitleaf.basket.reader.BasketReader;
import kitleaf.basket.reader.Written;
import kitleaf.basket.thread.CalledThread;
import kitleaf.basket.thread.Colour;
import kitleaf.basket.thread.StitchCount;
import kitleaf.basket.thread.StitchKind;
import kitleaf.basket.thread.Strands;
import kitleaf.basket.thread.Used;
import kitleaf.words.Said;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThreadTableTests {

    @TempDir
    Path temp;
    private Written written;

    @BeforeEach
    void nameTheFolder() throws IOException {
        written = new Written(Files.createDirectory(temp.resolve("harbour")));
    }

    private List<String> problems(String table) {
        return written.file("pieces/t.csv", table).file("pieces/p.yaml", Written.PIECE + "threads: t.csv\n").problems();
    }

    @Test
    void everyColumnIsReadIntoItsField() {
        List<CalledThread> threads = written.file("pieces/t.csv", """
                \uFEFFcode,name,colour,symbol,skein,strands,share,over,lot,cross,half,tent,quarter,three-quarter,back,double-running,satin,knot,other,other-each
                K12,"Ebb, ""pale"" grey",#6B7F8C,●,cotton,1,12%,1,7 B,1,2,3,4,5,6,7,8,9,10,3 cm

                K13,,,,,,,,,,,,,,,,,,,
                """.replace("\n", "\r\n")).piece(Written.PIECE + "threads: t.csv\n").threads();
        assertEquals(List.of(new CalledThread("K12", Optional.of("Ebb, \"pale\" grey"), Optional.of(new Colour("#6b7f8c")),
                Optional.of("●"), "cotton", Strands.of(1), List.of(
                        StitchCount.of(StitchKind.CROSS, 1), StitchCount.of(StitchKind.HALF, 2), StitchCount.of(StitchKind.TENT, 3),
                        StitchCount.of(StitchKind.QUARTER, 4), StitchCount.of(StitchKind.THREE_QUARTER, 5),
                        StitchCount.of(StitchKind.BACK, 6), StitchCount.of(StitchKind.DOUBLE_RUNNING, 7),
                        StitchCount.of(StitchKind.SATIN, 8), StitchCount.of(StitchKind.KNOT, 9),
                        new StitchCount(StitchKind.OTHER, 10, Optional.empty(), OptionalInt.empty(), OptionalDouble.of(30))),
                OptionalDouble.of(0.12), Optional.empty(), OptionalInt.of(1), Optional.of("7 B"), false),
                new CalledThread("K13", Optional.empty(), Optional.empty(), Optional.empty(), "cotton", Strands.of(2), List.of(),
                        OptionalDouble.empty(), Optional.empty(), OptionalInt.empty(), Optional.empty(), false)), threads);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            cross,CODE,Name                          | 5,K1,Hawser
            Code;Name;Cross                          | K1;Hawser;5
            code~name~cross                          | K1~Hawser~5
            "Code";"Name";"Cross"                    | "K1";"Hawser";"5"
            Thread code,Colour name,Cross stitches   | K1,Hawser,5
            thread,name,crosses                      | K1,Hawser,5
            number,COLOR_NAME,Cross-Stitch           | K1,Hawser,5
            code,Notes,name,(bought),cross           | K1,see list,Hawser,x,5
            code,name,cross,,                        | K1,Hawser,5,,
            code,name,cross                          | K1,Hawser,5,,
            code,"name",cross                        | K1,Hawser,"5"
            Codes,Names,Cross                        | K1,Hawser,5
            """)
    void aTableIsReadHoweverASpreadsheetWritesIt(String header, String row) {
        for (String end : List.of("\n", "\r\n", "\r")) {
            String table = (header + end + row + end + (header.contains(";") ? ";;" : header.contains("~") ? "~~" : ",,") + end + end).replace('~', '\t');
            assertEquals(List.of(new CalledThread("K1", Optional.of("Hawser"), Optional.empty(), Optional.empty(), "cotton", Strands.of(2),
                    List.of(StitchCount.of(StitchKind.CROSS, 5)), OptionalDouble.empty(), Optional.empty(), OptionalInt.empty(), Optional.empty(), false)),
                    written.file("pieces/t.csv", table).piece(Written.PIECE + "threads: t.csv\n").threads(), table);
        }
    }

    @Test
    void everyHeadingThatIsUnderstoodMeansItsColumn() {
        String header = "Thread number;Thread_Name;Hex color;Chart symbol;Put-up;Strand;Percentage;Over threads;Dye lot;Crosses;Half stitch;TENTS;"
                + "quarter stitches;Three quarter;Backstitches;Double Running Stitch;satin;French knots;Other stitches;each;Cross worked;Satin_span;"
                + "used skeins;Used stitches";
        String row = "K12;Ebb;#6b7f8c;●;cotton;1;12,5 %;1;7 B;1;2;3;4;5;6;7;8;9;10;3,5 cm;singly;6;1,25;3000";
        assertEquals(List.of(new CalledThread("K12", Optional.of("Ebb"), Optional.of(new Colour("#6b7f8c")), Optional.of("●"), "cotton", Strands.of(1), List.of(
                        new StitchCount(StitchKind.CROSS, 1, Optional.of(StitchCount.Worked.SINGLY), OptionalInt.empty(), OptionalDouble.empty()),
                        StitchCount.of(StitchKind.HALF, 2), StitchCount.of(StitchKind.TENT, 3),
                        StitchCount.of(StitchKind.QUARTER, 4), StitchCount.of(StitchKind.THREE_QUARTER, 5),
                        StitchCount.of(StitchKind.BACK, 6), StitchCount.of(StitchKind.DOUBLE_RUNNING, 7),
                        new StitchCount(StitchKind.SATIN, 8, Optional.empty(), OptionalInt.of(6), OptionalDouble.empty()),
                        StitchCount.of(StitchKind.KNOT, 9),
                        new StitchCount(StitchKind.OTHER, 10, Optional.empty(), OptionalInt.empty(), OptionalDouble.of(35))),
                OptionalDouble.of(0.125), Optional.of(new Used(1.25, 3000)), OptionalInt.of(1), Optional.of("7 B"), false)),
                written.file("pieces/t.csv", header + "\n" + row + "\n").piece(Written.PIECE + "threads: t.csv\n").threads());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            code,cross,back,strands | K1,2310,120,"cross 2, back 1"
            code,cross,back,strands | K1,2310,120,cross 2; back 1
            code;cross;back;strands | K1;2310;120;cross 2, back 1
            code,cross,back,strands | K1,2310,120,"Cross stitches: 2, Backstitch = 1"
            code,cross,back,strands | K1,2310,120,"back 1, else 2"
            """)
    void strandsByKindStandInOneCell(String header, String row) {
        assertEquals(new Strands(2, Map.of(StitchKind.BACK, 1)), written.file("pieces/t.csv", header + "\n" + row + "\n")
                .piece(Written.PIECE + "threads: t.csv\n").threads().get(0).strands());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            cross two    | "cross two" is not a kind of stitch with its strands; write 2 for all stitches, or each kind with its own, such as cross 2, back 1
            cross 2      | nothing says how many strands "back" is worked with; write back: 1 beside the others, or else: 1 for all that are not named
            cros 2; back 1 | "cros" is not a key of strands; did you mean cross?
            cross 2; back 1; Cross 3 | "cross" stands twice here; keep one of the two
            cross 2; back 1; knot 1 | this thread has no "knot" among its stitches; take knot out, or write how many there are under stitches
            cross 2; back 13 | 13 is out of range; write 1 to 12
            2.5          | "2.5" is not a whole number; write digits only, such as 2
            """)
    void aCellOfStrandsThatSaysNothingIsToldAtItsPlace(String cell, String problem) {
        written.file("pieces/p.yaml", Written.PIECE + "threads: t.csv\n");
        assertEquals(List.of("pieces/t.csv:2:12: " + problem),
                written.file("pieces/t.csv", "code,cross,back,strands\nK1,2310,12," + cell + "\n").problems());
    }

    /** The bytes are from the encodings' own tables: é is E9 in Windows-1252 and U+00E9, € is 80 and U+20AC. */
    @Test
    void aTableIsReadInEveryEncodingSpreadsheetsWrite() {
        byte[] windows = {'c', 'o', 'd', 'e', ',', 'n', 'a', 'm', 'e', '\n', 'K', '1', ',', (byte) 0xE9, (byte) 0x80, '\n'};
        String text = "code,name\nK1,é€\n";
        for (byte[] bytes : List.of(windows, text.getBytes(StandardCharsets.UTF_8), ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8),
                ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE), ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16BE))) {
            assertEquals(Optional.of("é€"), written.file("pieces/t.csv", bytes).piece(Written.PIECE + "threads: t.csv\n").threads().get(0).name());
        }
    }

    @Test
    void lettersThatCannotBeToldForSureAreNotGuessed() {
        written.file("pieces/p.yaml", Written.PIECE + "threads: t.csv\n");
        String utf8 = "pieces/t.csv:2:5: this letter is not in UTF-8; save the file as UTF-8";
        // é in UTF-8, then in Windows-1252: a file put together of two, or damaged.
        assertEquals(List.of(utf8), written.file("pieces/t.csv", new byte[] {'c', 'o', 'd', 'e', '\n', 'K', '1', (byte) 0xC3, (byte) 0xA9, 'x', (byte) 0xE9}).problems());
        assertEquals(List.of(utf8.replace("2:5", "2:3")), written.file("pieces/t.csv",
                new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF, 'c', 'o', 'd', 'e', '\n', 'K', '1', (byte) 0xE9}).problems());
        // 81 stands for nothing in Windows-1252.
        assertEquals(List.of("pieces/t.csv:2:3: this letter is neither in UTF-8 nor in Windows-1252; save the file as UTF-8"),
                written.file("pieces/t.csv", new byte[] {'c', 'o', 'd', 'e', '\n', 'K', (byte) 0xE9, (byte) 0x81}).problems());
        // The upper half of a pair without its lower half.
        assertEquals(List.of("pieces/t.csv:2:2: this letter is not in UTF-16; save the file as UTF-8"), written.file("pieces/t.csv",
                new byte[] {(byte) 0xFF, (byte) 0xFE, 'c', 0, 'o', 0, 'd', 0, 'e', 0, '\n', 0, 'K', 0, 0, (byte) 0xD8, 'x', 0}).problems());
    }

    @Test
    void placesAreThoseOfTheTextAfterItIsDecoded() {
        written.file("pieces/p.yaml", Written.PIECE + "threads: t.csv\n");
        String place = "pieces/t.csv:2:5: \"x\" is not a whole number; write digits only, such as 2310";
        assertEquals(List.of(place), written.file("pieces/t.csv", "\uFEFFcode\tcross\r\nKé1\tx\r\n".getBytes(StandardCharsets.UTF_16LE)).problems());
        assertEquals(List.of(place), written.file("pieces/t.csv", "code;cross\nKé1;x\n".getBytes(Charset.forName("windows-1252"))).problems());
    }

    @Test
    void aMarkInsideACellIsNoQuote() {
        assertEquals(List.of("pieces/t.csv:2:8: \"x\" is not a whole number; write digits only, such as 2310"),
                problems("code;name;cross\nK1;3\"a;x\n"));
    }

    @Test
    void oneTableServesSeveralPiecesAndTheirParts() {
        written.file("all.csv", """
                piece,part,code,cross
                bell,,K1,1
                rope,,K1,2
                bell,Verse,K2,3
                """);
        written.file("pieces/bell.yaml", Written.PIECE + "threads: all.csv\nparts: [{part: Verse, over: 1, threads: all.csv}]\n");
        written.file("pieces/rope.yaml", Written.PIECE.replace("Fog bell", "Rope") + "threads: all.csv\n");
        List<Piece> pieces = written.basket().pieces();
        assertEquals(List.of("K1 1"), told(pieces.get(0).threads()));
        assertEquals(List.of("K2 3"), told(pieces.get(0).parts().get(0).threads()));
        assertEquals(List.of("K1 2"), told(pieces.get(1).threads()));
    }

    private static List<String> told(List<CalledThread> threads) {
        return threads.stream().map(thread -> thread.code() + " " + thread.stitches().get(0).count()).toList();
    }

    @Test
    void aRowThatNobodyTakesIsTold() {
        written.file("all.csv", "piece,part,code\nbell,,K1\nbel,,K2\n");
        written.file("pieces/bell.yaml", Written.PIECE + "threads: all.csv\n");
        assertEquals(List.of("all.csv:3:1: \"bel\" is not a piece of this basket; did you mean bell?"), written.problems());
        written.file("all.csv", "piece,part,code\nbell,,K1\nbell,Verse,K2\n");
        assertEquals(List.of("all.csv:3:1: nobody takes this row: the part \"Verse\" of bell does not name this table, or is not there; "
                + "write threads: all.csv in it, or take the row out"), written.problems());
        written.file("all.csv", "piece,part,code\nbell,,K1\n,,K2\n");
        assertEquals(List.of("all.csv:3:1: this row names no piece, and others do; write the piece's ID in its column piece"), written.problems());
        written.file("all.csv", "part,code\nVerse,K1\n").file("pieces/bell.yaml", Written.PIECE + "threads: all.csv\nparts: [{part: Verse, over: 1, threads: all.csv}]\n");
        assertEquals(List.of("pieces/bell.yaml:4:10: no row of this table is for bell; write its ID in the column piece, and nothing in the column part"), written.problems());
    }

    @Test
    void aTableMayLieAtTheTopOfTheBasket() {
        assertEquals("K1", written.file("tables/t.csv", "code\nK1\n").piece(Written.PIECE + "threads: tables/t.csv\n")
                .threads().get(0).code());
    }

    @Test
    void aTableBesideABarePieceIsRead() {
        written.file("t.csv", "code\nK1\n").file("p.yaml", Written.PIECE + "threads: t.csv\n");
        assertEquals("K1", BasketReader.read(written.folder().resolve("p.yaml")).basket().orElseThrow()
                .pieces().get(0).threads().get(0).code());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            code,nam~K1,x             | pieces/t.csv:1:6: "nam" is not a column of threads; did you mean name?
            cod,name~K1,x             | pieces/t.csv:1:1: "cod" is not a column of threads; did you mean code?
            name,cross~x,1            | pieces/t.csv:1:1: this table has no column code; write column names in the first line, code among them
            code,code~K1,x            | pieces/t.csv:1:6: "code" stands twice here; keep one of the two
            code,,cross~K1,,2         | pieces/t.csv:1:6: this column has no name; name it, or take it out
            code,cross~K1             | pieces/t.csv:2:1: this row has 1 cells under 2 columns; give each row as many cells as the first, in quotes where a cell holds a comma
            code,cross~K1,2,3         | pieces/t.csv:2:1: this row has 3 cells under 2 columns; give each row as many cells as the first, in quotes where a cell holds a comma
            code,cross~K1,"2,310"     | pieces/t.csv:2:4: "2,310" has a mark among its digits; write digits only, as in 2310
            code,name,cross~K1,"a,b",x | pieces/t.csv:2:10: "x" is not a whole number; write digits only, such as 2310
            code,cross~,3             | pieces/t.csv:2:1: this thread has no code; write one, such as code: K12
            code~K1~K1                | pieces/t.csv:3:1: the code "K1" stands twice in this list; give each thread once, or a code of its own
            code,other~K1,3           | pieces/t.csv:2:4: other stitches need both their number and the thread each takes; fill the columns other and other-each, such as 12 and 3 cm
            code,other,other-each~K1,3,3 | pieces/t.csv:2:6: "3" is a bare number; write it with its unit, such as 3 in or 7.5 cm
            code,skein~K1,coton       | pieces/t.csv:2:4: "coton" is not a skein of this basket; did you mean cotton?
            code,nme,cros~K1,x,1      | pieces/t.csv:1:6: "nme" is not a column of threads; did you mean name?~pieces/t.csv:1:10: "cros" is not a column of threads; did you mean cross?
            code,bought~K1,2          | pieces/t.csv:1:6: "bought" is not a column of threads; @; or put it in ( ) to have it passed over
            code,skeins~K1,2          | pieces/t.csv:1:6: "skeins" is not a column of threads; did you mean skein?
            code,thread~K1,x          | pieces/t.csv:1:6: "thread" may mean more than one thing here; write code if that is what it holds, or put it in ( ) to have it passed over
            thread,number~K1,x        | pieces/t.csv:1:1: "thread" may mean more than one thing here; write code if that is what it holds, or put it in ( ) to have it passed over~pieces/t.csv:1:8: "number" may mean more than one thing here; write code if that is what it holds, or put it in ( ) to have it passed over
            code,stitches~K1,20       | pieces/t.csv:1:6: "stitches" does not say of which kind they are; name the column after the stitch, such as cross
            code,colour,Color~K1,,    | pieces/t.csv:1:13: "Color" is the column colour, which stands here already; keep one of the two
            code;name,cross~K1;x,1    | pieces/t.csv:1:1: these columns are parted by a comma here and by a semicolon there; part them all by one, and put a heading that holds the other in quotes
            code;cross~K1;2,5         | pieces/t.csv:2:4: "2,5" is not a whole number; write digits only, such as 2310
            code;cross~K1;2.310       | pieces/t.csv:2:4: "2.310" has a mark among its digits; write digits only, as in 2310
            code;cross~K1;2,310       | pieces/t.csv:2:4: "2,310" has a mark among its digits; write digits only, as in 2310
            code,share~K1,"12,5%"     | pieces/t.csv:2:4: "12,5%" has a decimal comma; write a point, as in 12.5%
            code;name~K1;x;y          | pieces/t.csv:2:1: this row has 3 cells under 2 columns; give each row as many cells as the first, in quotes where a cell holds a semicolon
            code,cross-worked~K1,rows | pieces/t.csv:2:4: this row says how crosses are worked and has none; fill the column cross, or empty cross-worked
            code,satin-span~K1,6      | pieces/t.csv:2:4: this row says what satin stitches span and has none; fill the column satin, or empty satin-span
            code,used-skeins~K1,2     | pieces/t.csv:2:4: what was used needs both the skeins and the stitches they were for; fill the columns used-skeins and used-stitches, such as 1.5 and 3000
            code,cross,cross-worked~K1,2,row | pieces/t.csv:2:6: "row" is not a way to work crosses; did you mean rows?
            code,name~K1,"x"y         | pieces/t.csv:2:1: a quote goes wrong in this row; put a whole cell in " or none of it, and write "" for a " inside
            """)
    void oneFaultIsOneProblemWithItsPlaceInTheTable(String table, String message) {
        String all = "write one of: " + String.join(", ", ThreadTable.COLUMNS);
        assertEquals(List.of(message.replace("@", all).split("~")), problems(table.replace('~', '\n') + "\n"));
    }

    @Test
    void anEmptyTableIsTold() {
        assertEquals(List.of("pieces/t.csv: this table is empty; write a first line of column names, such as code,name,cross"), problems("\n"));
    }

    @Test
    void aQuoteThatIsNeverClosedIsTold() {
        assertEquals(List.of("pieces/t.csv:2:4: this cell does not end on its line; close its \" before the end of the line"),
                problems("code,name\nK1,\"x\nK2,y\n"));
    }

    @Test
    void hostileTablesEndInASentence() {
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            String wide = "; keep at most 200";
            assertEquals(List.of("pieces/t.csv:1:601: this is column 201 of this table" + wide), problems("no,".repeat(300_000) + "code\n"));
            assertEquals(List.of("pieces/t.csv:1:201: this is column 201 of this table" + wide), problems(",".repeat(900_000) + "code\n"));
            assertEquals(List.of("pieces/t.csv:1:1: \"" + "'".repeat(40) + "…\" is not a column of threads; write one of: "
                    + String.join(", ", ThreadTable.COLUMNS) + "; or put it in ( ) to have it passed over",
                    "pieces/t.csv:1:1: this table has no column code; write column names in the first line, code among them"), problems("'".repeat(900_000) + "\n"));
            assertEquals(List.of(), problems("code" + ",".repeat(16_000) + "\n" + "K1" + ",".repeat(12_000) + "\n"));
        });
    }

    @Test
    void linksOutOfTheBasketAreRefused() throws IOException {
        Path outside = Files.writeString(temp.resolve("secret.csv"), "code\nK1\n");
        written.file("pieces/p.yaml", Written.PIECE + "threads: t.csv\n");
        Files.createSymbolicLink(written.folder().resolve("pieces/t.csv"), outside);
        assertEquals(List.of("pieces/p.yaml:4:10: \"t.csv\" is a link that leads out of the basket; put the file itself inside it"),
                written.problems());
    }

    @Test
    void aBarePieceReadsNothingAboveItsFolder() throws IOException {
        Files.createDirectory(written.folder().resolve("sub"));
        written.file("t.csv", "code\nK1\n").file("sub/p.yaml", Written.PIECE + "threads: t.csv\n");
        Files.createSymbolicLink(written.folder().resolve("sub/u.csv"), written.folder().resolve("t.csv"));
        written.file("sub/q.yaml", Written.PIECE + "threads: u.csv\n");
        assertEquals(Said.of("table.no-file.wrong", "t.csv"), BasketReader.read(written.folder().resolve("sub/p.yaml")).problems().get(0).wrong());
        assertEquals(Said.of("table.link.wrong", "u.csv"),
                BasketReader.read(written.folder().resolve("sub/q.yaml")).problems().get(0).wrong());
    }
}
