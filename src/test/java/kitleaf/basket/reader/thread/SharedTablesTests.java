package kitleaf.basket.reader.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kitleaf.basket.Piece;
import kitleaf.basket.reader.Written;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SharedTablesTests {

    @TempDir
    Path temp;
    private Written written;

    @BeforeEach
    void nameTheFolder() throws IOException {
        written = new Written(Files.createDirectory(temp.resolve("harbour")));
    }

    private static String table(int rows) {
        return "code,cross\n" + IntStream.range(0, rows).mapToObj(row -> "K" + row + ",1\n").collect(Collectors.joining());
    }

    private static String pieces(int number, String threads) {
        return IntStream.range(0, number).mapToObj(one -> Written.PIECE.replace("Fog bell", "Bell " + one) + "threads: " + threads + "\n")
                .collect(Collectors.joining("---\n"));
    }

    @Test
    void piecesThatShareATableShareItsThreadsToo() {
        List<Piece> pieces = written.file("pieces/t.csv", table(30)).file("pieces/p.yaml", pieces(3, "t.csv")).file("pieces/q.yaml", pieces(1, "./t.csv").replace("Bell", "Other"))
                .basket().pieces();
        assertEquals(30, pieces.get(0).threads().size());
        pieces.forEach(piece -> assertSame(pieces.get(0).threads(), piece.threads()));
    }

    @Test
    void partsOfManyPiecesShareTheRowsOfTheirName() {
        List<Piece> pieces = written.file("pieces/t.csv", "part,code\n,K1\nVerse,K2\n")
                .file("pieces/p.yaml", pieces(2, "t.csv\nparts: [{part: Verse, over: 1, threads: t.csv}]")).basket().pieces();
        assertEquals("K1", pieces.get(1).threads().get(0).code());
        assertEquals("K2", pieces.get(1).parts().get(0).threads().get(0).code());
        assertSame(pieces.get(0).parts().get(0).threads(), pieces.get(1).parts().get(0).threads());
    }

    @Test
    void whatIsWrongInATableIsToldOnceAndWhatAPieceMissesInItWithThePiece() {
        written.file("pieces/t.csv", "piece,code,cross,share\np,K1,many,\np-2,K2,,80%\np-2,K3,,80%\np-3,K3,some,\n").file("pieces/p.yaml", pieces(2, "t.csv"))
                .file("pieces/q.yaml", pieces(1, "t.csv").replace("Bell", "Other"));
        assertEquals(List.of(
                "pieces/q.yaml:4:10: no row of this table is for q; write its ID in the column piece, and nothing in the column part",
                "pieces/t.csv:2:6: \"many\" is not a whole number; write digits only, such as 2310",
                "pieces/t.csv:4:9: the shares of this piece's threads are 160% in all, more than the whole; mend them, so that together they are 100% at most",
                "pieces/t.csv:5:1: \"p-3\" is not a piece of this basket; did you mean p-2?"), written.problems());
    }

    @Test
    void sharesOfATableAreHeldAgainstThePartsOfThePieceThatHasThem() {
        written.file("pieces/t.csv", "code,share\nK1,60%\n").file("pieces/p.yaml", pieces(1, "t.csv"))
                .file("pieces/q.yaml", pieces(1, "t.csv\nparts: [{part: Verse, over: 1, threads: [{code: K2, share: 60%}]}]").replace("Bell", "Other"));
        assertEquals(List.of("pieces/q.yaml:5:60: the shares of this piece's threads are 120% in all, more than the whole; mend them, so that together they are 100% at most"),
                written.problems());
    }

    @Test
    void aTableThatCannotBeReadIsToldOnce() {
        written.file("pieces/t.csv", "").file("pieces/p.yaml", pieces(3, "t.csv"));
        assertEquals(List.of("pieces/t.csv: this table is empty; write a first line of column names, such as code,name,cross"), written.problems());
    }

    /** 200 times 5,000 are a million; bobbin labels of a tenth of that are printed. */
    @Test
    void aMillionThreadsAreTakenAndNoMore() {
        written.file("pieces/t.csv", table(5000)).file("pieces/p.yaml", pieces(200, "t.csv"));
        assertEquals(200, written.basket().pieces().size());
        written.file("pieces/q.yaml", pieces(1, "[{code: K1}]").replace("Bell", "Other"));
        assertEquals(List.of(".: its pieces call for more than 1000000 threads in all; part them into several baskets; "
                + "where pieces share a table, give each its own rows with the column piece"), written.problems());
    }

    /** What else is wrong would be told or not as files are read sooner or later. */
    @Test
    void ofThreadsWithoutEndNothingElseIsTold() {
        written.file("pieces/t.csv", table(5000));
        for (int file = 0; file < 60; file++) {
            written.file("pieces/p" + file + ".yaml", pieces(4, "t.csv\nfinish: flown").replace("Bell", "Bell of " + file));
        }
        assertEquals(1, written.problems().size(), written.problems().toString());
    }
}
