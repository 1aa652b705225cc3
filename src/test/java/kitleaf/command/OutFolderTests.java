package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
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
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import kitleaf.command.files.Draft;
import kitleaf.command.files.OutFolder;
import kitleaf.command.speech.Exit;
import kitleaf.command.speech.Terminal;
import kitleaf.command.speech.Voice;
import kitleaf.words.Said;
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
            OutFolder folder = OutFolder.open(Path.of(arguments[0]), said -> { });
            folder.draft("cut-sheets.pdf").stream().write(1);
            System.out.println("ready");
            Thread.sleep(600_000);
            folder.close();
        }
    }

    @Test
    void what_a_killed_run_left_goes_after_an_hour_and_a_living_runs_drafts_stay() throws Exception {
        Process holder = start(Holder.class.getName(), out());
        BufferedReader said = new BufferedReader(new InputStreamReader(holder.getInputStream(), StandardCharsets.UTF_8));
        assertEquals("ready", said.readLine());
        List<String> living = Ran.files(out());
        assertEquals(1, living.size(), living.toString());
        OutFolder.open(out(), it -> { }).close();
        assertEquals(living, Ran.files(out()));
        holder.destroyForcibly().waitFor();
        Ran.age(out().resolve(living.get(0)), Duration.ofMinutes(59));
        OutFolder.open(out(), it -> { }).close();
        assertEquals(living, Ran.files(out()), "it may be a long run's");
        Ran.age(out().resolve(living.get(0)), Duration.ofMinutes(61));
        OutFolder.open(out(), it -> { }).close();
        assertEquals(List.of(), Ran.files(out()));
    }

    /** Replaces a great many files, so that it can be killed amid them. */
    static final class Mover {

        private Mover() { }

        public static void main(String[] arguments) throws Exception {
            try (OutFolder folder = OutFolder.open(Path.of(arguments[0]), said -> { })) {
                for (String name : names()) {
                    try (Draft draft = folder.draft(name)) {
                        draft.stream().write('n');
                    }
                }
                System.out.println("ready");
                folder.replaceAll();
            }
        }

        static List<String> names() {
            return IntStream.rangeClosed(1001, 5000).mapToObj(number -> "sheet-" + number + ".pdf").toList();
        }
    }

    private List<String> texts() throws IOException {
        List<String> texts = new ArrayList<>();
        for (String name : Mover.names()) {
            texts.add(Files.readString(out().resolve(name)));
        }
        return texts;
    }

    /** Kills a run amid its moves: some files are new then, others old. */
    private void killAmidMoves() throws Exception {
        for (int attempt = 0; attempt < 20; attempt++) {
            for (String name : Mover.names()) {
                Files.writeString(out().resolve(name), "o");
            }
            Process mover = start(Mover.class.getName(), out());
            assertEquals("ready", new BufferedReader(new InputStreamReader(mover.getInputStream(), StandardCharsets.UTF_8)).readLine());
            Path first = out().resolve(Mover.names().get(0));
            while (mover.isAlive() && Files.readString(first).equals("o")) {
                Thread.onSpinWait();
            }
            mover.destroyForcibly().waitFor();
            if (texts().containsAll(List.of("n", "o"))) {
                return;
            }
            // It was done before the blow fell.
        }
        throw new AssertionError("no run was killed amid its moves");
    }

    @Test
    void what_a_run_killed_amid_its_moves_began_is_ended_by_the_next_which_says_so() throws Exception {
        killAmidMoves();
        List<Said> told = new ArrayList<>();
        OutFolder.open(out(), told::add).close();
        assertEquals(List.of(Said.of("write.mended", out().toString())), told);
        assertEquals(Set.of("n"), Set.copyOf(texts()));
        assertEquals(Mover.names(), Ran.files(out()), "no draft, list or lock is left");
        OutFolder.open(out(), told::add).close();
        assertEquals(1, told.size(), "said once");
    }

    @Test
    void a_list_of_moves_that_is_damaged_or_names_other_files_moves_nothing_and_is_told() throws IOException {
        String run = "0123456789abcdef";
        for (String list : List.of("", "run " + run + "\nput cut-sheets.pdf\n", "run x\nend\n", "run " + run + "\nput ../secret.pdf\nend\n",
                "run " + run + "\nput notes.txt\nend\n", "run " + run + "\ntake .kitleaf-pictures\nend\n")) {
            Files.writeString(out().resolve(".kitleaf-moves"), list);
            Files.writeString(out().resolve(".kitleaf-" + run + "-notes.txt.new"), "theirs");
            Files.writeString(out().resolve("notes.txt"), "hers");
            List<Said> told = new ArrayList<>();
            OutFolder.open(out(), told::add).close();
            assertEquals(List.of(Said.of("write.mixed", out().toString())), told, list);
            assertEquals(List.of("notes.txt"), Ran.files(out()));
            assertEquals("hers", Files.readString(out().resolve("notes.txt")));
        }
    }

    /** Two runs of 200 files each, put in place at once: all are of one run, whichever was later. */
    @Test
    void two_runs_never_mix_their_files() throws Exception {
        for (int round = 0; round < 5; round++) {
            CountDownLatch together = new CountDownLatch(2);
            ExecutorService threads = Executors.newFixedThreadPool(2);
            List<Future<Void>> runs = new ArrayList<>();
            for (char sign : new char[] {'a', 'b'}) {
                runs.add(threads.submit(() -> {
                    try (OutFolder folderOut = OutFolder.open(out(), it -> { })) {
                        for (String name : Mover.names().subList(0, 200)) {
                            try (Draft draft = folderOut.draft(name)) {
                                draft.stream().write(sign);
                            }
                        }
                        together.countDown();
                        together.await();
                        folderOut.replaceAll();
                    }
                    return null;
                }));
            }
            for (Future<Void> run : runs) {
                run.get();
            }
            threads.shutdown();
            Set<String> texts = new TreeSet<>();
            for (String name : Mover.names().subList(0, 200)) {
                texts.add(Files.readString(out().resolve(name)));
            }
            assertEquals(1, texts.size(), "round " + round);
            assertEquals(200, Ran.files(out()).size());
        }
    }

    @Test
    void a_run_that_finds_another_at_the_folder_waits_says_so_and_leaves_the_old_sheets() throws Exception {
        Object[] print = {"print", HARBOUR, "--only", "buy-list", "--out", out()};
        assertEquals(0, Ran.kitleaf(print).code());
        List<String> before = Ran.files(out());
        byte[] old = Files.readAllBytes(out().resolve("buy-list.pdf"));
        Process holder = TurnTests.holder(out());
        Ran ran = Ran.kitleaf("print", HARBOUR, "--only", "buy-list", "--out", out(), "--paper", "letter");
        holder.destroyForcibly().waitFor();
        assertEquals(3, ran.code(), ran.out());
        assertEquals("waiting for another run of Kitleaf that is writing to " + out() + "\ncould not write to " + out()
                + ": another run of Kitleaf is putting files in place there; try again, or, if there is none, take away .kitleaf-lock\n", ran.err());
        assertArrayEquals(old, Files.readAllBytes(out().resolve("buy-list.pdf")));
        assertEquals(0, Ran.kitleaf(print).code());
        assertEquals(before, Ran.files(out()));
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
        for (String name : Ran.files(out())) {
            Ran.age(out().resolve(name), Duration.ofDays(2));
        }
        OutFolder.open(out(), it -> { }).close();
        hers.forEach(name -> assertTrue(Files.exists(folder.resolve("out").resolve(name)), name));
        assertTrue(Files.exists(folderOfHers) && Files.isSymbolicLink(link));
        assertEquals("precious", Files.readString(victim));
        assertFalse(Files.exists(out().resolve(".kitleaf-0123456789abcded-x.part")));
    }

    /** Killed at any moment, the old sheet or the new one is there, whole, and a run an hour later leaves nothing but sheets. */
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
        for (String name : Ran.files(out())) {
            Ran.age(out().resolve(name), Duration.ofDays(2));
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
        try (OutFolder folderOut = OutFolder.open(out(), it -> { })) {
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
