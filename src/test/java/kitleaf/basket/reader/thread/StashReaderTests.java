package kitleaf.basket.reader.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import kitleaf.basket.reader.BasketReader;
import kitleaf.basket.reader.Written;
import kitleaf.basket.thread.StashEntry;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StashReaderTests {

    @TempDir
    Path temp;
    private Written written;

    @BeforeEach
    void nameTheFolder() throws IOException {
        written = new Written(Files.createDirectory(temp.resolve("harbour"))).file("pieces/p.yaml", Written.PIECE);
    }

    private static final List<StashEntry> READ = List.of(
            new StashEntry("K12", "cotton", 1.5, Optional.of("7")),
            new StashEntry("K12", "cotton", 1, Optional.empty()),
            new StashEntry("K12", "silk", 0.25, Optional.of("7")),
            new StashEntry("0010", "cotton", 1000, Optional.empty()));

    @Test
    void everyKeyIsReadIntoItsField() {
        assertEquals(READ, written.file("basket.yaml", """
                stash:
                  - {code: K12, skein: cotton, skeins: 1.5, lot: "7"}
                  - {code: K12, skeins: 1}
                  - {code: K12, skein: silk, skeins: .25, lot: 7}
                  - {code: 0010, skeins: 1000}
                skeins: {silk: {length: 5 m, plies: 7}}
                """).basket().stash());
    }

    @Test
    void aTableGivesWhatAListWould() {
        assertEquals(READ, written.file("tables/stash.csv", """
                skeins,code,lot,skein
                1.5,K12,7,cotton
                1,K12,,
                .25,K12,7,silk
                1000,0010,,
                """).file("basket.yaml", "stash: tables/stash.csv\nskeins: {silk: {length: 5 m, plies: 7}}\n").basket().stash());
    }

    @Test
    void withoutAStashThereIsNone() {
        assertEquals(List.of(), written.file("basket.yaml", "units: cm\n").basket().stash());
        assertEquals(List.of(), written.file("basket.yaml", "stash: []\n").basket().stash());
    }

    @Test
    void aStashFromASpreadsheetOfAnotherCountryIsRead() {
        written.file("basket.yaml", "stash: stash.csv\n").file("stash.csv", "Dye lot;Skeins;Thread;Notes\n7 B;1,5;K12;tin\n;2;K13;\n;;;\n");
        assertEquals(List.of(new StashEntry("K12", "cotton", 1.5, Optional.of("7 B")), new StashEntry("K13", "cotton", 2, Optional.empty())),
                written.basket().stash());
    }

    @Test
    void aBarePieceHasTheStashOfItsBasket() {
        written.file("basket.yaml", "stash: stash.csv\n").file("stash.csv", "code,skeins\nK12,2\n");
        assertEquals(List.of(new StashEntry("K12", "cotton", 2, Optional.empty())),
                BasketReader.read(written.folder().resolve("pieces/p.yaml")).basket().orElseThrow().stash());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            stash:                               | 1:1: stash has no value; write one, such as stash: - {code: K12, skein: cotton, skeins: 1.5, lot: "7"}
            stash: 3                             | 1:8: stash needs a list; write it like - {code: K12, skein: cotton, skeins: 1.5, lot: "7"}, or name a .csv file
            stash: [K12]                         | 1:9: this stash entry needs keys with values; write it like - {code: K12, skein: cotton, skeins: 1.5, lot: "7"}
            stash: [{skeins: 1}]                 | 1:9: this stash entry has no code; write one, such as code: K12
            stash: [{code: K12}]                 | 1:9: this stash entry has no skeins; write one, such as skeins: 1.5
            stash: [{code: K12, skens: 1}]       | 1:21: "skens" is not a key of this stash entry; did you mean skeins?
            stash: [{code: K12, skeins: 0}]      | 1:29: 0 is not a number of skeins on hand; write more than 0, up to 1000
            stash: [{code: K12, skeins: -1}]     | 1:29: -1 is not a number of skeins on hand; write more than 0, up to 1000
            stash: [{code: K12, skeins: 1001}]   | 1:29: 1001 is not a number of skeins on hand; write more than 0, up to 1000
            stash: [{code: K12, skeins: two}]    | 1:29: "two" is not a number; write digits, such as 1.5
            stash: [{code: K12, skeins: 1, skein: coton}] | 1:39: "coton" is not a skein of this basket; did you mean cotton?
            stash: [{code: K12, skeins: 1, skein: wool}]  | 1:39: "wool" is not a skein of this basket; write cotton, or add it to skeins in basket.yaml
            stash: [{code: K12, skeins: 1, lot: ""}]      | 1:37: this text is empty; write something, such as 7 B
            stash: [{code: K12, skeins: 1}, {code: K12, skein: cotton, skeins: 2}] | 1:40: "K12" in cotton without a lot stands twice in this stash; write it once, with all its skeins
            stash: [{code: K12, skeins: 1, lot: 7}, {code: K12, skeins: 2, lot: "7"}] | 1:48: "K12" in cotton of lot "7" stands twice in this stash; write it once, with all its skeins
            stash: ../stash.csv                  | 1:8: "../stash.csv" leads out of the basket; name a file inside it, without .. and not from the root of the disk
            stash: stash.csv                     | 1:8: there is no file "stash.csv"; put it beside this file, or name it from the top of the basket
            """)
    void oneFaultIsOneProblem(String settings, String message) {
        assertEquals(List.of("basket.yaml:" + message), written.file("basket.yaml", settings + "\n").problems());
    }

    /** An entry whose skein or lot is in doubt is not also told to be there twice. */
    @Test
    void anEntryThatIsInDoubtIsToldOnce() {
        assertEquals(List.of("basket.yaml:1:61: this text is empty; write something, such as 7 B"),
                written.file("basket.yaml", "stash: [{code: K12, skeins: 1}, {code: K12, skeins: 1, lot: \"\"}]\n").problems());
        assertEquals(List.of("basket.yaml:1:63: \"coton\" is not a skein of this basket; did you mean cotton?"),
                written.file("basket.yaml", "stash: [{code: K12, skeins: 1}, {code: K12, skeins: 1, skein: coton}]\n").problems());
    }

    @Test
    void putUpsThatCannotBeReadMakeNoNoiseInTheStash() {
        assertEquals(List.of("basket.yaml:1:16: this skein has no length; write one, such as length: 8 m"),
                written.file("basket.yaml", "skeins: {silk: {plies: 7}}\nstash: [{code: S04, skein: silk, skeins: 1}]\n").problems());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            code,lot~K12,7             | 1:1: this table has no column skeins; write column names in the first line, skeins among them
            skein,skeins~cotton,7      | 1:1: this table has no column code; write column names in the first line, code among them
            code,skien,skeins~K12,x,1  | 1:6: "skien" is not a column of stash; did you mean skein?
            code,skeins~K12            | 2:1: this row has 1 cells under 2 columns; give each row as many cells as the first, in quotes where a cell holds a comma
            code,skeins~K12,"1,5"      | 2:5: "1,5" has a decimal comma; write a point, as in 1.5
            code,skeins~K12,           | 2:1: this stash entry has no skeins; write one, such as skeins: 1.5
            code,skeins~K12,1~K12,2    | 3:1: "K12" in cotton without a lot stands twice in this stash; write it once, with all its skeins
            code,skeins,skein~K12,1,silk | 2:7: "silk" is not a skein of this basket; write cotton, or add it to skeins in basket.yaml
            """)
    void oneFaultOfATableIsOneProblemWithItsPlaceInTheTable(String table, String message) {
        assertEquals(List.of("stash.csv:" + message), written.file("basket.yaml", "stash: stash.csv\n")
                .file("stash.csv", table.replace('~', '\n') + "\n").problems());
    }

    @Test
    void anEmptyTableIsTold() {
        assertEquals(List.of("stash.csv: this table is empty; write a first line of column names, such as code,skein,skeins,lot"),
                written.file("basket.yaml", "stash: stash.csv\n").file("stash.csv", "\n").problems());
    }

    @Test
    void linksOutOfTheBasketAreRefused() throws IOException {
        Path outside = Files.writeString(temp.resolve("secret.csv"), "code,skeins\nK1,1\n");
        Files.createSymbolicLink(written.folder().resolve("stash.csv"), outside);
        assertEquals(List.of("basket.yaml:1:8: \"stash.csv\" is a link that leads out of the basket; put the file itself inside it"),
                written.file("basket.yaml", "stash: stash.csv\n").problems());
    }
}
