package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ThreadsCommandTests {

    private static final String PIECE = "piece: Bell\nstitches: 40 x 40\ncloth: {kind: linen, count: 36, over: 2}\n";

    @TempDir
    private Path folder;

    @Test
    void one_piece_comes_out_with_the_columns_it_fills() throws IOException {
        Ran.basket(folder, "title: B\n", PIECE + "threads: [{code: K1, name: \"Ebb, grey\", symbol: \"=\", stitches: {cross: 12}}, {code: K2, share: 12.5%}]\n"
                + "coverage: 70%\n");
        Ran ran = Ran.kitleaf("threads", folder);
        assertEquals(0, ran.code(), ran.err());
        assertEquals("\"code\",\"name\",\"symbol\",\"skein\",\"strands\",\"share\",\"cross\"\r\n\"K1\",\"Ebb, grey\",\"'=\",\"cotton\",\"2\",\"\",\"12\"\r\n"
                + "\"K2\",\"\",\"\",\"cotton\",\"2\",\"12.5%\",\"\"\r\n", ran.out());
    }

    @Test
    void only_the_pieces_asked_for_come_out() throws IOException {
        Ran.basket(folder, "title: B\n", PIECE + "threads: [{code: K1}]\n");
        Files.writeString(folder.resolve("pieces/rope.yaml"), PIECE.replace("Bell", "Rope") + "threads: [{code: K9}]\n");
        assertEquals("\"piece\",\"code\",\"skein\",\"strands\"\r\n"
                + "\"piece\",\"K1\",\"cotton\",\"2\"\r\n"
                + "\"rope\",\"K9\",\"cotton\",\"2\"\r\n", Ran.kitleaf("threads", folder).out());
        assertEquals("\"code\",\"skein\",\"strands\"\r\n"
                + "\"K9\",\"cotton\",\"2\"\r\n", Ran.kitleaf("threads", folder, "--piece", "rope").out());
    }

    @Test
    void what_comes_out_goes_in_again() throws IOException {
        Ran.basket(folder, "title: B\n", PIECE + "threads: [{code: K1, symbol: \"'=\", stitches: {cross: {count: 9, worked: singly}}, used: {skeins: 1.5, stitches: 30}}]\n");
        String first = Ran.kitleaf("threads", folder).out();
        Files.writeString(folder.resolve("pieces/t.csv"), first);
        Files.writeString(folder.resolve("pieces/piece.yaml"), PIECE + "threads: t.csv\n");
        assertEquals(first, Ran.kitleaf("threads", folder).out());
        assertEquals("\"code\",\"symbol\",\"skein\",\"strands\",\"cross\",\"cross-worked\",\"used-skeins\",\"used-stitches\"\r\n"
                + "\"K1\",\"''=\",\"cotton\",\"2\",\"9\",\"singly\",\"1.5\",\"30\"\r\n", first);
    }

    @Test
    void in_german_cells_are_parted_by_semicolons_and_decimals_follow_a_comma() throws IOException {
        Ran.basket(folder, "language: de\n", PIECE + "threads: [{code: K1, name: \"x;=cmd|a\", symbol: +, used: {skeins: 1.5, stitches: 30}}]\n");
        String first = Ran.kitleaf("threads", folder).out();
        assertEquals("\"code\";\"name\";\"symbol\";\"skein\";\"strands\";\"used-skeins\";\"used-stitches\"\r\n"
                + "\"K1\";\"x;'=cmd|a\";\"'+\";\"cotton\";\"2\";\"1,5\";\"30\"\r\n", first);
        Files.writeString(folder.resolve("pieces/t.csv"), first);
        Files.writeString(folder.resolve("pieces/piece.yaml"), PIECE + "threads: t.csv\n");
        assertEquals(first, Ran.kitleaf("threads", folder).out());
    }

    @Test
    void problems_are_told_and_nothing_comes_out() throws IOException {
        Ran.basket(folder, "title: B\n", PIECE + "threads: [{code: K1, strands: x}]\n");
        Ran ran = Ran.kitleaf("threads", folder);
        assertEquals(1, ran.code());
        assertEquals("", ran.out());
    }
}
