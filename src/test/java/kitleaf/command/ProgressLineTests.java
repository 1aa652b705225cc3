package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Locale;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import kitleaf.command.speech.ProgressLine;
import kitleaf.command.speech.Voice;
import org.junit.jupiter.api.Test;

class ProgressLineTests {

    private final StringWriter said = new StringWriter();
    private final HandClock clock = new HandClock();

    /** A clock that strikes when it is told to, as long as it has not been stopped. */
    private static final class HandClock extends ScheduledThreadPoolExecutor {

        private Runnable work;
        private long firstMillis;

        HandClock() {
            super(0);
        }

        @Override
        public ScheduledFuture<?> scheduleWithFixedDelay(Runnable command, long initialDelay, long delay, TimeUnit unit) {
            work = command;
            firstMillis = unit.toMillis(initialDelay);
            return null;
        }

        void strike() {
            if (!isShutdown()) {
                work.run();
            }
        }
    }

    private ProgressLine line() {
        return new ProgressLine(new PrintWriter(said), clock, new Voice(Locale.ENGLISH));
    }

    @Test
    void long_work_is_told_of_and_wiped_away() {
        ProgressLine line = line();
        line.step("progress.reading", "my-basket");
        clock.strike();
        assertEquals("\rreading my-basket", said.toString());
        line.of("labels", 9).accept(3);
        clock.strike();
        assertTrue(said.toString().endsWith("\rlabels: page 3 of 9"), said.toString());
        line.clear();
        assertTrue(said.toString().endsWith("\r" + " ".repeat("labels: page 3 of 9".length()) + "\r"), said.toString());
        int length = said.toString().length();
        line.step("progress.reading", "late");
        clock.strike();
        assertEquals(length, said.toString().length());
    }

    /** Shorter than a third of a second nobody reads (an assumption, no source). */
    @Test
    void short_work_says_nothing() {
        ProgressLine quick = line();
        quick.step("progress.reading", "reading");
        assertTrue(clock.firstMillis >= 333, clock.firstMillis + " ms");
        quick.clear();
        clock.strike();
        assertEquals("", said.toString());
    }

    @Test
    void work_nobody_watches_says_nothing() {
        ProgressLine alone = new ProgressLine(new PrintWriter(said), false, new Voice(Locale.ENGLISH));
        alone.step("progress.reading", "reading");
        alone.show();
        alone.clear();
        assertEquals("", said.toString());
    }
}
