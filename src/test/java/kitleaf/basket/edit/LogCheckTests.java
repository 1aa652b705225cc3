package kitleaf.basket.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import kitleaf.basket.Basket;
import kitleaf.basket.LogEntry;
import kitleaf.basket.Piece;
import kitleaf.basket.reader.BasketReader;
import kitleaf.basket.reader.Written;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogCheckTests {

    private static final LogEntry ENTRY = new LogEntry(LocalDate.of(2026, 3, 5), 2, 9);
    private static final String LOGGED = Written.PIECE + "progress: {log: [{on: 2026-03-05, hours: 2, stitches: 9}]}\n";

    @TempDir
    private Path folder;

    /** What is found logged when the piece reads so afterwards. */
    private Optional<Piece> after(String text) {
        Basket before = new Written(folder.resolve("before")).file("pieces/p.yaml", Written.PIECE).basket();
        Written after = new Written(folder.resolve("after")).file("pieces/p.yaml", text);
        return LogCheck.only(News.of(ENTRY), before.pieces().get(0), before, BasketReader.read(after.folder()));
    }

    @Test
    void oneEntryMoreAndNothingElsePasses() {
        assertEquals(Optional.of(new Written(folder.resolve("wanted")).piece(LOGGED)), after(LOGGED));
    }

    @Test
    void anythingElseDoesNot() {
        assertEquals(Optional.empty(), after(Written.PIECE), "no entry");
        assertEquals(Optional.empty(), after(LOGGED.replace("stitches: 9", "stitches: 8")), "another entry");
        assertEquals(Optional.empty(), after(LOGGED + "designer: Nell\n"), "something beside it");
        assertEquals(Optional.empty(), after(LOGGED.replace("{log", "{started: 2026-03-01, log")), "something more in progress");
        assertEquals(Optional.empty(), after(LOGGED + "---\n" + Written.PIECE.replace("Fog", "Log")), "a piece more");
        assertEquals(Optional.empty(), after(LOGGED.replace("36", "360")), "a text that cannot be read");
    }
}
