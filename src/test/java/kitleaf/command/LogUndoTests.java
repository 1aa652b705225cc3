package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogUndoTests {

    private static final String TEXT = "piece: Groyne\nstitches: 140 x 210\n"
            + "cloth: {kind: linen, count: 36, over: 2}\nprogress: 45%  # by eye\n";

    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("pieces/piece.yaml");
    }

    private void logged() throws IOException {
        Ran.basket(folder, "", TEXT);
        assertEquals(0, Ran.kitleaf("log", folder, "piece", "--hours", "2", "--on", "2026-03-05").code());
        assertTrue(Files.readString(file()).contains("readings"), "the figure was dated in the same edit");
    }

    @Test
    void the_basket_alone_takes_back_the_entry_and_the_dating_once() throws IOException {
        logged();
        Ran ran = Ran.kitleaf("log", folder, "--undo");
        assertEquals("Taken back: Groyne, 2026-03-05: 2 h\n", ran.out(), ran.err());
        assertEquals(TEXT, Files.readString(file()));
        Ran again = Ran.kitleaf("log", folder, "--undo");
        assertTrue(again.code() != 0 && again.err().contains("nothing was logged last"), again.err());
    }

    @Test
    void a_file_changed_since_stays_and_what_to_take_out_is_told() throws IOException {
        logged();
        String changed = Files.readString(file()) + "# mine\n";
        Files.writeString(file(), changed);
        Ran ran = Ran.kitleaf("log", folder, "piece", "--undo");
        assertTrue(ran.code() != 0 && ran.err().contains("take out by hand: Groyne, 2026-03-05: 2 h"), ran.err());
        assertEquals(changed, Files.readString(file()));
    }

    @Test
    void undo_with_a_fact_is_refused() throws IOException {
        logged();
        String before = Files.readString(file());
        Ran ran = Ran.kitleaf("log", folder, "piece", "--undo", "--hours", "1");
        assertTrue(ran.code() != 0 && ran.err().contains("without other facts"), ran.err());
        assertEquals(before, Files.readString(file()));
    }

    @Test
    void any_fact_of_any_piece_of_the_example_is_taken_back_byte_for_byte() throws IOException {
        Path example = Path.of("examples/harbour");
        Files.createDirectories(folder.resolve("pieces"));
        Files.copy(example.resolve("basket.yaml"), folder.resolve("basket.yaml"));
        int written = 0;
        try (Stream<Path> pieces = Files.list(example.resolve("pieces"))) {
            for (Path piece : pieces.filter(path -> path.toString().endsWith(".yaml")).sorted().toList()) {
                Path copy = Files.copy(piece, folder.resolve("pieces").resolve(piece.getFileName()));
                byte[] before = Files.readAllBytes(copy);
                String id = piece.getFileName().toString().replace(".yaml", "");
                for (List<String> fact : List.of(List.of("--hours", "1"), List.of("--stitches", "9"), List.of("--done", "97%"),
                        List.of("--unpicked", "1"), List.of("--stitched"), List.of("--finished"))) {
                    Object[] told = Stream.concat(Stream.of("log", folder, id), fact.stream()).toArray();
                    if (Ran.kitleaf(told).code() == 0) {
                        written++;
                        Ran undone = Ran.kitleaf("log", folder, id, "--undo");
                        assertEquals(0, undone.code(), undone.err());
                    }
                    assertArrayEquals(before, Files.readAllBytes(copy), id + fact);
                }
            }
        }
        assertTrue(written > 20, "only " + written + " facts were written");
    }
}
