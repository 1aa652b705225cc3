package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program watches in a process of its own, as it does beside her editor. */
class WatchCommandTests {

    private static final int PATIENCE_SECONDS = 60;
    private static final String PIECE = "piece: Groyne\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\nmargin: 3 in\n";

    @TempDir
    private Path folder;

    private Process process;
    private final BlockingQueue<String> said = new LinkedBlockingQueue<>();

    @AfterEach
    void end() {
        if (process != null) {
            process.destroyForcibly();
        }
    }

    private Path out() {
        return folder.resolve("out");
    }

    private Path piece() {
        return folder.resolve("b/pieces/piece.yaml");
    }

    private void watch(String... more) throws Exception {
        Ran.basket(folder.resolve("b"), "", PIECE);
        String[] arguments = new String[5 + more.length];
        System.arraycopy(new String[] {"watch", "b", "--all", "--only", "cut-sheets"}, 0, arguments, 0, 5);
        System.arraycopy(more, 0, arguments, 5, more.length);
        process = Ran.start(folder, List.of(), arguments);
        listen(process.getInputStream());
        listen(process.getErrorStream());
    }

    private void listen(InputStream stream) {
        Thread thread = new Thread(() -> {
            try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
                for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                    said.add(line);
                }
            } catch (IOException ended) {
                // The process was ended; so is the listening.
            }
        });
        thread.setDaemon(true);
        thread.start();
    }

    /** The next line, without its time of day; fails when none comes. */
    private String next() throws InterruptedException {
        String line = said.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
        if (line == null) {
            throw new AssertionError("nothing was said");
        }
        return line.replaceFirst("^[0-2][0-9]:[0-5][0-9]:[0-5][0-9] ", "");
    }

    private void started() throws InterruptedException {
        assertEquals("printed 1 sheet into out; watching b, Ctrl-C ends it", next());
    }

    /** By hand: 140 stitches of 18 to the inch and 2 x 4 in are 15 7/9 in, up to 16; 210 and 8 in are 19 2/3, up to 19 3/4. */
    @Test
    void a_save_prints_again_and_says_the_cut_before_and_after() throws Exception {
        watch();
        started();
        Files.writeString(piece(), PIECE.replace("3 in", "4 in"));
        assertEquals("piece.yaml: piece cut 16 x 19 3/4 in, was 14 x 17 3/4 in; printed 1 sheet", next());
        Path draft = folder.resolve("b/pieces/piece.yaml~");
        Files.writeString(draft, PIECE.replace("3 in", "4 in") + "progress: 29000\n");
        Files.move(draft, piece(), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        assertEquals("piece.yaml: piece 400 stitches left, was 29400; printed 1 sheet", next(), "29400 cells, saved by renaming");
        Files.writeString(folder.resolve("b/basket.yaml"), "# only a remark\n");
        assertEquals("basket.yaml: no figure changed; printed 1 sheet", next());
    }

    @Test
    void a_sheet_that_comes_or_goes_and_other_goals_are_changes() throws Exception {
        Ran.basket(folder.resolve("b"), "", PIECE);
        process = Ran.start(folder, List.of(), "watch", "b", "--only", "cut-sheets,goal-grid");
        listen(process.getInputStream());
        listen(process.getErrorStream());
        started();
        Path settings = folder.resolve("b/basket.yaml");
        Files.writeString(settings, "goals: {year: 2027, choose: 1}\n");
        assertEquals("basket.yaml: goal-grid.pdf came; printed 2 sheets", next());
        Files.writeString(settings, "goals: {year: 2028, choose: 1}\n");
        assertEquals("basket.yaml: goals changed; printed 2 sheets", next());
        Files.writeString(settings, "# nothing\n");
        assertEquals("basket.yaml: goal-grid.pdf is gone; printed 1 sheet", next());
    }

    @Test
    void pieces_come_and_go() throws Exception {
        watch();
        started();
        Path other = folder.resolve("b/pieces/other.yaml");
        Files.writeString(other, PIECE.replace("Groyne", "Other"));
        assertEquals("other.yaml: other came; printed 1 sheet", next());
        Files.delete(other);
        assertEquals("other.yaml (gone): other is gone; printed 1 sheet", next());
    }

    @Test
    void problems_are_told_and_the_last_good_sheets_stay() throws Exception {
        watch();
        started();
        byte[] good = Files.readAllBytes(out().resolve("cut-sheets.pdf"));
        Files.writeString(piece(), PIECE.replace("3 in", "3"));
        StringBuilder told = new StringBuilder();
        // What it says and what it complains of come on two ways, either first.
        while (!told.toString().contains("the last good sheets stay in out\n") || !told.toString().contains("nothing was written\n")) {
            told.append(next()).append('\n');
        }
        assertTrue(told.toString().contains("piece.yaml: problems\n"), told.toString());
        assertTrue(told.toString().contains("b/pieces/piece.yaml:4:9: \"3\" is a bare number"), told.toString());
        assertArrayEquals(good, Files.readAllBytes(out().resolve("cut-sheets.pdf")));
        Files.delete(piece());
        String line = next();
        while (!line.contains("piece.yaml (gone): problems")) {
            line = next();
        }
        Files.writeString(piece(), PIECE.replace("3 in", "4 in"));
        while (!line.startsWith("piece.yaml: piece cut")) {
            line = next();
        }
        assertEquals("piece.yaml: piece cut 16 x 19 3/4 in, was 14 x 17 3/4 in; printed 1 sheet", line, "against the last good figures");
        assertFalse(Arrays.equals(good, Files.readAllBytes(out().resolve("cut-sheets.pdf"))));
    }

    @Test
    void many_saves_at_once_are_one_print() throws Exception {
        watch();
        started();
        for (int i = 0; i < 12; i++) {
            Files.writeString(folder.resolve("b/pieces/p" + i + ".yaml"), PIECE.replace("Groyne", "P" + i));
        }
        assertEquals("p0.yaml, p1.yaml, p10.yaml and 9 more: p0 came; p1 came; p10 came; p11 came; and 8 more; printed 1 sheet", next());
        assertEquals(null, said.poll(3, TimeUnit.SECONDS));
    }

    @Test
    void sheets_inside_the_basket_are_not_taken_for_saves() throws Exception {
        Ran.basket(folder.resolve("b"), "", PIECE);
        process = Ran.start(folder.resolve("b"), List.of(), "watch", ".", "--only", "buy-list,cut-sheets");
        listen(process.getInputStream());
        assertEquals("printed 1 sheet into out; watching ., Ctrl-C ends it", next());
        Files.writeString(piece(), PIECE + "threads: [{code: K1, stitches: {cross: 100}}]\n");
        assertTrue(next().startsWith("piece.yaml: "));
        assertTrue(Files.exists(folder.resolve("b/out/buy-list.csv")));
        assertEquals(null, said.poll(3, TimeUnit.SECONDS));
    }

    @Test
    void a_single_piece_file_is_watched_with_its_basket() throws Exception {
        Ran.basket(folder.resolve("b"), "", PIECE);
        process = Ran.start(folder, List.of(), "watch", "b/pieces/piece.yaml", "--only", "cut-sheets");
        listen(process.getInputStream());
        assertTrue(next().startsWith("printed 1 sheet"));
        Files.writeString(folder.resolve("b/basket.yaml"), "cut-step: 1 in\n");
        assertEquals("basket.yaml: piece cut 14 x 18 in, was 14 x 17 3/4 in; printed 1 sheet", next());
    }

    /**
     * Whether the shell that runs the tests has its children ignore Ctrl-C, as {@code nohup} and jobs in the background do: Java then
     * leaves it so, and TERM, which it treats alike (java(1), {@code -Xrs}), has to stand in. Linux tells in {@code proc(5)}.
     */
    private boolean ignoresInterrupts() throws IOException {
        Path status = Path.of("/proc/" + process.pid() + "/status");
        if (!Files.exists(status)) {
            return false;
        }
        String ignored = Files.readAllLines(status).stream().filter(line -> line.startsWith("SigIgn:")).findFirst().orElse("SigIgn:0").substring(7).strip();
        return (Long.parseUnsignedLong(ignored, 16) >> 1 & 1) == 1;
    }

    @Test
    void ctrl_c_ends_it_cleanly() throws Exception {
        watch();
        started();
        Files.writeString(piece(), PIECE.replace("3 in", "4 in"));
        // The print is under way, or was too quick to be met.
        while (Ran.files(out()).equals(List.of("cut-sheets.pdf")) && said.isEmpty() && process.isAlive()) {
            Thread.onSpinWait();
        }
        assertEquals(0, new ProcessBuilder("kill", ignoresInterrupts() ? "-TERM" : "-INT", Long.toString(process.pid())).start().waitFor());
        assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS));
        String last = "";
        for (String line = said.poll(1, TimeUnit.SECONDS); line != null; line = said.poll(1, TimeUnit.SECONDS)) {
            last = line;
        }
        assertTrue(last.endsWith(" ended"), last);
        assertEquals(List.of("cut-sheets.pdf"), Ran.files(out()), "no draft is left");
    }

    @Test
    void what_cannot_be_watched_is_a_sentence() {
        Ran nowhere = Ran.kitleaf("watch", folder.resolve("nowhere"));
        assertEquals(1, nowhere.code());
        assertTrue(nowhere.err().startsWith(folder.resolve("nowhere") + ": there is no such file or folder"), nowhere.err());
    }

    /** A list of two thousand million squared cannot be stopped in its one step; watching it would heat the machine for ever. */
    @Test
    void a_template_that_cannot_be_stopped_ends_the_watch() throws Exception {
        Path templates = Files.createDirectories(folder.resolve("templates"));
        Files.writeString(templates.resolve("cut-sheets.ftlx"), "${(0..2000000000)?map(x -> (0..2000000000)?min)?first}${(0..2000000000)?seq_contains('x')?c}");
        watch("--templates", "templates");
        StringBuilder told = new StringBuilder();
        while (!told.toString().contains("watching ends here")) {
            told.append(next()).append('\n');
        }
        assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), told.toString());
        assertEquals(1, process.exitValue());
    }
}
