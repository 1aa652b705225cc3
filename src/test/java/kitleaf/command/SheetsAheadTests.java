package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import kitleaf.command.speech.Exit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Sheets that are laid out while the one before is pressed. */
@Timeout(60)
class SheetsAheadTests {

    private static final String PIECE = """
            piece: Groyne
            stitches: 80 x 80
            cloth: {kind: linen, count: 28, over: 2}
            threads: [{code: A, stitches: {cross: 100}}]
            """;

    @TempDir
    private Path folder;

    private Ran print(String template, String markup) throws IOException {
        Path templates = Files.createDirectories(folder.resolve("templates"));
        Files.writeString(templates.resolve(template), markup);
        return Ran.kitleaf("print", Ran.basket(folder.resolve("b"), "", PIECE), "--out", folder.resolve("out"), "--templates", templates);
    }

    /** What a print has set going, beside whatever other tests have. */
    private static Set<Thread> working() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> List.of("layouts", "templates").contains(thread.getName())).collect(Collectors.toSet());
    }

    @Test
    void whatRunsAheadOfASheetThatFailsIsStopped() throws Exception {
        Set<Thread> before = working();
        // The first sheet cannot be drawn; the second one's template has begun and would write for ever.
        Files.createDirectories(folder.resolve("templates"));
        Files.writeString(folder.resolve("templates/bobbin-labels.ftlx"), "<document><#list 1.. as x><page width=\"100\" height=\"100\"></page></#list></document>");
        Ran ran = print("cut-sheets.ftlx", "<document><page width=\"100\" height=\"100\"><circle r=\"-1\"/></page></document>");
        assertEquals(Exit.BASKET_HAS_PROBLEMS, ran.code());
        assertTrue(ran.err().startsWith("cut-sheets.ftlx:1"), ran.err());
        assertEquals(List.of(), Ran.files(folder.resolve("out")));
        for (Thread thread : working()) {
            if (!before.contains(thread)) {
                thread.join();
            }
        }
    }

    @Test
    void aSheetThatFailsAheadIsToldWhenItsTurnComes() throws IOException {
        Ran ran = print("buy-list.ftlx", "<document><page width=\"100\" height=\"100\">${nothing}</page></document>");
        assertEquals(Exit.BASKET_HAS_PROBLEMS, ran.code());
        assertTrue(ran.err().startsWith("buy-list.ftlx:1:44: "), ran.err());
        assertEquals(List.of(), Ran.files(folder.resolve("out")));
    }
}
