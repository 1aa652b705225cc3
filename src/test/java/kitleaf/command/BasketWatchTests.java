package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import kitleaf.command.speech.Voice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class BasketWatchTests {

    @TempDir
    private Path folder;

    @Test
    @Timeout(20)
    void a_watch_that_is_interrupted_ends_instead_of_looking_without_a_pause() {
        BasketWatch watch = new BasketWatch(folder, folder.resolve("out"), Optional.empty(), new Voice(Locale.ENGLISH));
        Thread.currentThread().interrupt();
        int[] looks = {0};
        assertEquals(Optional.empty(), watch.next(() -> ++looks[0] > 1000));
        assertTrue(Thread.interrupted(), "whoever interrupted it is not kept from knowing");
        assertTrue(looks[0] < 5, "looked " + looks[0] + " times");
    }
}
