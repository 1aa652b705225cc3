package kitleaf.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class ProgressLineTests {

    private final StringWriter said = new StringWriter();

    private ProgressLine line(boolean watched) {
        return new ProgressLine(new PrintWriter(said), watched, new Voice(Locale.ENGLISH));
    }

    private void wait(String words) throws InterruptedException {
        for (int i = 0; i < 100 && !said.toString().contains(words); i++) {
            Thread.sleep(50);
        }
        assertTrue(said.toString().contains(words), said.toString());
    }

    @Test
    void long_work_is_told_of_and_wiped_away() throws InterruptedException {
        ProgressLine line = line(true);
        line.step("progress.reading", "my-basket");
        wait("\rreading my-basket");
        line.of("labels", 9).accept(3);
        wait("\rlabels: page 3 of 9");
        line.clear();
        String wiped = "\r" + " ".repeat("labels: page 3 of 9".length()) + "\r";
        assertTrue(said.toString().endsWith(wiped), said.toString());
        int length = said.toString().length();
        line.step("progress.reading", "late");
        Thread.sleep(500);
        assertEquals(length, said.toString().length());
    }

    @Test
    void short_work_and_work_nobody_watches_say_nothing() throws InterruptedException {
        ProgressLine quick = line(true);
        quick.step("progress.reading", "reading");
        quick.clear();
        ProgressLine alone = line(false);
        alone.step("progress.reading", "reading");
        Thread.sleep(700);
        alone.clear();
        assertEquals("", said.toString());
    }
}
