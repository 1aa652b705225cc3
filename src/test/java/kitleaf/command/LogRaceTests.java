package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kitleaf.basket.LogEntry;
import kitleaf.basket.edit.LogEdit;
import kitleaf.basket.edit.News;
import kitleaf.basket.reader.BasketReader;
import kitleaf.basket.reader.PieceFile;
import kitleaf.command.files.OutFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Evenings logged at the same time, and while the file is saved by something else: none is lost, and nothing of hers is. */
@Timeout(300)
class LogRaceTests {

    private static final String PIECE = "piece: Groyne\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\n";
    private static final int RUNS = 8;
    private static final int PROGRAMS = 4;

    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("pieces/piece.yaml");
    }

    private TreeSet<Integer> stitches() {
        return BasketReader.read(folder).basket().orElseThrow().pieces().get(0).progress().log().stream().map(LogEntry::counted)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void of_eight_threads_that_log_at_once_every_entry_is_there() throws Exception {
        Ran.basket(folder, "", PIECE);
        ExecutorService threads = Executors.newFixedThreadPool(RUNS);
        CountDownLatch together = new CountDownLatch(RUNS);
        List<Future<List<Ran>>> runs = new ArrayList<>();
        for (int run = 0; run < RUNS; run++) {
            int first = 100 + 10 * run;
            Callable<List<Ran>> three = () -> {
                together.countDown();
                together.await();
                return IntStream.range(first, first + 3).mapToObj(number -> Ran.kitleaf("log", folder, "piece", "--stitches", number, "--hours", 1)).toList();
            };
            runs.add(threads.submit(three));
        }
        for (Future<List<Ran>> run : runs) {
            run.get().forEach(ran -> assertEquals(0, ran.code(), ran.err()));
        }
        threads.shutdown();
        assertEquals(IntStream.range(0, RUNS).boxed().flatMap(run -> IntStream.range(100 + 10 * run, 103 + 10 * run).boxed())
                .collect(Collectors.toCollection(TreeSet::new)), stitches());
        assertEquals(List.of("piece.yaml"), Ran.files(folder.resolve("pieces")), "neither drafts nor locks are left");
    }

    @Test
    void of_four_programs_that_log_at_once_every_entry_is_there() throws Exception {
        Ran.basket(folder, "", PIECE);
        List<Process> runs = new ArrayList<>();
        for (int run = 1; run <= PROGRAMS; run++) {
            runs.add(Ran.start(folder, List.of(), "log", "piece", "--stitches", Integer.toString(run), "--hours", "1"));
        }
        for (Process run : runs) {
            Ran ran = Ran.ended(run);
            assertEquals(0, ran.code(), ran.err());
        }
        assertEquals(IntStream.rangeClosed(1, PROGRAMS).boxed().collect(Collectors.toCollection(TreeSet::new)), stitches());
        assertEquals(List.of("piece.yaml"), Ran.files(folder.resolve("pieces")));
    }

    /** A file that was long at a first look and short at a second once came out as a fault of the program. */
    @Test
    void a_file_saved_again_and_again_meanwhile_is_read_as_one_or_the_other() throws Exception {
        Ran.basket(folder, "", PIECE);
        List<String> texts = List.of(PIECE, PIECE + "# " + "remark ".repeat(200) + "\n");
        AtomicBoolean ended = new AtomicBoolean();
        ExecutorService saver = Executors.newSingleThreadExecutor();
        Future<Integer> saved = saver.submit(() -> {
            int saves = 0;
            for (; !ended.get(); saves++) {
                Path draft = Files.writeString(folder.resolve("draft"), texts.get(saves % 2));
                Files.move(draft, file(), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            }
            return saves;
        });
        LogEntry entry = new LogEntry(LocalDate.of(2026, 3, 5), 1, 7);
        PieceFile piece = PieceFile.in(folder).get(0);
        try {
            for (int i = 0; i < 3000; i++) {
                LogEdit.Ready ready = (LogEdit.Ready) LogEdit.of(piece, News.of(entry));
                assertTrue(texts.contains(new String(ready.before(), StandardCharsets.UTF_8)));
            }
        } finally {
            ended.set(true);
            saver.shutdown();
        }
        assertTrue(saved.get() > 100, "saved only " + saved.get() + " times");
    }

    @Test
    void what_was_saved_meanwhile_is_not_overwritten() throws IOException {
        Ran.basket(folder, "", PIECE);
        Path pieces = folder.resolve("pieces").toRealPath();
        try (OutFolder out = OutFolder.open(pieces, said -> { })) {
            for (String saved : List.of(PIECE + "# more\n", PIECE.replace("Groyne", "Breeze"), "")) {
                Files.writeString(file(), saved);
                assertFalse(out.replace("piece.yaml", PIECE.getBytes(StandardCharsets.UTF_8), new byte[] {1}));
                assertEquals(saved, Files.readString(file()));
            }
            Files.delete(file());
            assertFalse(out.replace("piece.yaml", PIECE.getBytes(StandardCharsets.UTF_8), new byte[] {1}));
            assertFalse(Files.exists(file()), "what she took away stays away");
        }
        assertEquals(List.of(), Ran.files(pieces));
    }

    @Test
    void what_a_log_or_new_killed_long_ago_left_goes_with_the_next_and_nothing_of_hers() throws IOException {
        Ran.basket(folder, "", PIECE);
        Path pieces = folder.resolve("pieces");
        for (String name : List.of(".kitleaf-notes", ".kitleaf-0123456789abcdef-text.part", ".kitleaf-0123456789abcdee-new.part", ".kitleaf-lock", "a.part")) {
            Ran.age(Files.writeString(pieces.resolve(name), "x"), Duration.ofDays(2));
        }
        assertEquals(0, Ran.kitleaf("log", folder, "piece", "--stitches", 1, "--hours", 1).code());
        assertEquals(List.of(".kitleaf-notes", "a.part", "piece.yaml"), Ran.files(pieces));
        Ran.age(Files.writeString(pieces.resolve(".kitleaf-0123456789abcdee-new.part"), "x"), Duration.ofDays(2));
        assertEquals(0, Ran.kitleaf("new", "--piece", "Buoy", folder).code());
        assertEquals(List.of(".kitleaf-notes", "a.part", "buoy.yaml", "piece.yaml"), Ran.files(pieces));
    }
}
