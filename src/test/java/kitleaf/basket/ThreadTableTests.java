package kitleaf.basket;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
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
                Optional.of("●"), "cotton", 1, List.of(
                        StitchCount.of(StitchKind.CROSS, 1), StitchCount.of(StitchKind.HALF, 2), StitchCount.of(StitchKind.TENT, 3),
                        StitchCount.of(StitchKind.QUARTER, 4), StitchCount.of(StitchKind.THREE_QUARTER, 5),
                        StitchCount.of(StitchKind.BACK, 6), StitchCount.of(StitchKind.DOUBLE_RUNNING, 7),
                        StitchCount.of(StitchKind.SATIN, 8), StitchCount.of(StitchKind.KNOT, 9),
                        new StitchCount(StitchKind.OTHER, 10, Optional.empty(), OptionalInt.empty(), OptionalDouble.of(30))),
                OptionalDouble.of(0.12), Optional.empty(), OptionalInt.of(1), Optional.of("7 B")),
                new CalledThread("K13", Optional.empty(), Optional.empty(), Optional.empty(), "cotton", 2, List.of(),
                        OptionalDouble.empty(), Optional.empty(), OptionalInt.empty(), Optional.empty())), threads);
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
            code;name~K1;x            | pieces/t.csv:1:1: these columns are parted by semicolons; save the table with commas between columns
            code,cross~K1             | pieces/t.csv:2:1: this row has 1 cells under 2 columns; give each row as many cells as the first, in quotes where a cell holds a comma
            code,cross~K1,2,3         | pieces/t.csv:2:1: this row has 3 cells under 2 columns; give each row as many cells as the first, in quotes where a cell holds a comma
            code,cross~K1,"2,310"     | pieces/t.csv:2:4: "2,310" has a mark among its digits; write digits only, as in 2310
            code,name,cross~K1,"a,b",x | pieces/t.csv:2:10: "x" is not a whole number; write digits only, such as 2310
            code,cross~,3             | pieces/t.csv:2:1: this thread has no code; write code: K12
            code~K1~K1                | pieces/t.csv:3:1: the code "K1" stands twice in this list; give each thread once, or a code of its own
            code,other~K1,3           | pieces/t.csv:2:4: other stitches need both their number and the thread each takes; fill the columns other and other-each, such as 12 and 3 cm
            code,other,other-each~K1,3,3 | pieces/t.csv:2:6: "3" is a bare number; write it with its unit, such as 3 in or 7.5 cm
            code,skein~K1,coton       | pieces/t.csv:2:4: "coton" is not a skein of this basket; did you mean cotton?
            code,name~K1,"x"y         | pieces/t.csv:2:1: a quote goes wrong in this row; put a whole cell in " or none of it, and write "" for a " inside
            """)
    void oneFaultIsOneProblemWithItsPlaceInTheTable(String table, String message) {
        assertEquals(List.of(message), problems(table.replace('~', '\n') + "\n"));
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
        assertEquals("there is no file \"t.csv\"", BasketReader.read(written.folder().resolve("sub/p.yaml")).problems().get(0).wrong());
        assertEquals("\"u.csv\" is a link that leads out of the basket",
                BasketReader.read(written.folder().resolve("sub/q.yaml")).problems().get(0).wrong());
    }
}
