package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import kitleaf.command.speech.Exit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LimitsTests {

    private static final String PIECE = """
            piece: Groyne
            stitches: 80 x 80
            cloth: {kind: linen, count: 28, over: 2}
            threads:
              - {code: A, stitches: {cross: 100}}
              - {code: B, stitches: {cross: 100}}
              - {code: C, stitches: {cross: 100}}
            """;

    @TempDir
    private Path folder;

    private Ran print(Object... more) throws IOException {
        Path basket = Ran.basket(folder.resolve("b"), "", PIECE);
        Object[] arguments = new Object[more.length + 4];
        System.arraycopy(new Object[] {"print", basket, "--out", folder.resolve("out")}, 0, arguments, 0, 4);
        System.arraycopy(more, 0, arguments, 4, more.length);
        return Ran.kitleaf(arguments);
    }

    /** The piece names three threads: three labels. */
    @Test
    void labels_past_the_limit_are_refused_with_the_number_to_allow() throws IOException {
        Ran refused = print("--only", "bobbin-labels", "--most-labels", 2);
        assertEquals(Exit.BASKET_HAS_PROBLEMS, refused.code());
        assertEquals("this basket asks for 3 bobbin labels, more than 2; choose pieces with --piece, or allow them with --most-labels 3",
                refused.err().strip());
        assertEquals(List.of(), Ran.files(folder.resolve("out")));
        assertEquals(Exit.DONE, print("--only", "bobbin-labels", "--most-labels", 3).code());
    }

    @Test
    void pages_past_the_limit_are_refused_with_the_number_to_allow() throws IOException {
        Ran refused = print("--only", "cut-sheets", "--most-pages", 1);
        assertEquals(Exit.BASKET_HAS_PROBLEMS, refused.code());
        assertEquals("cut-sheets would have 2 pages, more than 1; choose pieces with --piece, or allow them with --most-pages 2",
                refused.err().strip());
        assertEquals(Exit.DONE, print("--only", "cut-sheets", "--most-pages", 2).code());
    }
}
