package kitleaf.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Reader;
import java.io.StringReader;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import kitleaf.press.markup.MarkupException;
import org.junit.jupiter.api.Test;

/** Laying and binding side by side, when something goes wrong in one of them. */
class BinderyTests {

    /** Packed it has well over the 8 KiB that OpenPDF gathers before it writes. */
    private static final String PAGE = page(new Random(5));

    private static String page(Random random) {
        StringBuilder page = new StringBuilder("<page width=\"90\" height=\"90\">");
        for (int i = 0; i < 2_000; i++) {
            page.append("<line x2=\"" + random.nextInt(90_000) / 1e3 + "\" y2=\"" + random.nextInt(90_000) / 1e3 + "\" stroke=\"#000\"/>");
        }
        return page + "</page>";
    }

    /** The first is bound, the second in hand, which writes the first; four wait, and none is heard of before it waits. */
    private static final int MOST_LAID = 6;

    private static PressSettings hearing(AtomicInteger pages) {
        return new PressSettings(1, 1, Optional.empty(), pages::set);
    }

    private static Reader pages(int number) {
        return new StringReader("<document>" + PAGE.repeat(number) + "</document>");
    }

    @Test
    void aFullDiskEndsTheLayingToo() {
        IOException full = new IOException("the disk is full");
        AtomicInteger laid = new AtomicInteger();
        OutputStream disk = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw full;
            }
        };
        assertSame(full, assertThrows(IOException.class, () -> Press.press(pages(200), disk, hearing(laid))));
        assertTrue(laid.get() <= MOST_LAID, laid + " pages laid");
    }

    @Test
    void layingWaitsForBinding() throws Exception {
        AtomicInteger laid = new AtomicInteger();
        CountDownLatch opened = new CountDownLatch(1);
        OutputStream slow = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                try {
                    opened.await();
                } catch (InterruptedException e) {
                    throw new IOException(e);
                }
            }
        };
        Thread pressing = new Thread(() -> {
            try {
                Press.press(pages(200), slow, hearing(laid));
            } catch (MarkupException | IOException e) {
                laid.set(-1);
            }
        });
        pressing.start();
        // It waits for the binder, or would be at its end.
        while (pressing.getState() != Thread.State.WAITING && pressing.isAlive()) {
            Thread.onSpinWait();
        }
        assertTrue(laid.get() <= MOST_LAID, laid + " pages laid while the first could not be written");
        opened.countDown();
        pressing.join();
        assertEquals(200, laid.get());
    }

    @Test
    void nothingIsWrittenAnyMoreOnceAFaultIsTold() throws Exception {
        for (int run = 0; run < 20; run++) {
            AtomicLong written = new AtomicLong();
            OutputStream out = new OutputStream() {
                @Override
                public void write(int b) {
                    written.incrementAndGet();
                }
            };
            assertThrows(MarkupException.class, () -> Press.press(
                    new StringReader("<document>" + PAGE.repeat(9) + "<rekt/></document>"), out, PressSettings.plain()));
            long then = written.get();
            for (Thread thread : Thread.getAllStackTraces().keySet().stream().filter(it -> it.getName().equals("binder")).toList()) {
                thread.join();
            }
            assertEquals(then, written.get());
        }
    }
}
