package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import kitleaf.command.files.InTheWay;
import kitleaf.command.files.Turn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(300)
class TurnTests {

    private static final Runnable UNTOLD = () -> { };

    @TempDir
    private Path folder;

    /** Keeps the turn until it is killed. */
    static final class Holder {

        private Holder() { }

        public static void main(String[] arguments) throws Exception {
            Turn turn = Turn.at(Path.of(arguments[0]), Duration.ZERO, UNTOLD);
            System.out.println("ready");
            Thread.sleep(600_000);
            turn.close();
        }
    }

    /** Another program that has the turn at a folder. */
    static Process holder(Path folder) throws IOException {
        Process holder = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("java.class.path"), Holder.class.getName(), folder.toString()).redirectErrorStream(true).start();
        assertEquals("ready", new BufferedReader(new InputStreamReader(holder.getInputStream(), StandardCharsets.UTF_8)).readLine());
        return holder;
    }

    @Test
    void a_run_that_keeps_its_turn_is_told_of_and_a_killed_one_is_not_waited_for() throws Exception {
        Process holder = holder(folder);
        AtomicInteger told = new AtomicInteger();
        InTheWay busy = assertThrows(InTheWay.class, () -> Turn.at(folder, Duration.ofMillis(700), told::incrementAndGet));
        assertEquals("write.busy", busy.said().key());
        assertEquals(1, told.get(), "said once that it waits");
        holder.destroyForcibly().waitFor();
        assertTrue(Files.exists(folder.resolve(Turn.FILE)), "a killed run cleans nothing up");
        Turn.at(folder, Duration.ZERO, UNTOLD).close();
        assertEquals(List.of(), Ran.files(folder));
    }

    @Test
    void an_evening_is_not_logged_while_another_run_keeps_the_turn() throws Exception {
        String piece = "piece: Groyne\nstitches: 140 x 210\ncloth: {kind: linen, count: 36, over: 2}\n";
        Path pieces = Ran.basket(folder.resolve("b"), "", piece).resolve("pieces");
        Process holder = holder(pieces);
        Ran ran = Ran.kitleaf("log", folder.resolve("b"), "piece", "--stitches", 1, "--hours", 1);
        holder.destroyForcibly().waitFor();
        assertEquals(3, ran.code());
        assertEquals("waiting for another run of Kitleaf that is writing to " + pieces.toRealPath() + "\ncould not write to " + pieces.resolve("piece.yaml")
                + ": another run of Kitleaf is putting files in place there; try again, or, if there is none, take away .kitleaf-lock\n", ran.err());
        assertEquals(piece, Files.readString(pieces.resolve("piece.yaml")));
    }

    /** Each makes the lock's file anew and takes it away again, so that many wait for one that is gone by their turn. */
    @Test
    void only_one_has_the_turn_at_a_time() throws Exception {
        int[] unguarded = {0};
        AtomicInteger inside = new AtomicInteger();
        ExecutorService threads = Executors.newFixedThreadPool(6);
        List<Future<?>> runs = new ArrayList<>();
        for (int thread = 0; thread < 6; thread++) {
            runs.add(threads.submit(() -> {
                for (int i = 0; i < 100; i++) {
                    Turn turn = Turn.at(folder, Duration.ofMinutes(2), UNTOLD);
                    assertEquals(1, inside.incrementAndGet());
                    unguarded[0]++;
                    inside.decrementAndGet();
                    turn.close();
                }
                return null;
            }));
        }
        for (Future<?> run : runs) {
            run.get();
        }
        threads.shutdown();
        assertEquals(600, unguarded[0]);
        assertFalse(Files.exists(folder.resolve(Turn.FILE)));
    }
}
