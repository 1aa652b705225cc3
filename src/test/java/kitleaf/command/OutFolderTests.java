package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Runs that are killed, that meet each other, or that cannot write: no old sheet is harmed and no litter stays. */
@Timeout(300)
class OutFolderTests {

    private static final Path HARBOUR = Path.of("examples/harbour");

    @TempDir
    private Path folder;

    private Path out() throws IOException {
        return Files.createDirectories(folder.resolve("out"));
    }

    private static Process start(String main, Object... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("java.class.path"), main));
        for (Object argument : arguments) {
            command.add(argument.toString());
        }
        return new ProcessBuilder(command).redirectErrorStream(true).start();
    }

    /** Holds a draft open in a folder until it is killed. */
    static final class Holder {

        private Holder() { }

        public static void main(String[] arguments) throws Exception {
            OutFolder folder = OutFolder.open(Path.of(arguments[0]));
            folder.draft("cut-sheets.pdf").stream().write(1);
            System.out.println("ready");
            Thread.sleep(600_000);
            folder.close();
        }
    }

    @Test
    void what_a_killed_run_left_goes_with_the_next_and_a_living_runs_drafts_stay() throws Exception {
        Process holder = start(Holder.class.getName(), out());
        BufferedReader said = new BufferedReader(new InputStreamReader(holder.getInputStream(), StandardCharsets.UTF_8));
        assertEquals("ready", said.readLine());
        List<String> living = Ran.files(out());
        assertEquals(2, living.size(), living.toString());
        OutFolder.open(out()).close();
        assertEquals(living, Ran.files(out()));
        holder.destroyForcibly().waitFor();
        assertEquals(living, Ran.files(out()));
        OutFolder.open(out()).close();
        assertEquals(List.of(), Ran.files(out()));
    }

    @Test
    void only_our_own_litter_is_taken_away() throws IOException {
        List<String> hers = List.of(".kitleaf-notes", ".kitleaf-0123456789abcdef", "a.part", "kitleaf-0123456789abcdef-x.part");
        for (String name : hers) {
            Files.writeString(out().resolve(name), "mine");
        }
        Path folderOfHers = Files.createDirectory(out().resolve(".kitleaf-0123456789abcdef-x.part"));
        Path victim = Files.writeString(folder.resolve("victim"), "precious");
        Path link = Files.createSymbolicLink(out().resolve(".kitleaf-0123456789abcdee-x.part"), victim);
        Files.writeString(out().resolve(".kitleaf-0123456789abcded-x.part"), "litter");
        OutFolder.open(out()).close();
        hers.forEach(name -> assertTrue(Files.exists(folder.resolve("out").resolve(name)), name));
        assertTrue(Files.exists(folderOfHers) && Files.isSymbolicLink(link));
        assertEquals("precious", Files.readString(victim));
        assertFalse(Files.exists(out().resolve(".kitleaf-0123456789abcded-x.part")));
    }

    /** Killed at any moment, the old sheet or the new one is there, whole, and the next run leaves nothing but sheets. */
    @Test
    void a_run_killed_at_any_moment_harms_no_sheet() throws Exception {
        Path sheet = out().resolve("cut-sheets.pdf");
        assertEquals(0, Ran.kitleaf("print", HARBOUR, "--only", "cut-sheets", "--out", out(), "--paper", "letter").code());
        byte[] old = Files.readAllBytes(sheet);
        assertEquals(0, Ran.kitleaf("print", HARBOUR, "--only", "cut-sheets", "--out", folder.resolve("new")).code());
        byte[] fresh = Files.readAllBytes(folder.resolve("new/cut-sheets.pdf"));
        Random moments = new Random(20260301);
        for (int i = 0; i < 6; i++) {
            Files.write(sheet, old);
            Process run = start(Kitleaf.class.getName(), "print", HARBOUR, "--only", "cut-sheets", "--out", out());
            run.waitFor(300 + moments.nextInt(1700), TimeUnit.MILLISECONDS);
            run.destroyForcibly().waitFor();
            byte[] left = Files.readAllBytes(sheet);
            assertTrue(Arrays.equals(left, old) || Arrays.equals(left, fresh), "after " + i);
        }
        assertEquals(0, Ran.kitleaf("print", HARBOUR, "--only", "cut-sheets", "--out", out()).code());
        assertEquals(List.of("cut-sheets.pdf"), Ran.files(out()));
    }

    @Test
    void two_runs_at_once_leave_whole_sheets_and_nothing_else() throws Exception {
        assertEquals(0, Ran.kitleaf("print", HARBOUR, "--only", "cut-sheets,kit-lists", "--out", folder.resolve("one")).code());
        Process first = start(Kitleaf.class.getName(), "print", HARBOUR, "--only", "cut-sheets,kit-lists", "--out", out());
        Process second = start(Kitleaf.class.getName(), "print", HARBOUR, "--only", "cut-sheets,kit-lists", "--out", out());
        assertEquals(0, first.waitFor());
        assertEquals(0, second.waitFor());
        assertEquals(List.of("cut-sheets.pdf", "kit-lists.pdf"), Ran.files(out()));
        for (String name : Ran.files(out())) {
            assertEquals(-1, Files.mismatch(folder.resolve("one").resolve(name), out().resolve(name)), name);
        }
    }

    @Test
    void a_sheet_that_cannot_be_replaced_is_named() throws IOException {
        assertEquals(0, Ran.kitleaf("print", HARBOUR, "--only", "buy-list", "--out", out()).code());
        try (OutFolder folderOut = OutFolder.open(out())) {
            Draft draft = folderOut.draft("buy-list.pdf");
            draft.stream().write(1);
            draft.close();
            // Stands in for whatever makes a system refuse.
            Files.delete(draft.file());
            IOException refused = assertThrows(IOException.class, () -> folderOut.replaceAll());
            assertEquals("could not write to o: buy-list.pdf could not be replaced; close it where it is open, or choose another folder with --out",
                    OutFolder.couldNotWrite(Path.of("o"), refused).told(new Voice(Locale.ENGLISH)));
        }
        assertNotEquals(1, Files.size(out().resolve("buy-list.pdf")));
    }

    @Test
    void a_link_to_a_folder_is_a_folder_and_a_link_in_a_sheets_place_is_replaced_not_followed() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), out());
        Path victim = Files.writeString(folder.resolve("victim"), "precious");
        Files.createSymbolicLink(out().resolve("buy-list.pdf"), victim);
        assertEquals(0, Ran.kitleaf("print", HARBOUR, "--only", "buy-list", "--out", link).code());
        assertEquals("precious", Files.readString(victim));
        assertFalse(Files.isSymbolicLink(out().resolve("buy-list.pdf")));
    }

    @Test
    void sheets_can_be_read_by_those_who_may_read_other_new_files() throws IOException {
        FileStore disk = Files.getFileStore(out());
        assumeTrue(disk.supportsFileAttributeView("posix"));
        Path usual = Files.writeString(out().resolve("usual"), "");
        assertEquals(0, Ran.kitleaf("print", HARBOUR, "--only", "buy-list", "--out", out()).code());
        Set<PosixFilePermission> permissions = Files.getPosixFilePermissions(out().resolve("buy-list.pdf"));
        assertEquals(Files.getPosixFilePermissions(usual), permissions);
    }

    @Test
    void what_cannot_be_said_is_told_and_is_exit_3() {
        PrintStream full = new PrintStream(new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("No space left on device");
            }
        }, true, StandardCharsets.UTF_8);
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Kitleaf.run(new String[] {"reckon", HARBOUR.toString(), "--json"}, Terminal.NONE, Map.of(), full, new PrintStream(err, true, StandardCharsets.UTF_8));
        assertEquals(Exit.COULD_NOT_WRITE, code);
        assertEquals("what was to be said here could not be written to its end: its disk may be full, or the program it goes to stopped reading",
                err.toString(StandardCharsets.UTF_8).strip());
    }
}
