package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is told of a piece of a table goes into the table of the log. Every line is written out by hand, by RFC 4180. */
class LogTableCommandTests {

    private static final String PIECES = "id,title,stitches,kind,count\ngroyne,Groyne,140 x 210,block,14\nbuoy,Buoy,50 x 60,block,14\n";

    @TempDir
    private Path folder;

    @BeforeEach
    void pieces() throws IOException {
        Files.writeString(folder.resolve("pieces.csv"), PIECES);
    }

    private Path log() {
        return folder.resolve("log.csv");
    }

    private Ran tell(String... more) {
        Object[] all = new Object[5 + more.length];
        System.arraycopy(new Object[] {"log", folder, "groyne", "--on", "2026-03-05"}, 0, all, 0, 5);
        System.arraycopy(more, 0, all, 5, more.length);
        return Ran.kitleaf(all);
    }

    @Test
    void theFirstLineMakesTheTable() throws IOException {
        Ran ran = tell("--stitches", "260", "--hours", "2.5", "--note", "fog, then sun");
        assertEquals(0, ran.code(), ran.err());
        assertEquals("day,piece,hours,stitches,done,unpicked,note\r\n2026-03-05,groyne,2.5,260,,,\"fog, then sun\"\r\n",
                Files.readString(log()));
        assertEquals(PIECES, Files.readString(folder.resolve("pieces.csv")));
        assertEquals(0, tell("--done", "45%").code());
        assertTrue(Files.readString(log()).endsWith("sun\"\r\n2026-03-05,groyne,,,45%,,\r\n"), Files.readString(log()));
    }

    @Test
    void hersKeepsItsColumnsSignsLettersAndLineBreaks() throws IOException {
        Charset windows = Charset.forName("windows-1252");
        String before = "Piece;Note;Hours;Stitches;Date\nbuoy;K\u00e4lte;1,5;90;2026-03-01";
        Files.writeString(log(), before, windows);
        Ran ran = tell("--stitches", "260", "--hours", "2.5", "--note", "N\u00e4sse");
        assertEquals(0, ran.code(), ran.err());
        assertEquals(before + "\ngroyne;N\u00e4sse;2,5;260;2026-03-05\n", Files.readString(log(), windows));
    }

    private void refused(String said, String... more) throws IOException {
        String before = Files.exists(log()) ? Files.readString(log()) : "";
        Ran ran = tell(more);
        assertEquals(2, ran.code(), ran.err());
        assertTrue(ran.err().contains(said), ran.err());
        assertEquals(before, Files.exists(log()) ? Files.readString(log()) : "");
    }

    @Test
    void whatCannotBeWrittenThereIsRefused() throws IOException {
        refused("which is never written", "--stitched");
        refused("more than 1000 an hour", "--stitches", "5000", "--hours", "1");
        Files.writeString(log(), "day,piece,hours\n2026-03-01,buoy,1\n");
        refused("has no column stitches", "--stitches", "260", "--hours", "2");
        Files.writeString(folder.resolve("pieces.csv"), "id,title,stitches,kind,count,done\n"
                + "groyne,Groyne,140 x 210,block,14,45%\nbuoy,Buoy,50 x 60,block,14,\n");
        refused("45% of \"groyne\" has no day", "--hours", "2");
    }
}
