package kitleaf.sheet.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.time.Duration;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import kitleaf.words.Said;
import org.junit.jupiter.api.Test;

class MarkupStreamTests {

    private static String all(Reader reader) throws IOException {
        StringWriter text = new StringWriter();
        reader.transferTo(text);
        return text.toString();
    }

    @Test
    void what_is_written_is_read_whatever_its_length() throws IOException {
        for (int length : new int[] {0, 1, 16_383, 16_384, 16_385, 500_000}) {
            String text = "x".repeat(length);
            try (Reader reader = MarkupStream.of("a.ftlx", out -> out.write(text), Bounds.OURS)) {
                assertEquals(text, all(reader));
            }
        }
    }

    @Test
    void a_failure_of_the_writer_reaches_the_reader_after_what_was_written() throws IOException {
        try (Reader reader = MarkupStream.of("a.ftlx", out -> {
            out.write("before");
            throw new TemplateFault("a.ftlx", Said.of("template.failed"));
        }, Bounds.OURS)) {
            char[] buffer = new char[100];
            assertEquals(6, reader.read(buffer));
            assertEquals("a.ftlx: the template failed", assertThrows(TemplateFault.class, () -> reader.read(buffer)).told(Locale.ENGLISH));
            assertEquals(-1, reader.read(buffer));
        }
    }

    @Test
    void closing_the_reader_ends_a_writer_that_waits() throws IOException, InterruptedException {
        CountDownLatch ended = new CountDownLatch(1);
        Reader reader = MarkupStream.of("a.ftlx", out -> {
            try {
                while (true) {
                    out.write("more and more");
                }
            } finally {
                ended.countDown();
            }
        }, Bounds.OURS);
        reader.read(new char[10]);
        reader.close();
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> ended.await(30, TimeUnit.SECONDS));
        assertEquals(0, ended.getCount());
    }

    @Test
    void a_writer_that_falls_silent_is_given_up_and_stopped() throws IOException, InterruptedException {
        CountDownLatch stopped = new CountDownLatch(1);
        Reader reader = MarkupStream.of("a.ftlx", out -> {
            try {
                Thread.sleep(60_000);
            } catch (InterruptedException e) {
                stopped.countDown();
            }
        }, new Bounds(Duration.ofSeconds(1), Duration.ofDays(1), Long.MAX_VALUE, Long.MAX_VALUE));
        assertEquals("a.ftlx: nothing has come from this template for 1 seconds; look for a loop without end in it",
                assertThrows(TemplateFault.class, reader::read).told(Locale.ENGLISH));
        assertTrue(stopped.await(30, TimeUnit.SECONDS));
    }

    private static String fault(Bounds bounds, MarkupStream.Source source) {
        Reader reader = MarkupStream.of("a.ftlx", source, bounds);
        return assertThrows(TemplateFault.class, () -> all(reader)).told(Locale.ENGLISH);
    }

    @Test
    void a_writer_that_never_falls_silent_ends_all_the_same() {
        assertEquals("a.ftlx: this template has run for 1 seconds, and its sheet should take a few; look for a loop without end in it",
                fault(new Bounds(Duration.ofSeconds(20), Duration.ofSeconds(1), Long.MAX_VALUE, Long.MAX_VALUE - 1), out -> {
                    while (!Thread.currentThread().isInterrupted()) {
                        out.write("more and more");
                    }
                }));
    }

    @Test
    void what_is_written_in_all_has_a_bound() {
        assertEquals("a.ftlx: this template has written 2 million characters for a sheet that needs far fewer; look for a loop without end in it",
                fault(new Bounds(Duration.ofSeconds(20), Duration.ofSeconds(60), 2_000_000, Long.MAX_VALUE - 1), out -> {
                    while (true) {
                        out.write("more and more");
                    }
                }));
    }

    @Test
    void memory_asked_for_between_two_chunks_has_a_bound() {
        assertEquals("a.ftlx: this template takes 8 MB of memory for a piece of its page; look for a loop, a text or a list without end",
                fault(new Bounds(Duration.ofSeconds(20), Duration.ofSeconds(60), Long.MAX_VALUE, 8 << 20), out -> {
                    StringBuilder text = new StringBuilder();
                    while (!Thread.currentThread().isInterrupted() && text.length() < 1 << 29) {
                        text.append("more and more");
                    }
                }));
    }
}
